import type { JobStore } from '@eaveline/sync/store';
import type { JobServer, ListedJob } from '../job/jobServer.ts';
import type { PlanSummary } from '../plan/message.ts';
import type { PlanDesk } from '../plan/planDesk.ts';
import { type Copies, mayDiffer, readCopy, sameState, shownCopy, whereKept } from './copies.ts';
import type { BookEntry, ClosedEntry } from './entry.ts';
import { type Findable, findableOf } from './findable.ts';
import { laidAsideOf } from './layAside.ts';
import { servedOf } from './servedOf.ts';

/** How far one of the two places has answered. */
export type Answered =
  | { readonly kind: 'asking' }
  | { readonly kind: 'answered' }
  /** `words` say why there is nothing from there. */
  | { readonly kind: 'away'; readonly words: string };

export interface Book {
  /** By name. */
  readonly entries: readonly BookEntry[];
  readonly closed: readonly ClosedEntry[];
  readonly device: Answered;
  readonly server: Answered;
}

export interface BookParts {
  readonly store: JobStore;
  readonly server: JobServer;
  readonly desk: Pick<PlanDesk, 'sumUp'>;
  /** Calls back when the page has had its turn: many jobs are read without holding it up. */
  readonly breathe: () => Promise<void>;
  /** Calls back after so many milliseconds. */
  readonly later: (call: () => void, ms: number) => void;
  /** Milliseconds of a clock that only runs on. */
  readonly clockMs: () => number;
  /** Summaries by job and state, kept from one opening of the Book to the next. */
  readonly summaries: Map<string, PlanSummary>;
}

/** All jobs, wherever they are kept. The screen only listens. */
export interface BookDesk {
  state(): Book;
  subscribe(listener: () => void): () => void;
  /** Reads the device, then asks the server; again whenever it is called. */
  open(): Promise<void>;
  /** Reads one job anew, after something was done to it. */
  again(id: string): Promise<void>;
  /** Jobs whose plans are wanted first. */
  wants(ids: readonly string[]): void;
  close(): void;
}

const AT_ONCE = 6; // as many requests as a browser sends to one address
const BREATHE_AFTER_MS = 12;
const SHOW_EVERY_MS = 120;
const DEVICE_FIRST_MS = 1000;

const wordsOf = (error: unknown) => (error instanceof Error ? error.message : String(error));
const collator = new Intl.Collator('en', { numeric: true });

