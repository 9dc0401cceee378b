import Database from 'better-sqlite3';
import type { JobEntry, JobStore, JobToSave, SavedState, StoredJob } from './jobStore.ts';
import { migrations } from './migrations.ts';

interface EntryRow {
  readonly id: string;
  readonly name: string;
  readonly region: string;
  readonly revision: number;
  readonly updated_ms: number;
}

interface JobRow extends EntryRow {
  readonly json: string;
}

interface HistoryRow {
  readonly revision: number;
  readonly saved_ms: number;
  readonly json: string;
}

const isoOf = (ms: number) => new Date(ms).toISOString();

const entryOf = ({ id, name, region, revision, updated_ms }: EntryRow): JobEntry => ({
  id,
  name,
  region,
  updated: isoOf(updated_ms),
  revision,
});

function openDatabase(file: string): Database.Database {
  const db = new Database(file);
  // wal lets a reader and a writer work at once; full waits for the disk at every commit, because these are records
  db.pragma('journal_mode = wal');
  db.pragma('synchronous = full');
  db.pragma('busy_timeout = 5000');
  return db;
}

/**
 * Takes the steps that a database still lacks, each in a transaction of its own.
 *
 * @throws {Error} where the file was written by a newer Eaveline; the file is left as it is.
 */
function migrate(db: Database.Database): void {
  const taken = db.pragma('user_version', { simple: true }) as number;
  if (taken > migrations.length) {
    throw new Error(
      `The store is of edition ${taken}; this Eaveline knows ${migrations.length}. Open it with the newer Eaveline that wrote it, or choose another data folder.`,
    );
  }
  for (let step = taken; step < migrations.length; step++) {
    db.transaction(() => {
      // another process may have taken the step while this one waited for the lock
      if ((db.pragma('user_version', { simple: true }) as number) > step) return;
      db.exec(migrations[step] as string);
      db.pragma(`user_version = ${step + 1}`);
    }).immediate();
  }
}

function savingInto(db: Database.Database) {
  const find = db.prepare<[string], JobRow>('select * from job where id = ?');
  const newest = db.prepare<[string], { top: number | null }>(
    'select max(revision) as top from job_history where job_id = ?',
  );
  const save = db.prepare<EntryRow & { json: string }>(`
    insert into job (id, name, region, revision, updated_ms, json)
    values (@id, @name, @region, @revision, @updated_ms, @json)
    on conflict (id) do update set name = excluded.name, region = excluded.region,
      revision = excluded.revision, updated_ms = excluded.updated_ms, json = excluded.json`);
  const keep = db.prepare<[string, number, number, string]>(
    'insert into job_history (job_id, revision, saved_ms, json) values (?, ?, ?, ?)',
  );

  const put = db.transaction(({ id, name, region, document, savedAt }: JobToSave, seen?: number) => {
    const before = find.get(id);
    const json = JSON.stringify(document);
    // the same again is no quarrel: an answer that was lost on the way makes a saver ask twice
    if (before !== undefined && before.json === json) return entryOf(before);
    if (seen !== undefined && seen !== (before?.revision ?? 0)) return undefined;
    const row = { id, name, region, revision: (newest.get(id)?.top ?? 0) + 1, updated_ms: savedAt.getTime(), json };
    save.run(row);
    keep.run(id, row.revision, row.updated_ms, json);
    return entryOf(row);
  });
  // the write lock is taken before reading, so that two savers cannot both see the same revision
  return (job: JobToSave, seen?: number) => put.immediate(job, seen);
}

/**
 * Jobs in one SQLite file.
 *
 * @param file  made where there is none; its folder has to exist.
 * @throws {Error} where the file is not a database of ours, or of a newer edition.
 */
export function sqliteStore(file: string): JobStore {
  const db = openDatabase(file);
  try {
    migrate(db);
  } catch (error) {
    db.close();
    throw error;
  }
  const all = db.prepare<[], EntryRow>(
    'select id, name, region, revision, updated_ms from job order by updated_ms desc, rowid desc',
  );
  const one = db.prepare<[string], JobRow>('select * from job where id = ?');
  const drop = db.prepare<[string]>('delete from job where id = ?');
  const states = db.prepare<[string], HistoryRow>(
    'select revision, saved_ms, json from job_history where job_id = ? order by revision',
  );
  const state = db.prepare<[string, number], HistoryRow>(
    'select revision, saved_ms, json from job_history where job_id = ? and revision = ?',
  );
  const first = db.prepare<[], unknown>('select 1 from job_history limit 1');
  const put = savingInto(db);

  function get(id: string): StoredJob | undefined {
    const row = one.get(id);
    return row && { ...entryOf(row), document: JSON.parse(row.json) };
  }

  const stateOf = ({ revision, saved_ms, json }: HistoryRow): SavedState => ({
    revision,
    savedAt: isoOf(saved_ms),
    document: JSON.parse(json),
  });

  return {
    list: async () => all.all().map(entryOf),
    get: async (id) => get(id),
    put: async (job, seen) => put(job, seen),
    remove: async (id) => drop.run(id).changes > 0,
    history: async (id) => states.all(id).map(stateOf),
    async stateAt(id, revision) {
      const row = state.get(id, revision);
      return row && stateOf(row);
    },
    isUntouched: async () => first.get() === undefined,
    close: async () => void db.close(),
  };
}
