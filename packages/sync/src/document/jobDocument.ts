import * as A from '@automerge/automerge/slim';
import type { StoredChange, StoredHistory } from '../store/jobStore.ts';
import { coded, plain } from './coded.ts';
import { type Edit, editsBetween, isBranch, valueAt, withAt } from './edit.ts';
import type { Moment } from './jobHistory.ts';
import { putAt } from './putAt.ts';
import { messageOf, type Reason, reasonOf } from './reason.ts';
import { same } from './same.ts';
import { makeStepReader, type StepsBackAndForth } from './steps.ts';

type Doc = A.Doc<Record<string, unknown>>;

/** Thrown where a stored history does not read whole. Nothing of it was taken. */
export class HistoryUnreadable extends Error {
  override readonly name = 'HistoryUnreadable';
}

/** What a step back or forth would do. */
export interface SteppedEdits {
  readonly edits: readonly Edit[];
  /** Places somebody has changed since: these stay as they are. */
  readonly left: readonly Edit[];
}

/** A job and all its history. It only grows: a step back is one more change, and nothing is ever taken out. */
export interface JobDocument {
  job(): unknown;
  /** Names of the newest changes; together they name the state. */
  heads(): readonly string[];
  /** Takes edits in; undefined where they change nothing. Times are seconds of UTC since 1970. */
  commit(edits: readonly Edit[], reason: Reason, atS: number): StoredChange | undefined;
  /**
   * Fills in what reading the job fills in. Two pages that do so at the same state make the same change: two changes
   * would each make maps of their own, and only one of the two would be seen.
   */
  settle(edits: readonly Edit[], reason: Reason): StoredChange | undefined;
  /**
   * Takes in another state of the job that grew from an earlier moment, beside all that came since.
   *
   * A thing that both brought under one name stays as it is here; only what it lacks is taken from the other.
   */
  takeIn(job: unknown, grownFrom: readonly string[], reason: Reason, atS: number): readonly StoredChange[];
  /** Takes in changes of another page or device. True where they were news. */
  merge(changes: readonly Uint8Array[]): boolean;
  /** Takes in a whole history of another page, as it lies in the store. True where there was news in it. */
  mergeHistory(history: StoredHistory): boolean;
  /** True while a change waits here for one it was made on. */
  lacks(): boolean;
  /** The history, oldest first. */
  moments(): readonly Moment[];
  jobAt(heads: readonly string[]): unknown;
  /** What one change did. */
  editsOf(moment: Moment): readonly Edit[];
  stepsOf(device: string): StepsBackAndForth;
  /**
   * What taking a step back (`undo`), or doing it again (`redo`), would change. It is committed like any edit.
   * Records a step brought stay: what was seen on site is not undone.
   */
  editsOfStep(step: string, kind: 'undo' | 'redo'): SteppedEdits;
  /** Edits made on an earlier state; wherever they are taken in they come out as the very same change. */
  commitOn(heads: readonly string[], edits: readonly Edit[], reason: Reason, atS: number): StoredChange | undefined;
  has(heads: readonly string[]): boolean;
  /** When the last of these changes was made, seconds of UTC since 1970. */
  lastAtS(heads: readonly string[]): number;
  /** States a page stood at since a moment, by their heads, the newest first and no more than so many. */
  statesSince(heads: readonly string[], atMost: number): readonly (readonly string[])[];
  snapshot(): Uint8Array;
}

/** Begins the history of a job that has none. Two devices that begin the same job at the same moment begin alike. */
export function beginDocument(
  job: unknown,
  reason: Reason,
  atS: number,
): { document: JobDocument; changes: StoredChange[] } {
  const empty = A.init<Record<string, unknown>>({ actor: actorOf(JSON.stringify(job)) });
  const doc = A.change(empty, { message: messageOf(reason), time: atS }, (draft) => {
    Object.assign(draft, coded(job, undefined));
  });
  // from here on under a name of its own: the first one is shared by whoever begins alike
  return { document: documentOf(A.clone(doc)), changes: newSince(doc, []) };
}

/**
 * Opens a stored history.
 *
 * @throws HistoryUnreadable where a part is damaged or missing.
 */