export function makeBookDesk(parts: BookParts): BookDesk {
  const { store, server, desk, breathe, later, clockMs, summaries } = parts;
  const copies = new Map<string, Copies>();
  const entries = new Map<string, BookEntry>();
  const listeners = new Set<() => void>();
  let device: Answered = { kind: 'asking' };
  let answered: Answered = { kind: 'asking' };
  let order: readonly string[] | undefined;
  let first: readonly string[] = [];
  let state: Book = { entries: [], closed: [], device, server: answered };
  let shownAt = Number.NEGATIVE_INFINITY;
  let showing = false;
  let summing = false;
  let left = false;
  let turnBegan = 0;

  function show() {
    showing = false;
    shownAt = clockMs();
    order ??= [...entries.values()].sort((a, b) => collator.compare(a.job.name, b.job.name)).map(({ job }) => job.id);
    state = {
      entries: order.flatMap((id) => entries.get(id) ?? []),
      closed: [...copies.values()].flatMap(closedOf),
      device,
      server: answered,
    };
    for (const listener of listeners) listener();
  }

  function showSoon() {
    if (showing || left) return;
    showing = true;
    const waitMs = shownAt + SHOW_EVERY_MS - clockMs();
    if (waitMs <= 0) show();
    else later(() => !left && show(), waitMs);
  }

  async function turn() {
    if (clockMs() - turnBegan < BREATHE_AFTER_MS) return;
    await breathe();
    turnBegan = clockMs();
  }

  function lay(id: string, more: Omit<Copies, 'id'>) {
    const now: Copies = { ...copies.get(id), id, ...more };
    copies.set(id, now);
    const shown = shownCopy(now);
    const before = entries.get(id);
    if (shown === undefined) entries.delete(id);
    else {
      const { job } = shown;
      // kept anew, or read from its other place: the same state has the same plan
      const same = before !== undefined && (before.job === job || sameState(before.job, job));
      if (same && before.summary !== undefined) summaries.set(keyOf(now), before.summary);
      const findable: Findable = same ? before.findable : findableOf(job);
      const other = now.device?.job !== undefined && now.server?.job;
      entries.set(id, {
        job,
        where: whereKept(now),
        differs: other ? !sameState(job, other) : false,
        findable,
        summary: same ? before.summary : summaries.get(keyOf(now)),
        notWorkedOut: same ? before.notWorkedOut : undefined,
      });
      if (!same) void sumUpAll();
    }
    if (before?.job.name !== shown?.job.name) order = undefined;
    showSoon();
  }

  function forget(id: string) {
    copies.delete(id);
    entries.delete(id);
    order = undefined;
    showSoon();
  }

  async function readDevice() {
    try {
      const kept = await store.list();
      const ids = new Set(kept.map(({ id }) => id));
      for (const [id, { kept: was, device: _gone, ...rest }] of copies) {
        if (was === undefined || ids.has(id)) continue;
        if (rest.listed === undefined) forget(id);
        else {
          copies.set(id, rest);
          lay(id, {});
        }
      }
      for (const each of kept) {
        await turn();
        if (left) return;
        const known = copies.get(each.id);
        if (known?.kept?.keptAt !== each.keptAt) lay(each.id, { kept: each, device: readCopy(each.id, each.job) });
      }
      device = { kind: 'answered' };
    } catch (error) {
      device = { kind: 'away', words: wordsOf(error) };
    }
    showSoon();
  }

  async function fetchOne(listed: ListedJob): Promise<void> {
    const served = await server.get(listed.id);
    await turn();
    if (left || served === undefined) return;
    lay(listed.id, { listed, server: readCopy(listed.id, served.document) });
  }

  async function askServer(deviceRead: Promise<void>) {
    try {
      const list = await server.list();
      // what is here need not be fetched; but a device that does not answer holds up nothing
      await Promise.race([deviceRead, new Promise<void>((resolve) => later(resolve, DEVICE_FIRST_MS))]);
      const ids = new Set(list.map(({ id }) => id));
      for (const [id, { listed, server: _gone, ...rest }] of copies) {
        if (listed === undefined || ids.has(id)) continue;
        if (rest.kept === undefined) forget(id);
        else {
          copies.set(id, rest);
          lay(id, {});
        }
      }
      const wanted: ListedJob[] = [];
      for (const listed of list) {
        const known = copies.get(listed.id);
        if (known?.kept !== undefined) lay(listed.id, { listed });
        const fetched = known?.server !== undefined && known.listed?.updated === listed.updated;
        if (!fetched && mayDiffer(known ?? { id: listed.id }, listed)) wanted.push(listed);
      }
      await Promise.all(
        Array.from({ length: AT_ONCE }, async () => {
          for (let next = wanted.shift(); next !== undefined && !left; next = wanted.shift()) await fetchOne(next);
        }),
      );
      answered = { kind: 'answered' };
    } catch (error) {
      answered = { kind: 'away', words: wordsOf(error) };
    }
    showSoon();
  }

  async function sumUpAll() {
    if (summing) return;
    summing = true;
    for (let entry = nextToSum(); entry !== undefined && !left; entry = nextToSum()) {
      const { job } = entry;
      const key = keyOf(copies.get(job.id));
      const more: Partial<BookEntry> = await desk.sumUp(job).then(
        (summary) => {
          summaries.set(key, summary);
          return { summary };
        },
        (error: unknown) => ({ notWorkedOut: wordsOf(error) }),
      );
      const now = entries.get(job.id);
      if (now?.job === job) entries.set(job.id, { ...now, ...more });
      showSoon();
    }
    summing = false;
  }

  function nextToSum(): BookEntry | undefined {
    const open = (entry: BookEntry | undefined) =>
      entry !== undefined && entry.summary === undefined && entry.notWorkedOut === undefined;
    for (const id of first) if (open(entries.get(id))) return entries.get(id);
    for (const id of order ?? entries.keys()) if (open(entries.get(id))) return entries.get(id);
    return undefined;
  }

  return {
    state: () => state,
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    async open() {
      answered = { kind: 'asking' };
      turnBegan = clockMs();
      const deviceRead = readDevice();
      await Promise.all([deviceRead, askServer(deviceRead)]);
    },
    async again(id) {
      const kept = await store.kept(id);
      const was = copies.get(id)?.listed;
      const there = await servedOf(server, id).catch(() => 'away' as const);
      // with the server away what was known of it stands
      const listed = there === 'away' ? was : there?.listed;
      copies.delete(id);
      if (kept === undefined && listed === undefined) return forget(id);
      lay(id, {
        ...(kept === undefined ? {} : { kept, device: readCopy(id, kept.job) }),
        ...(listed === undefined ? {} : { listed }),
        ...(there === 'away' || there === undefined ? {} : { server: readCopy(id, there.served.document) }),
      });
    },
    wants(ids) {
      first = ids;
    },
    close() {
      left = true;
      listeners.clear();
    },
  };
}

/** A state of a job, by what its place says of when it was kept. */
function keyOf(copies: Copies | undefined): string {
  if (copies === undefined) return '';
  const { id, kept, listed } = copies;
  return `${id} ${kept?.keptAt ?? listed?.updated ?? ''}`;
}

function closedOf(copies: Copies): ClosedEntry[] {
  const { id, device, server, listed } = copies;
  const otherCopyOpens = shownCopy(copies) !== undefined;
  const closed = (where: 'device' | 'server', copy: Copies['device']): ClosedEntry[] => {
    if (copy === undefined || copy.job !== undefined) return [];
    const name = listed?.name ?? nameIn(copy.document) ?? laidAsideOf(id)?.id ?? id;
    return [{ id, name, where, words: copy.stops, document: copy.document, otherCopyOpens }];
  };
  return [...closed('device', device), ...closed('server', server)];
}

function nameIn(document: unknown): string | undefined {
  if (typeof document !== 'object' || document === null || !('name' in document)) return undefined;
  return typeof document.name === 'string' && document.name !== '' ? document.name : undefined;
}
