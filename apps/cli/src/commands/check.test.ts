import { kestrelRise, writeJob } from '@eaveline/job';
import { expect, test } from 'vitest';
import { runInMemory } from '../../test/memoryIo.ts';
import { registerCheck } from './check.ts';

const kestrel = writeJob(kestrelRise);
const changed = (change: (job: typeof kestrelRise) => void): string => {
  const job = structuredClone(kestrelRise);
  change(job);
  return writeJob(job);
};

test('a job with a failing rule: verdict 1, the sentence, the clause and the way out', async () => {
  const { text, verdict } = await runInMemory(registerCheck, { 'k.job.json': kestrel }, 'check', 'k.job.json');
  expect(verdict).toBe(1);
  expect(text).toMatch(/fails +Trunk A rises 5\.\d\d V/);
  expect(text).toContain('AS/NZS 4777.1 cl 3.3.3');
  expect(text).toContain('mend: Feed it at the fifth drop.');
  expect(text).toContain('(invented)');
});

test('--json gives every finding with its working', async () => {
  const { text } = await runInMemory(registerCheck, { 'k.job.json': kestrel }, 'check', 'k.job.json', '--json');
  const { tally, findings } = JSON.parse(text);
  expect(findings.filter((finding: { state: string }) => finding.state === 'fails')).toHaveLength(tally.fails);
  const rise = findings.find((finding: { id: string }) => finding.id === 'trunk-rise:a');
  expect(rise.working.inputs.length).toBeGreaterThan(2);
});

test('a missing record low asks, and the weather never answers in its place', async () => {
  const job = changed((draft) => {
    delete draft.facts.site.recordLowC;
  });
  const { text } = await runInMemory(registerCheck, { 'k.job.json': job }, 'check', 'k.job.json', '--json');
  const cold = JSON.parse(text).findings.filter((finding: { rule: string }) => finding.rule === 'cold-voltage');
  expect(cold.length).toBeGreaterThan(0);
  for (const finding of cold) {
    expect(finding.state).toBe('ask');
    expect(finding.value).toBeUndefined();
    expect(finding.needs).toContain('facts.site.recordLowC');
  }
});

test('a limit that somebody confirmed says who and when; a word that matches nothing is told', async () => {
  const job = changed((draft) => {
    draft.choices.confirmations = {
      one: { rule: 'fault-loop', edition: 'AS/NZS 3000 2018', by: 'Nia Rees', licence: '4711', on: '2026-05-02' },
      two: { rule: 'fault-loops', edition: '2018', by: 'Nia Rees', on: '2026-05-02' },
    };
  });
  const { text } = await runInMemory(registerCheck, { 'k.job.json': job }, 'check', 'k.job.json', '--all');
  expect(text).toContain('Limit confirmed by Nia Rees, licence 4711, 2026-05-02.');
  expect(text).toContain('Confirmation two by Nia Rees (fault-loops, edition 2018) counts for nothing');
});

test('a job on standard input', async () => {
  const { verdict } = await runInMemory(registerCheck, { '-': kestrel }, 'check', '-');
  expect(verdict).toBe(1);
});

test.each([
  ['an empty file', '', 'empty'],
  ['not JSON', '{"format": "eaveline-job",', 'line 1'],
  ['a newer version', kestrel.replace('"version": 1', '"version": 99'), '99'],
  [
    'an impossible latitude',
    changed((draft) => {
      draft.facts.site.latitudeDeg = 123;
    }),
    'facts.site.latitudeDeg',
  ],
  [
    'a negative length',
    changed((draft) => {
      const trunk = draft.choices.trunks.a;
      if (trunk) trunk.homeRun.lengthM = -3;
    }),
    'choices.trunks.a.homeRun.lengthM',
  ],
])('%s cannot be judged: verdict 2 and where it is', async (_what, file, where) => {
  const { text, verdict } = await runInMemory(registerCheck, { 'bad.json': file }, 'check', 'bad.json');
  expect(verdict).toBe(2);
  expect(text).toContain(where);
});

/** An EPW of a whole year whose radiation is the code for missing in every row. */
function darkYear(): string {
  const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  const rows = days.flatMap((count, m) =>
    Array.from({ length: 24 * count }, (_, i) => {
      const stamp = `2001,${m + 1},${Math.floor(i / 24) + 1},${(i % 24) + 1},0,?`;
      return `${stamp},20,10,50,100000,0,0,300,9999,9999,9999,0,0,0,0,180,2,5,5`;
    }),
  );
  return [
    'LOCATION,Nowhere,VIC,AUS,made up,0,-37.6,143.9,10,400',
    'DESIGN CONDITIONS',
    'TYPICAL/EXTREME PERIODS',
    'GROUND TEMPERATURES',
    'HOLIDAYS/DAYLIGHT SAVINGS',
    'COMMENTS 1',
    'COMMENTS 2',
    'DATA PERIODS,1,1,Data,Sunday,1/1,12/31',
    ...rows,
  ].join('\n');
}

test('a weather file without light gives no year of nothing', async () => {
  const files = { 'k.job.json': kestrel, 'dark.epw': darkYear() };
  const { text, verdict } = await runInMemory(registerCheck, files, 'check', 'k.job.json', '--weather', 'dark.epw');
  expect(verdict).toBe(2);
  expect(text).toContain('sun on the level for 0 of 8760 hours');
});

test('weather that is no weather is refused with the reader’s words', async () => {
  const files = { 'k.job.json': kestrel, 'w.epw': 'hello' };
  const { text, verdict } = await runInMemory(registerCheck, files, 'check', 'k.job.json', '--weather', 'w.epw');
  expect(verdict).toBe(2);
  expect(text).toContain('cannot be used as weather');
});
