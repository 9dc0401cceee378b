import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { JobStore, JobToSave } from '../src/store/jobStore.ts';

const minute = (n: number) => new Date(Date.UTC(2026, 2, 1, 9, n));

const job = (id: string, savedAt: Date, document: unknown = { title: id }): JobToSave => ({
  id,
  name: `Job ${id}`,
  region: 'au-nz',
  document,
  savedAt,
});

/**
 * What every store of jobs has to do.
 *
 * @param open   an empty store for each test.
 */
export function acceptJobStore(kind: string, open: () => JobStore): void {
  describe(`${kind} keeps jobs`, () => {
    let store: JobStore;
    beforeEach(() => {
      store = open();
    });
    afterEach(() => store.close());

    test('an empty store lists nothing, finds nothing and was never touched', async () => {
      expect(await store.list()).toEqual([]);
      expect(await store.get('kestrel')).toBeUndefined();
      expect(await store.history('kestrel')).toEqual([]);
      expect(await store.isUntouched()).toBe(true);
    });

    test('what was put is got back equal, with its clock and a first revision', async () => {
      const document = { title: 'Kestrel', Ω: '≥ 1 MΩ', nested: [{ a: null, b: 0.1 }] };
      const entry = await store.put(job('kestrel', minute(5), document));
      const expected = {
        id: 'kestrel',
        name: 'Job kestrel',
        region: 'au-nz',
        updated: '2026-03-01T09:05:00.000Z',
        revision: 1,
      };
      expect(entry).toEqual(expected);
      expect(await store.get('kestrel')).toEqual({ ...expected, document });
      expect(await store.isUntouched()).toBe(false);
    });

    test('the list has the job saved last at its head, without documents', async () => {
      await store.put(job('a', minute(1)));
      await store.put(job('b', minute(2)));
      await store.put(job('a', minute(3), { title: 'a, moved' }));
      const list = await store.list();
      expect(list.map(({ id, revision }) => [id, revision])).toEqual([
        ['a', 2],
        ['b', 1],
      ]);
      expect(list.some((entry) => 'document' in entry)).toBe(false);
    });

    test('every saved state stays in the history, the oldest first', async () => {
      await store.put(job('a', minute(1), { pitchDeg: 22 }));
      await store.put(job('a', minute(2), { pitchDeg: 22.5 }));
      expect(await store.history('a')).toEqual([
        { revision: 1, savedAt: '2026-03-01T09:01:00.000Z', document: { pitchDeg: 22 } },
        { revision: 2, savedAt: '2026-03-01T09:02:00.000Z', document: { pitchDeg: 22.5 } },
      ]);
      const [, second] = await store.history('a');
      expect(await store.stateAt('a', 2)).toEqual(second);
      expect(await store.stateAt('a', 9)).toBeUndefined();
      expect(await store.stateAt('nobody', 1)).toBeUndefined();
    });

    test('a document equal to the stored one makes no new state', async () => {
      await store.put(job('a', minute(1)));
      const again = await store.put(job('a', minute(9)));
      expect(again).toMatchObject({ revision: 1, updated: '2026-03-01T09:01:00.000Z' });
      expect(await store.history('a')).toHaveLength(1);
    });

    test('a save over an unseen revision writes nothing', async () => {
      await store.put(job('a', minute(1), { by: 'Nia' }), 0);
      await store.put(job('a', minute(2), { by: 'Tom' }), 1);
      expect(await store.put(job('a', minute(3), { by: 'Nia again' }), 1)).toBeUndefined();
      expect(await store.put(job('b', minute(3), { by: 'Nia' }), 4)).toBeUndefined();
      expect((await store.get('a'))?.document).toEqual({ by: 'Tom' });
      expect(await store.history('a')).toHaveLength(2);
      expect(await store.get('b')).toBeUndefined();
    });

    test('the same save asked for twice, over the revision it knew, is no quarrel', async () => {
      const first = await store.put(job('kestrel', minute(0), { title: 'one' }));
      const second = await store.put(job('kestrel', minute(1), { title: 'two' }), first?.revision);
      expect(await store.put(job('kestrel', minute(2), { title: 'two' }), first?.revision)).toEqual(second);
    });

    test('a removed job is gone from the list; its history stays and its revisions go on', async () => {
      await store.put(job('a', minute(1)));
      expect(await store.remove('a')).toBe(true);
      expect(await store.remove('a')).toBe(false);
      expect(await store.list()).toEqual([]);
      expect(await store.history('a')).toHaveLength(1);
      expect(await store.isUntouched()).toBe(false);
      expect(await store.put(job('a', minute(2)))).toMatchObject({ revision: 2 });
    });

    test('changing what was handed in or out does not change what is stored', async () => {
      const document = { rows: [1] };
      await store.put(job('a', minute(1), document));
      document.rows.push(2);
      const got = (await store.get('a')) as { document: { rows: number[] } };
      got.document.rows.push(3);
      expect((await store.get('a'))?.document).toEqual({ rows: [1] });
    });
  });
}
