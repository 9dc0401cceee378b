import { expect, test } from 'vitest';
import { kestrelRise, larkspurLane } from '../demo/index.ts';
import type { Job } from '../schema/job.ts';
import { parseJob } from './parseJob.ts';

type Draft = ReturnType<typeof JSON.parse>;

/** What stops the job once something in it was changed, as `path: wanted`. */
function stops(job: Job, change: (draft: Draft) => void): string[] {
  const draft: Draft = structuredClone(job);
  change(draft);
  return parseJob(JSON.stringify(draft))
    .remarks.filter(({ severity }) => severity === 'stop')
    .map(({ at, wanted }) => `${at}: ${wanted}`);
}

test.each<[string, (draft: Draft) => void, string]>([
  [
    'a drop no trunk is laid with',
    (job) => (job.choices.units['u-east-1-1'].drop = 9000),
    'choices.units.u-east-1-1.drop: at most 200',
  ],
  [
    'a place beyond the street',
    (job) => (job.choices.rows['north-2'].vM = 1e300),
    'choices.rows.north-2.vM: at most 1000 m',
  ],
  [
    'rafters a hair apart',
    (job) => (job.facts.roof.planes.north.rafters.spacingMm = 0.001),
    'facts.roof.planes.north.rafters.spacingMm: at least 50 mm',
  ],
  [
    'next to nothing',
    (job) => (job.choices.trunks.a.homeRun.lengthM = 1e-300),
    'choices.trunks.a.homeRun.lengthM: at least 1e−9 m',
  ],
  ['a working day of a second', (job) => (job.choices.day.hoursPerDay = 0.0003), 'choices.day.hoursPerDay: at least 1'],
  [
    'snow of a glacier',
    (job) => (job.facts.site.snow = { groundKPa: 500 }),
    'facts.site.snow.groundKPa: at most 50 kPa',
  ],
  [
    'a clock nobody reads',
    (job) => (job.facts.site.zone = 'Mars/Phobos'),
    'facts.site.zone: an IANA name such as Europe/London',
  ],
  [
    'an earth of no standard size',
    (job) => (job.choices.equipment['cable-6'].earthMm2 = 7),
    'choices.equipment.cable-6.earthMm2: a standard size: 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120, 150, 185 mm²',
  ],
])('%s stops the job, with what was wanted', (_, change, said) => {
  expect(stops(kestrelRise, change)).toEqual([said]);
});

test('a file in UTF-16, or no text at all, is told by what it is', () => {
  const utf16 = Buffer.from('\uFEFF{"format": "eaveline-job"}', 'utf16le').toString('utf8');
  for (const text of [utf16, '{\0"\0', '\uFFFDPNG']) {
    expect(parseJob(text).remarks.map(({ found }) => found)).toEqual(['a file that is not UTF-8 text']);
  }
});

test('a day without any use is not divided by nothing', () => {
  const draft: Draft = structuredClone(kestrelRise);
  draft.facts.loads.dayShape = new Array(24).fill(0);
  const { remarks } = parseJob(JSON.stringify(draft));
  expect(remarks).toMatchObject([
    { found: 'shares that sum to 0.000', mend: 'Give what each hour takes of the day, or leave it out.' },
  ]);
});

test('a unit that sits between two lines does not go on a trunk of one', () => {
  const all = stops(larkspurLane, (job) => job.choices.trunks.b.lines.pop());
  expect(all.length).toBeGreaterThan(0);
  for (const said of all) expect(said).toContain('a trunk of 2 lines');
});

test('a three-phase unit does not go on a trunk of one line, whatever the supply', () => {
  const all = stops(kestrelRise, (job) => {
    const sheet = job.choices.units[Object.keys(job.choices.units)[0] as string].sheet;
    job.choices.equipment[sheet].connection = 'three-phase';
  });
  expect(all.length).toBeGreaterThan(0);
  for (const said of all) expect(said).toContain('a trunk of 3 lines');
});
