import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { demoJobs, kestrelRise } from '@eaveline/job';
import { beforeAll, describe, expect, test } from 'vitest';
import { type Edit, editsBetween, valueAt, withAt } from './edit.ts';
import { beginDocument, HistoryUnreadable, type JobDocument, openDocument } from './jobDocument.ts';
import type { Reason } from './reason.ts';
import { startDocuments } from './startDocuments.ts';

const core = createRequire(import.meta.url).resolve('@automerge/automerge/automerge.wasm');
beforeAll(() => startDocuments(readFileSync(core)));

const T0 = Date.UTC(2026, 4, 15, 6, 0) / 1000;
let count = 0;
function reason(what: string, more: Partial<Reason> = {}): Reason {
  count += 1;
  return { who: 'Nia', what, device: 'phone', step: `s${count}`, kind: 'edit', ...more };
}

const FEED = ['choices', 'trunks', 'a', 'feedDrop'];
const LENGTH = ['choices', 'trunks', 'a', 'homeRun', 'lengthM'];

function begin(job: unknown = kestrelRise) {
  return beginDocument(job, reason('begun', { kind: 'begun' }), T0);
}
function edit(document: JobDocument, path: readonly string[], after: unknown, words: Reason) {
  const before = valueAt(document.job(), path);
  return document.commit([{ path, before, after }], words, T0 + count);
}

describe('a document is the job, whole', () => {
  test.each(demoJobs.map((job) => [job.name, job] as const))('%s comes back out as it went in', (_, job) => {
    expect(begin(job).document.job()).toEqual(job);
  });

  test('it comes back out of its snapshot, and out of its changes in any order', () => {
    const { document, changes } = begin();
    const more = [
      edit(document, FEED, 5, reason('feed at the fifth')),
      edit(document, LENGTH, 24, reason('home run')),
    ].map((change) => change as NonNullable<typeof change>);
    const job = document.job();
    expect(openDocument({ snapshot: document.snapshot(), changes: [] }).job()).toEqual(job);
    expect(openDocument({ snapshot: undefined, changes: [...changes, ...more].reverse() }).job()).toEqual(job);
  });

  test('two devices that begin the same job at the same moment begin with the same change', () => {
    const words: Reason = { who: '', what: 'from the server', device: '', step: 'first', kind: 'begun' };
    const [one, two] = [beginDocument(kestrelRise, words, T0), beginDocument(kestrelRise, words, T0)];
    expect(one.changes.map(({ hash }) => hash)).toEqual(two.changes.map(({ hash }) => hash));
    const change = edit(one.document, FEED, 5, reason('feed'));
    expect(two.document.merge([change?.bytes as Uint8Array])).toBe(true);
    expect(valueAt(two.document.job(), FEED)).toBe(5);
  });

  test('an edit that changes nothing is no change', () => {
    const { document } = begin();
    expect(document.commit([], reason('nothing'), T0)).toBeUndefined();
  });
});

describe('a damaged history is not taken in part', () => {
  test('a byte turned over', () => {
    const snapshot = begin().document.snapshot();
    snapshot[snapshot.length >> 1] = (snapshot[snapshot.length >> 1] ?? 0) ^ 0xff;
    expect(() => openDocument({ snapshot, changes: [] })).toThrow(HistoryUnreadable);
  });
  test('cut short', () => {
    const snapshot = begin().document.snapshot();
    expect(() => openDocument({ snapshot: snapshot.subarray(0, 900), changes: [] })).toThrow(HistoryUnreadable);
  });
  test('a change in the middle is lost', () => {
    const { document, changes } = begin();
    edit(document, FEED, 5, reason('feed'));
    const last = edit(document, FEED, 6, reason('feed'));
    expect(() => openDocument({ snapshot: undefined, changes: [...changes, last as (typeof changes)[0]] })).toThrow(
      '1 earlier changes are missing',
    );
  });
  test('nothing in it', () => {
    expect(() => openDocument({ snapshot: undefined, changes: [] })).toThrow(HistoryUnreadable);
  });
});

