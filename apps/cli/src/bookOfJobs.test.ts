import { expect, test } from 'vitest';
import { firstJobs, validateJob } from './bookOfJobs.ts';

test('every job a new book begins with holds, and ids differ', () => {
  const judged = firstJobs().map(validateJob);
  expect(judged.flatMap((each) => (each.ok ? [] : each.problems))).toEqual([]);
  const ids = judged.map((each) => (each.ok ? each.id : ''));
  expect(ids.length).toBeGreaterThan(0);
  expect(new Set(ids).size).toBe(ids.length);
});

test('the region names the variant where it says more than the pack', () => {
  const regions = Object.fromEntries(
    firstJobs().map((document) => {
      const judged = validateJob(document);
      return judged.ok ? [judged.id, judged.region] : ['', ''];
    }),
  );
  expect(regions).toMatchObject({ 'quayside-terrace': 'iec-eu/gb', 'larkspur-lane': 'us' });
});

test('what no field of ours knows is kept', () => {
  const [first] = firstJobs();
  const judged = validateJob({ ...(first as object), lantern: { oil: 'low' } });
  expect(judged).toMatchObject({ ok: true, document: { lantern: { oil: 'low' } } });
});

test.each([
  ['nothing', undefined],
  ['text', 'a roof'],
  ['another sort of document', { format: 'rail-list' }],
])('refusal: %s is no job, and each problem has a way out', (_what, document) => {
  const judged = validateJob(document);
  expect(judged.ok).toBe(false);
  if (judged.ok) return;
  expect(judged.problems.length).toBeGreaterThan(0);
  for (const { mend } of judged.problems) expect(mend).not.toBe('');
});

test('several wrong fields are all named, by their paths', () => {
  const [first] = firstJobs();
  const judged = validateJob({ ...(first as object), name: '', state: 'lost', facts: {} });
  const paths = judged.ok ? [] : judged.problems.map(({ at }) => at);
  expect(paths).toContain('name');
  expect(paths).toContain('state');
  expect(paths.some((at) => at.startsWith('facts.'))).toBe(true);
});