export function openDocument({ snapshot, changes }: StoredHistory): JobDocument {
  let doc: Doc;
  try {
    const from = snapshot === undefined ? A.init<Record<string, unknown>>() : A.load<Record<string, unknown>>(snapshot);
    [doc] = A.applyChanges(
      from,
      changes.map(({ bytes }) => bytes),
    );
  } catch (error) {
    throw new HistoryUnreadable(error instanceof Error ? error.message : String(error));
  }
  const missing = A.getMissingDeps(doc, []);
  if (missing.length > 0) throw new HistoryUnreadable(`${missing.length} earlier changes are missing.`);
  if (A.getHeads(doc).length === 0) throw new HistoryUnreadable('There is nothing in it.');
  return documentOf(doc);
}

function documentOf(opened: Doc): JobDocument {
  let doc = opened;
  /** What changes of this page did; older ones are worked out when asked for. */
  const known = new Map<string, readonly Edit[]>();
  let listed: { heads: readonly string[]; moments: readonly Moment[] } = { heads: [], moments: [] };
  const stepReaders = new Map<string, ReturnType<typeof makeStepReader>>();

  function write(edits: readonly Edit[], reason: Reason, atS: number): StoredChange | undefined {
    if (edits.length === 0) return undefined;
    const before = A.getHeads(doc);
    doc = A.change(doc, { message: messageOf(reason), time: atS }, (draft) => {
      for (const { path, after } of edits) putAt(draft, path, after);
    });
    const [change] = newSince(doc, before);
    if (change !== undefined) known.set(change.hash, edits);
    return change;
  }

  /**
   * Edits made on an earlier state, as one change that comes out the same to the byte wherever it is made. Two pages
   * that take the same in at the same moment then have it once; had they it twice, one taken back would leave the other.
   */
  function branchFrom(heads: readonly string[], edits: readonly Edit[], reason: Reason, atS: number) {
    const from = heads.toSorted();
    const message = messageOf(reason);
    const actor = actorOf(JSON.stringify([from, edits, message, atS]));
    const branched = A.change(A.clone(A.view(doc, from), { actor }), { message, time: atS }, (draft) => {
      for (const { path, after } of edits) putAt(draft, path, after);
    });
    return newSince(branched, from);
  }

  function moments(): readonly Moment[] {
    const heads = A.getHeads(doc);
    if (same(listed.heads, heads)) return listed.moments;
    // only what came since is read: the whole of a long history costs more than the edit
    const since = A.getChangesMetaSince(doc, [...listed.heads]).map(({ hash, deps, time, message }) => ({
      hash,
      after: deps,
      atS: time,
      reason: reasonOf(message, hash),
    }));
    listed = { heads, moments: [...listed.moments, ...since] };
    return listed.moments;
  }

  const jobAt = (heads: readonly string[]) => (heads.length === 0 ? undefined : plain(A.view(doc, [...heads])));

  function editsOf({ hash, after }: Moment): readonly Edit[] {
    const kept = known.get(hash);
    if (kept !== undefined) return kept;
    const edits = editsBetween(jobAt(after), jobAt([hash]));
    known.set(hash, edits);
    return edits;
  }

  return {
    job: () => plain(doc),
    heads: () => A.getHeads(doc),
    commit: write,
    jobAt,
    editsOf,
    moments,
    stepsOf(device) {
      const reader = stepReaders.get(device) ?? makeStepReader(device);
      stepReaders.set(device, reader);
      return reader(moments());
    },
    statesSince(heads, atMost) {
      const before = new Set(heads);
      const states = new Map<string, readonly string[]>();
      const newestFirst = moments().toReversed();
      for (const { hash, after } of newestFirst) if (before.has(hash)) for (const each of after) before.add(each);
      for (const { hash, after } of newestFirst) {
        if (states.size >= atMost) break;
        if (before.has(hash)) continue;
        // a change was made on the state its page stood at
        for (const state of [[hash], after])
          if (state.some((each) => !before.has(each))) states.set(state.toSorted().join(), state);
      }
      return [...states.values()].slice(0, atMost);
    },
    lacks: () => A.getMissingDeps(doc, []).length > 0,

    settle(edits, reason) {
      if (edits.length === 0) return undefined;
      const before = A.getHeads(doc);
      const actor = actorOf(JSON.stringify([before, edits]));
      const settled = A.change(A.clone(doc, { actor }), { message: messageOf(reason), time: 0 }, (draft) => {
        for (const { path, after } of edits) putAt(draft, path, after);
      });
      const [change] = newSince(settled, before);
      if (change !== undefined) [doc] = A.applyChanges(doc, [change.bytes]);
      return change;
    },

    commitOn(heads, edits, reason, atS) {
      const [change] = branchFrom(heads, edits, reason, atS);
      if (change !== undefined) [doc] = A.applyChanges(doc, [change.bytes]);
      return change;
    },

    has: (heads) => A.hasHeads(doc, [...heads]),
    lastAtS: (heads) => Math.max(0, ...moments().map(({ hash, atS }) => (heads.includes(hash) ? atS : 0))),
    snapshot: () => A.save(doc),

    takeIn(job, grownFrom, reason, atS) {
      const edits = editsBetween(jobAt(grownFrom), job);
      if (edits.length === 0) return [];
      const now = plain(doc);
      const branch = branchFrom(grownFrom, edits, reason, atS);
      [doc] = A.applyChanges(
        doc,
        branch.map(({ bytes }) => bytes),
      );
      // of two things brought under one name one alone is seen: what it was here is put back, with what it lacked
      const merged = plain(doc);
      const both = edits.flatMap(({ path, before: then, after }): Edit[] => {
        const here = valueAt(now, path);
        if (then !== undefined || !isBranch(after) || !isBranch(here)) return [];
        const filled = withLacking(here, after);
        const seen = valueAt(merged, path);
        return same(seen, filled) ? [] : [{ path, before: seen, after: filled }];
      });
      const filled = write(both, reason, atS);
      return filled === undefined ? branch : [...branch, filled];
    },

    merge(changes) {
      const before = A.getHeads(doc);
      [doc] = A.applyChanges(doc, [...changes]);
      return !same(before, A.getHeads(doc));
    },

    mergeHistory({ snapshot, changes }) {
      const before = A.getHeads(doc);
      if (snapshot !== undefined) doc = A.loadIncremental(doc, snapshot);
      [doc] = A.applyChanges(
        doc,
        changes.map(({ bytes }) => bytes),
      );
      return !same(before, A.getHeads(doc));
    },

    editsOfStep(step, kind) {
      const own = moments()
        .filter(({ reason: { step: each } }) => each === step)
        .flatMap(editsOf)
        .filter(({ path: [part] }) => part !== 'records');
      const now = plain(doc);
      let job: unknown = now;
      const left: Edit[] = [];
      for (const { path, before, after } of kind === 'undo' ? own.toReversed() : own) {
        const [from, to] = kind === 'undo' ? [after, before] : [before, after];
        if (same(valueAt(job, path), from)) job = withAt(job, path, to);
        else left.push({ path, before: from, after: to });
      }
      return { edits: editsBetween(now, job), left };
    },
  };
}

/** A thing as it is here, with what it lacks and another has. */
function withLacking(here: unknown, other: unknown): unknown {
  if (!isBranch(here) || !isBranch(other)) return here;
  const names = [...new Set([...Object.keys(here), ...Object.keys(other)])];
  return Object.fromEntries(
    names.map((name) => [name, here[name] === undefined ? other[name] : withLacking(here[name], other[name])]),
  );
}

function newSince(doc: Doc, heads: readonly string[]): StoredChange[] {
  return A.getChangesSince(doc, [...heads]).map((bytes) => ({ hash: A.decodeChange(bytes).hash, bytes }));
}

/** A name for whoever writes the first change: worked out from what is written, 16 bytes as the core wants it. */
function actorOf(text: string): string {
  let name = '';
  for (let seed = 0; seed < 4; seed += 1) {
    // FNV-1a, 32 bit, begun four ways
    let hash = (0x811c9dc5 ^ seed) >>> 0;
    for (let i = 0; i < text.length; i += 1) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193) >>> 0;
    name += hash.toString(16).padStart(8, '0');
  }
  return name;
}