describe('the history says who, when and what', () => {
  test('each change with its reason, oldest first, and what it did', () => {
    const { document } = begin();
    edit(document, FEED, 5, { ...reason('Feed it at the fifth drop'), who: 'Tomas' });
    const moments = document.moments();
    expect(moments.map(({ reason: { who, what } }) => [who, what])).toEqual([
      ['Nia', 'begun'],
      ['Tomas', 'Feed it at the fifth drop'],
    ]);
    const last = moments[1] as (typeof moments)[0];
    expect(new Date(last.atS * 1000).toISOString().slice(0, 10)).toBe('2026-05-15');
    expect(document.editsOf(last)).toEqual([{ path: FEED, before: valueAt(kestrelRise, FEED), after: 5 }]);
    // the same, read by a device that did not make it
    const elsewhere = openDocument({ snapshot: document.snapshot(), changes: [] });
    expect(elsewhere.editsOf(elsewhere.moments()[1] as typeof last)).toEqual(document.editsOf(last));
  });

  test('the job at an earlier moment', () => {
    const { document } = begin();
    const then = document.heads();
    edit(document, FEED, 5, reason('feed'));
    expect(document.jobAt(then)).toEqual(kestrelRise);
    expect(valueAt(document.job(), FEED)).toBe(5);
  });

  test('a change of foreign make, without a reason that reads, is somebody’s edit', () => {
    const { document } = begin();
    document.commit([{ path: FEED, before: 1, after: 5 }], reason('feed'), T0);
    expect(document.moments().every(({ reason: { what } }) => what !== '')).toBe(true);
  });
});

describe('a step back is by meaning', () => {
  function walk(document: JobDocument, step: string, kind: 'undo' | 'redo') {
    const { edits, left } = document.editsOfStep(step, kind);
    return { change: document.commit(edits, reason(kind, { kind, of: step }), T0), left };
  }
  const back = (document: JobDocument, step: string) => walk(document, step, 'undo');
  const forth = (document: JobDocument, step: string) => walk(document, step, 'redo');

  test('without end: forty steps back to the beginning, forty forth again', () => {
    const { document } = begin();
    for (let n = 1; n <= 40; n += 1) edit(document, LENGTH, 30 + n, reason(`home run ${n}`));
    const newest = document.job();
    for (let n = 0; n < 40; n += 1) back(document, document.stepsOf('phone').back.at(-1) as string);
    expect(document.job()).toEqual(kestrelRise);
    expect(document.stepsOf('phone').back).toEqual([]);
    for (let n = 0; n < 40; n += 1) forth(document, document.stepsOf('phone').forth.at(-1) as string);
    expect(document.job()).toEqual(newest);
  });

  test('it outlives the page: the steps are read off the history', () => {
    const { document } = begin();
    const words = reason('feed');
    edit(document, FEED, 5, words);
    const again = openDocument({ snapshot: document.snapshot(), changes: [] });
    expect(again.stepsOf('phone').back).toEqual([words.step]);
    back(again, words.step);
    expect(again.job()).toEqual(kestrelRise);
    expect(again.stepsOf('phone')).toEqual({ back: [], forth: [words.step] });
  });

  test('letters typed into one field are one step', () => {
    const { document } = begin();
    const words = reason('home run of trunk A');
    for (const length of [2, 24, 24.5]) edit(document, LENGTH, length, words);
    expect(document.stepsOf('phone').back).toEqual([words.step]);
    back(document, words.step);
    expect(document.job()).toEqual(kestrelRise);
    forth(document, words.step);
    expect(valueAt(document.job(), LENGTH)).toBe(24.5);
  });

  test('what another device did stays: only the own step goes, and nothing of the other is on this stack', () => {
    const { document } = begin();
    const mine = reason('feed');
    edit(document, FEED, 5, mine);
    edit(document, LENGTH, 40, { ...reason('home run'), device: 'desk' });
    expect(document.stepsOf('phone').back).toEqual([mine.step]);
    back(document, mine.step);
    expect(valueAt(document.job(), FEED)).toBe(valueAt(kestrelRise, FEED));
    expect(valueAt(document.job(), LENGTH)).toBe(40);
  });

  test('a place that somebody changed since stays as it is, and it is said', () => {
    const { document } = begin();
    const mine = reason('feed');
    edit(document, FEED, 5, mine);
    edit(document, FEED, 7, { ...reason('feed'), device: 'desk' });
    const { change, left } = back(document, mine.step);
    expect(change).toBeUndefined();
    expect(left.map(({ path }) => path)).toEqual([FEED]);
    expect(valueAt(document.job(), FEED)).toBe(7);
  });

  test('a thing added goes whole; one taken away comes back whole', () => {
    const { document } = begin();
    const module = ['choices', 'modules', 'n1-7'];
    const path = valueAt(kestrelRise, module) === undefined ? ['choices', 'trunks', 'b'] : module;
    const words = reason('taken away');
    edit(document, path, undefined, words);
    expect(valueAt(document.job(), path)).toBeUndefined();
    back(document, words.step);
    expect(document.job()).toEqual(kestrelRise);
  });

  test('a record is no step: it is superseded, never taken back', () => {
    const { document } = begin();
    const path = ['records', 'serials', 'n1-7'];
    edit(
      document,
      path,
      { at: '2026-05-15T06:00:00Z', by: 'Nia', of: 'n1-7', serial: 'A1' },
      reason('serial', { kind: 'record' }),
    );
    expect(document.stepsOf('phone')).toEqual({ back: [], forth: [] });
  });

  test('a new edit after a step back ends what could be done again', () => {
    const { document } = begin();
    const first = reason('feed');
    edit(document, FEED, 5, first);
    back(document, first.step);
    edit(document, LENGTH, 40, reason('home run'));
    expect(document.stepsOf('phone').forth).toEqual([]);
  });
});

