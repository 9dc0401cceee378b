import type { Edit } from '../document/edit.ts';
import type { Reason } from '../document/reason.ts';

/** Edits made before the history was open. The next page that opens it takes them in. */
export interface LooseEdits {
  /** Names them on this device. */
  readonly id: string;
  readonly edits: readonly Edit[];
  readonly reason: Reason;
  /** Seconds of UTC since 1970. */
  readonly atS: number;
  /** Heads of the history that the job they were made on was read from; left out where there was none yet. */
  readonly over?: readonly string[];
  /** Those the same page made before them, which they grew from. */
  readonly after?: string;
}

/** What a device knows of a job without reading its history: enough to list it and to open it at once. */
export interface KeptJob {
  readonly id: string;
  /** The job as it stood after the last change kept: plain data, as a job file has it. */
  readonly job: unknown;
  /** Heads of the history the job was read from; left out where there is none yet. */
  readonly heads?: readonly string[];
  /** When that change was kept, ISO instant. */
  readonly keptAt: string;
  /** What the firm's server is known to hold of it; left out where it has never been there. */
  readonly server?: ServerMark;
  /** States sent to the server whose answer has not come: it may hold one of them. */
  readonly sent?: readonly SentState[];
  /** Edits the history does not have yet, oldest first. Those of several pages stand beside each other. */
  readonly loose?: readonly LooseEdits[];
}

/** A state on its way to the server. */
export interface SentState {
  readonly heads: readonly string[];
  /** Revision it was to go over: once the server has another, it has arrived or never will. */
  readonly over: string | undefined;
}

/** The last state in which this device and the server agreed. */
export interface ServerMark {
  /** As the server's ETag names it. */
  readonly revision: string;
  /** Heads of the history at that state; none where it is the state the history is yet to begin with. */
  readonly heads: readonly string[];
  /** When they agreed, ISO instant. */
  readonly at: string;
  /** Grows with the server's revisions: of two marks the later is known whatever the clocks say. 0 where left out. */
  readonly count?: number;
}

/** What is known of the server, and of what it may hold besides. */
export type KnownOfServer = Pick<KeptJob, 'server' | 'sent'>;

/** So many unanswered states are looked through for the one the server may hold. */
const SENT_AT_MOST = 20;

/** Of two marks of one count, one that names a moment says more than one whose history was yet to begin. */
function laterMark(one: ServerMark | undefined, other: ServerMark | undefined): ServerMark | undefined {
  if (one === undefined || other === undefined) return one ?? other;
  const more = (other.count ?? 0) - (one.count ?? 0);
  return more > 0 || (more === 0 && other.heads.length > 0) ? other : one;
}

/** The later of what two pages know of the server, and all that either sent over that: what was sent over an earlier one is answered by it. */
export function laterKnown(one: KnownOfServer, other: KnownOfServer): KnownOfServer {
  const server = laterMark(one.server, other.server);
  const all = [...(one.sent ?? []), ...(other.sent ?? [])].filter(
    ({ over }) => server === undefined || over === server.revision,
  );
  const sent = [...new Map(all.map((each) => [each.heads.join(), each])).values()].slice(-SENT_AT_MOST);
  return { ...(server === undefined ? {} : { server }), ...(sent.length === 0 ? {} : { sent }) };
}

/**
 * A job as it is put in the place of another. What a page knows of the server never goes back to something older, and
 * edits of another page that wait for the history stay.
 *
 * @param taken loose edits that the history now has.
 */
export function putOver(before: KeptJob | undefined, kept: KeptJob, taken: readonly string[]): KeptJob {
  const { server: _server, sent: _sent, loose: mine = [], ...others } = kept;
  const known = new Set([...taken, ...mine.map(({ id }) => id)]);
  const loose = [...(before?.loose ?? []).filter(({ id }) => !known.has(id)), ...mine];
  return {
    ...others,
    ...laterKnown(before ?? {}, kept),
    ...(loose.length === 0 ? {} : { loose }),
  };
}

/** One change of a job's history, coded. */
export interface StoredChange {
  readonly hash: string;
  readonly bytes: Uint8Array;
}

/** A job's history as it lies in a store. */
export interface StoredHistory {
  /** All that was folded together last. */
  readonly snapshot: Uint8Array | undefined;
  /** Changes kept since, in no particular order. */
  readonly changes: readonly StoredChange[];
}

/** Thrown where the device has no more room; nothing was written. */
export class StoreFull extends Error {
  override readonly name = 'StoreFull';
}

/** Thrown where a newer version of the store stands on the device than this one can read. */
export class StoreNewer extends Error {
  override readonly name = 'StoreNewer';
}

/**
 * Jobs and their histories on one device.
 *
 * Every call settles only when what it says is truly kept. A change is only ever added, by its hash, so that two
 * pages on one device never write over each other.
 */
export interface JobStore {
  /** All jobs, without their histories, by name of id. */
  list(): Promise<readonly KeptJob[]>;
  /** One job without its history; undefined where it is not here. */
  kept(id: string): Promise<KeptJob | undefined>;
  history(id: string): Promise<StoredHistory>;
  /** Keeps a job only where there is none of its id; tells what is kept then, this one or the other. */
  addNew(kept: KeptJob): Promise<KeptJob>;
  /**
   * Adds changes and says how the job stands after them, both or neither. The later mark of the server stays, and so do
   * loose edits but those `taken` into the history.
   */
  add(kept: KeptJob, changes: readonly StoredChange[], taken?: readonly string[]): Promise<void>;
  /** Puts the first changes of a history only where there are none; tells the history as it lies there then. */
  begin(id: string, changes: readonly StoredChange[]): Promise<StoredHistory>;
  /**
   * Puts a snapshot in the place of what it was made of. It is made of the history as it lies there at that moment,
   * in one breath with the writing, so that another page's changes are never left out of it.
   */
  fold(id: string, snapshotOf: (history: StoredHistory) => Uint8Array): Promise<void>;
  /**
   * Lays a history that does not read aside, whole, under a name it can be saved by; the job is then without one.
   * It is looked at once more in one breath with that: another page may have begun a sound one meanwhile, which stays.
   */
  setAside(id: string, at: string, isDamaged: (history: StoredHistory) => boolean): Promise<void>;
  /** What was laid aside of a job, one file's worth each. */
  aside(id: string): Promise<readonly { readonly at: string; readonly bytes: Uint8Array }[]>;
  /** Removes a job, only where it is still as it was seen; false where it is not. Nothing is removed then. */
  remove(id: string, isAsSeen: (kept: KeptJob | undefined) => boolean): Promise<boolean>;
}
