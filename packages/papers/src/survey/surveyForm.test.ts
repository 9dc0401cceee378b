import { demoJobs, type Job, kestrelRise, surveySteps } from '@eaveline/job';
import { surveyStanding } from '@eaveline/plan';
import { expect, test } from 'vitest';
import { fonts } from '../../test/fonts.ts';
import { flawsOf, leavesOf, settle, textBoxesOf } from '../drawing/index.ts';
import { drawingsOf, frameOf, titleBlockMm } from '../page/index.ts';
import { surveyForm, surveySheets } from './surveyForm.ts';

const about = { drawnAt: '2026-05-14T20:10:00Z', version: '0.0.0' };
const inSurvey = (job: Job): Job => ({ ...job, state: 'survey' });
/** A house of which nothing is known but its address. */
const clean: Job = {
  ...structuredClone(kestrelRise),
  state: 'survey',
  choices: {
    ...structuredClone(kestrelRise.choices),
    rows: {},
    modules: {},
    units: {},
    trunks: {},
    batteries: {},
    backup: undefined,
  },
  facts: {
    site: {
      address: '4 Finch Row',
      latitudeDeg: -37.8,
      longitudeDeg: 144.9,
      zone: 'Australia/Melbourne',
      horizon: [],
      objects: {},
      wind: {},
      snow: {},
    },
    network: {},
    supply: { system: 'single-phase', nominalV: 230, earthing: 'MEN', serviceA: 63, measuredV: {}, mains: {} },
    board: { name: 'board', wiringMixed: false },
    roof: { planes: {}, obstructions: {} },
    loads: { circuits: {} },
    walls: {},
    existing: {},
    access: {},
    provenance: {},
  },
};
const jobs: readonly (readonly [string, Job])[] = [
  ...demoJobs.map((job) => [job.name, inSurvey(job)] as const),
  ['a clean sheet', clean],
];
const drawn = (job: Job) => drawingsOf(surveySheets({ job, ...about }));
const saidIn = (job: Job) =>
  drawn(job)
    .flatMap(textBoxesOf)
    .map(({ text }) => text)
    .join(' ')
    .replace(/\s+/g, ' ');

test.each(jobs)('%s: no lettering on lettering, no line through it, nothing outside the frame', (_name, job) => {
  let looked = 0;
  const sheets = surveySheets({ job, ...about });
  drawingsOf(sheets).forEach((drawing, k) => {
    const { widthMm, heightMm } = drawing;
    const paper = flawsOf(drawing, { leftMm: 12, bottomMm: 2, rightMm: widthMm - 2, topMm: heightMm - 2 });
    const frame = frameOf('A4-portrait');
    const items = sheets[k]?.body ?? [];
    const body = flawsOf({ ...drawing, items }, { ...frame, bottomMm: frame.bottomMm + titleBlockMm });
    expect([drawing.title, paper.textOnText, paper.lineThroughText, paper.outside, body.outside]).toEqual([
      drawing.title,
      [],
      [],
      [],
      [],
    ]);
    looked += paper.texts;
  });
  expect(looked).toBeGreaterThan(200);
});

test('the form asks what the screen asks, in the same walking order', () => {
  const said = saidIn(inSurvey(kestrelRise));
  const own = surveySteps(kestrelRise).filter(({ thing }) => thing === undefined);
  let from = 0;
  for (const { name, asks } of own) {
    const at = said.indexOf(name, from);
    expect(at, name).toBeGreaterThanOrEqual(from);
    from = at;
    for (const { ask } of asks) expect(said.indexOf(ask, from), `${name}: ${ask}`).toBeGreaterThan(0);
  }
});

test('the cautions stand above the work they are for', () => {
  const said = saidIn(clean);
  for (const [caution, work] of [
    ['Asbestos: if nobody is sure, it is.', 'Rating of the bars'],
    ['An open board is live', 'Rating of the bars'],
    ['Prove the meter on a known source', 'Loop impedance'],
    ['Nobody past the edge.', 'Eave, end to end'],
  ] as const) {
    expect(said.indexOf(caution), caution).toBeGreaterThan(0);
    expect(said.indexOf(caution), caution).toBeLessThan(said.indexOf(work));
  }
});

test('what is known is printed; what is open lies on grey and names its rules', () => {
  const said = saidIn(inSurvey(kestrelRise));
  expect(said).toContain('6100 2231 48');
  expect(said).toContain('Needed: rafters, foot-spacing, rail-overhang.');
  const grey = (job: Job) =>
    drawn(job)
      .flatMap((drawing) => leavesOf(settle(drawing).items))
      .filter((leaf) => leaf.kind === 'fill' && leaf.ink === 'marker').length;
  // once the rafters are measured one row less is grey
  const measured = structuredClone(inSurvey(kestrelRise));
  Object.assign(measured.facts.roof.planes.west?.rafters ?? {}, { spacingMm: 600 });
  const rows = grey(inSurvey(kestrelRise));
  expect(rows).toBeGreaterThan(0);
  expect(grey(measured)).toBeLessThan(rows);
});

test('a clean sheet has room for four planes, and says which rules wait for the first', () => {
  expect(surveyStanding(clean).holes.length).toBeGreaterThan(30);
  const said = saidIn(clean);
  expect(said).toContain('4 Finch Row');
  expect(said).toContain('If there is none, write so and sign');
});

test('every page says page of pages, measure nothing off, and whose job it is', () => {
  const pages = drawn(inSurvey(kestrelRise));
  pages.forEach((drawing, k) => {
    const words = textBoxesOf(drawing).map(({ text }) => text);
    for (const said of [`${k + 1} of ${pages.length}`, 'measure nothing off', 'Kestrel Rise', '01.S']) {
      expect(words).toContain(said);
    }
  });
});

test('the same job and hour give the same bytes', async () => {
  const make = () => surveyForm({ job: clean, ...about, fonts });
  const [one, two] = await Promise.all([make(), make()]);
  expect(one.svg.length).toBe(drawn(clean).length);
  expect(Buffer.compare(one.pdf, two.pdf)).toBe(0);
});

test('a year and a count are printed as they are said; colours nobody looked at show the region’s usual', () => {
  expect(saidIn(inSurvey(kestrelRise))).toContain('1978');
  expect(saidIn(clean)).toContain('usual here: L1 brown, L2 black, L3 grey, N blue');
});