describe('two that worked apart meet', () => {
  test('edits at different places are both there', () => {
    const { document: one, changes } = begin();
    const two = openDocument({ snapshot: undefined, changes });
    const mine = edit(one, FEED, 5, reason('feed'));
    const theirs = edit(two, LENGTH, 40, { ...reason('home run'), device: 'desk' });
    one.merge([theirs?.bytes as Uint8Array]);
    two.merge([mine?.bytes as Uint8Array]);
    expect(one.job()).toEqual(two.job());
    expect([valueAt(one.job(), FEED), valueAt(one.job(), LENGTH)]).toEqual([5, 40]);
  });

  test('notes written at once keep both hands’ words; a serial is one or the other, never a mixture', () => {
    const note = ['facts', 'access', 'note'];
    const meter = ['facts', 'network', 'meterNumber'];
    const job = withAt(withAt(kestrelRise, note, 'Gate at the side.'), meter, '0000');
    const { document: one, changes } = begin(job);
    const two = openDocument({ snapshot: undefined, changes });
    const mine = [
      edit(one, note, 'Gate at the side. Dog.', reason('note')),
      edit(one, meter, 'AB-12', reason('meter')),
    ];
    edit(two, note, 'Key with the neighbour. Gate at the side.', { ...reason('note'), device: 'desk' });
    edit(two, meter, 'CD-34', { ...reason('meter'), device: 'desk' });
    two.merge(mine.map((change) => change?.bytes as Uint8Array));
    expect(valueAt(two.job(), note)).toBe('Key with the neighbour. Gate at the side. Dog.');
    expect(['AB-12', 'CD-34']).toContain(valueAt(two.job(), meter));
  });

  test('a state from the server that grew from an earlier moment is taken in beside what came since', () => {
    const { document } = begin();
    const agreed = document.heads();
    edit(document, FEED, 5, reason('feed'));
    const served = withAt(kestrelRise, LENGTH, 40);
    const changes = document.takeIn(served, agreed, reason('from the server', { kind: 'taken in' }), T0 + 99);
    expect(changes).toHaveLength(1);
    expect([valueAt(document.job(), FEED), valueAt(document.job(), LENGTH)]).toEqual([5, 40]);
    // grown from the newest state, the same text means that the feed was put back
    document.takeIn(served, document.heads(), reason('again', { kind: 'taken in' }), T0);
    expect(valueAt(document.job(), FEED)).toBe(valueAt(kestrelRise, FEED));
  });
});

test('two pages that take in the same have it once: what another then takes back is gone on both', () => {
  const note = ['customer', 'note-of-a-newer-version'];
  const { document: one, changes } = begin();
  const two = openDocument({ snapshot: undefined, changes });
  const agreed = one.heads();
  const served = withAt(kestrelRise, note, 'Ring first');
  const from = (revision: number) => reason('taken in', { kind: 'taken in', step: `server ${revision}` });
  const mine = one.takeIn(served, agreed, from(2), T0);
  const theirs = two.takeIn(served, agreed, from(2), T0);
  expect(mine.map(({ hash }) => hash)).toEqual(theirs.map(({ hash }) => hash));
  two.merge(mine.map(({ bytes }) => bytes));
  const [taken] = mine;
  two.takeIn(kestrelRise, [taken?.hash as string], from(3), T0);
  expect(valueAt(two.job(), note)).toBeUndefined();
});

describe('edits between two states', () => {
  test('place by place; a list is one value, a thing that came is one edit', () => {
    const before = { a: { x: 1, list: [1, 2] }, gone: { y: 1 } };
    const after = { a: { x: 2, list: [1, 3] }, came: { z: 1 } };
    const edits: Edit[] = [
      { path: ['a', 'x'], before: 1, after: 2 },
      { path: ['a', 'list'], before: [1, 2], after: [1, 3] },
      { path: ['gone'], before: { y: 1 }, after: undefined },
      { path: ['came'], before: undefined, after: { z: 1 } },
    ];
    expect(editsBetween(before, after)).toEqual(edits);
  });
  test('order of names is no difference', () => {
    expect(editsBetween({ a: 1, b: { c: 1, d: 2 } }, { b: { d: 2, c: 1 }, a: 1 })).toEqual([]);
  });
});
