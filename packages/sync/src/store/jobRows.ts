import { type KeptJob, type KnownOfServer, type LooseEdits, laterKnown } from './jobStore.ts';

/** How a job stood when it was last kept; whoever keeps it last says so. */
export type JobRow = Pick<KeptJob, 'id' | 'job' | 'heads' | 'keptAt'>;

/** Edits of one step that wait for the history. Rows of several pages lie beside each other. */
export interface LooseRow {
  readonly id: string;
  /** As `LooseEdits.id`. */
  readonly name: string;
  /** Place among the edits its page made. */
  readonly place: number;
  readonly loose: LooseEdits;
}

/** What one page knows of the server. */
export interface KnownRow {
  readonly id: string;
  readonly page: string;
  readonly known: KnownOfServer;
}

/**
 * A job as rows of a database. No row takes in what stood in it before: a page writes them without having read, and
 * takes nothing back that another page knows.
 */
export function rowsOf({ server, sent, loose = [], ...job }: KeptJob, page: string) {
  const known: KnownOfServer = {
    ...(server === undefined ? {} : { server }),
    ...(sent === undefined ? {} : { sent }),
  };
  return {
    job: job satisfies JobRow,
    loose: loose.map((each, place): LooseRow => ({ id: job.id, name: each.id, place, loose: each })),
    known: server === undefined && sent === undefined ? undefined : ({ id: job.id, page, known } satisfies KnownRow),
  };
}

/** A job as its rows together say it stands. */
export function keptFrom(
  { id, job, heads, keptAt }: JobRow,
  looseRows: readonly LooseRow[],
  knownRows: readonly KnownRow[],
): KeptJob {
  const loose = [...looseRows]
    .sort((one, other) => one.loose.atS - other.loose.atS || one.place - other.place)
    .map((row) => row.loose);
  return {
    ...{ id, job, keptAt },
    ...(heads === undefined ? {} : { heads }),
    ...knownRows.map(({ known }) => known).reduce(laterKnown, {}),
    ...(loose.length === 0 ? {} : { loose }),
  };
}
