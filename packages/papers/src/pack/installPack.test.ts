import { demoJobs, type Job, kestrelRise, larkspurLane, quaysideTerrace } from '@eaveline/job';
import { type Plan, workOut } from '@eaveline/plan';
import { beforeAll, expect, test } from 'vitest';
import { fonts } from '../../test/fonts.ts';
import { parseCsv } from '../../test/parseCsv.ts';
import { type Drawing, flawsOf, type Leaf, leavesOf, settle, textBoxesOf } from '../drawing/index.ts';
import { drawingsOf, frameOf, type Sheet, titleBlockMm } from '../page/index.ts';
import { readCsvWord } from './csv.ts';
import { csvFiles } from './csvFiles.ts';
import { installPack, packSheets } from './installPack.ts';
import { bannersOf } from './packContext.ts';
import { planJson } from './planJson.ts';

/** Planning five jobs, on a busy machine too. */
const LONG = 120_000;
const drawnAt = '2026-05-14T20:10:00Z';

interface Laid {
  readonly job: Job;
  readonly plan: Plan;
  readonly sheets: readonly Sheet[];
  readonly drawings: readonly Drawing[];
}
const laid = new Map<string, Laid>();
const of = (job: Job): Laid => laid.get(job.id) as Laid;

beforeAll(() => {
  for (const job of demoJobs) {
    const plan = workOut(job);
    const sheets = packSheets({ job, plan, drawnAt, version: '0.0.0' });
    laid.set(job.id, { job, plan, sheets, drawings: drawingsOf(sheets) });
  }
}, LONG);

const wordsOf = (drawing: Drawing) => textBoxesOf(drawing).map((box) => box.text);
/** All words of the pages of a kind, as one line: what was broken to fit is joined again. */
const saidOn = ({ sheets, drawings }: Laid, no: RegExp) =>
  drawings
    .filter((_, k) => no.test((sheets[k] as Sheet).block.sheet))
    .flatMap(wordsOf)
    .join(' ')
    .replace(/\s+/g, ' ');

test.each(demoJobs.map((job) => [job.name, job] as const))(
  '%s: no lettering on lettering, no line through it, nothing outside',
  (_name, job) => {
    const { sheets, drawings } = of(job);
    let looked = 0;
    drawings.forEach((drawing, k) => {
      const sheet = sheets[k] as Sheet;
      const paper = flawsOf(drawing, {
        leftMm: 12,
        bottomMm: 2,
        rightMm: drawing.widthMm - 2,
        topMm: drawing.heightMm - 2,
      });
      const frame = frameOf(sheet.size);
      const body = flawsOf({ ...drawing, items: sheet.body }, { ...frame, bottomMm: frame.bottomMm + titleBlockMm });
      expect({ title: drawing.title, ...paper, texts: 0, segments: 0 }).toEqual({
        title: drawing.title,
        texts: 0,
        segments: 0,
        textOnText: [],
        lineThroughText: [],
        outside: [],
      });
      expect([drawing.title, body.outside]).toEqual([drawing.title, []]);
      looked += paper.texts;
    });
    expect(looked).toBeGreaterThan(1000); // a check that looked at nothing proves nothing
  },
  LONG,
);

test('the year stands in the pack, with its range and every module by its name', () => {
  for (const { job, plan, sheets, drawings } of laid.values()) {
    const said = saidOn({ job, plan, sheets, drawings }, /^07$/);
    const [low, high] = plan.energy.rangeKwh;
    expect(said).toContain(`make ${(plan.energy.annualKwh / 1000).toFixed(1)} MWh a year`);
    expect(said).toContain(`${(low / 1000).toFixed(1)} to ${(high / 1000).toFixed(1)} MWh`);
    for (const { name } of plan.array.modules) expect(said).toContain(name);
  }
});

test('every page of every demo pack says it is invented, and how many figures fail', () => {
  for (const { plan, drawings } of laid.values()) {
    const { fails, ask } = plan.checks.tally;
    for (const drawing of drawings) {
      const words = wordsOf(drawing);
      expect(words).toContain('Invented. Not for construction.');
      const stands = words.find((one) => one.endsWith('unconfirmed: sheet 08.'));
      expect(stands).toMatch(new RegExp(`^${fails} figures? fails?, ${ask} open, `));
    }
  }
});

test('a job that is not invented and has nothing open wears no banner', () => {
  const { checks } = of(kestrelRise).plan;
  const clean = { ...checks, tally: { fails: 0, ask: 0, meets: 40, unconfirmed: 0 }, unconfirmed: [] };
  expect(bannersOf({ invented: false, checks: clean })).toEqual([]);
  const open = { ...clean, tally: { ...clean.tally, ask: 2 } };
  expect(bannersOf({ invented: false, checks: open })).toEqual([
    { kind: 'open', words: '0 figures fail, 2 open, 0 limits unconfirmed: sheet 08.' },
  ]);
});

test('pages follow the road and know how many they are', () => {
  const { sheets, drawings, plan } = of(kestrelRise);
  const kinds = [...new Set(sheets.map((sheet) => sheet.block.sheet))];
  expect(kinds).toEqual([
    ...['00', '08', '03', '03.N', '03.E', '03.W', '04.A', '04.B', '04.C', '05', '07', '09', '09.C', '10'],
    ...['11.D', '11.L', '11.G', '11.B', '10.C', '08.W', '12'],
  ]);
  expect(plan.trunks.trunks).toHaveLength(3);
  drawings.forEach((drawing, k) => {
    expect(wordsOf(drawing)).toContain(`${k + 1} of ${drawings.length}`);
  });
});

/** Length of a line or box side on paper, by the words a screen reader has for it. */
function lengthsOf(drawing: Drawing, label: string): number[] {
  return leavesOf(settle(drawing).items).flatMap((leaf: Leaf) => {
    if (leaf.label !== label) return [];
    if (leaf.kind === 'line') return [Math.hypot(leaf.to[0] - leaf.from[0], leaf.to[1] - leaf.from[1])];
    if (leaf.kind !== 'polyline') return [];
    return [Math.max(...leaf.points.map(([x]) => x)) - Math.min(...leaf.points.map(([x]) => x))];
  });
}
const page = ({ sheets, drawings }: Laid, no: string) => {
  const k = sheets.findIndex((sheet) => sheet.block.sheet === no);
  const [, scale] = /^1:(\d+)/.exec((sheets[k] as Sheet).block.scale ?? '') ?? [];
  return { drawing: drawings[k] as Drawing, scale: Number(scale) };
};

test('the stated scale is the drawn one: lengths of the survey measured off the paper', () => {
  const kestrel = of(kestrelRise);
  const plan = page(kestrel, '03');
  // eaves as taped: 16.8 m north and south, 10.8 m east and west; coordinates are rounded to 0.01 mm at each end
  expect(lengthsOf(plan.drawing, 'North, eave')[0]).toBeCloseTo(16800 / plan.scale, 1.7);
  expect(Math.abs((lengthsOf(plan.drawing, 'North, eave')[0] as number) - 16800 / plan.scale)).toBeLessThan(0.0101);
  expect(Math.abs((lengthsOf(plan.drawing, 'East, eave')[0] as number) - 10800 / plan.scale)).toBeLessThan(0.0101);
  const north = page(kestrel, '03.N');
  // row N1: seven modules of 1134 and six gaps of 20 (demo sheet), with 50 of rail past each end
  expect(
    Math.abs((lengthsOf(north.drawing, 'N1 lower')[0] as number) - (7 * 1134 + 6 * 20 + 2 * 50) / north.scale),
  ).toBeLessThan(0.0101);
  expect(Math.abs((lengthsOf(north.drawing, 'N1·1')[0] as number) - 1134 / north.scale)).toBeLessThan(0.0101);
});

test('a scale is one of ours, and its sheet carries the check bar', () => {
  for (const { sheets, drawings } of laid.values()) {
    drawings.forEach((drawing, k) => {
      const { scale } = (sheets[k] as Sheet).block;
      expect(wordsOf(drawing).includes('100 mm if printed true')).toBe(scale !== undefined);
      if (scale !== undefined) expect(scale).toMatch(/^1:(10|20|40|50|75|100|125|200)\b/);
    });
  }
});

test('every finding that fails or is open stands in the pack twice: listed, and with how it came about', () => {
  for (const one of laid.values()) {
    const open = one.plan.checks.findings.filter((finding) => finding.state !== 'meets');
    expect(open.length).toBeGreaterThan(0);
    const [listed, worked] = [saidOn(one, /^08$/), saidOn(one, /^08\.W$/)];
    for (const { title } of open) {
      const words = title.replace(/\s+/g, ' ');
      expect(listed).toContain(words);
      expect(worked).toContain(words);
    }
  }
});

test('limits from memory are listed with clause and edition and a line to confirm them on', () => {
  for (const one of laid.values()) {
    const said = saidOn(one, /^08$/);
    for (const { rule } of one.plan.checks.unconfirmed) expect(said).toContain(rule.replaceAll('-', ' '));
  }
});

test('a limit that was confirmed stands with who read it, and when', () => {
  const job = structuredClone(quaysideTerrace);
  job.choices.confirmations = {
    one: { rule: 'cable-capacity', edition: '2018 with A4:2026', by: 'Nia Ward', licence: 'E-1', on: '2026-05-02' },
  };
  const plan = workOut(job);
  const sheets = packSheets({ job, plan, drawnAt, version: '0.0.0' });
  const said = saidOn({ job, plan, sheets, drawings: drawingsOf(sheets) }, /^08$/);
  expect(plan.checks.unconfirmed.map(({ rule }) => rule)).not.toContain('cable-capacity');
  expect(said).toMatch(/cable capacity 2018 with A4:2026 Nia Ward, licence E-1 2 May 2026/);
});

test('weather and its distance are on the cover; what each stage leaves out is on the last pages', () => {
  for (const one of laid.values()) {
    const cover = saidOn(one, /^00$/);
    const { climate } = one.plan.sun;
    expect(cover).toContain(`${climate.name}, ${Math.round(climate.distanceKm as number)} km away`);
    const last = saidOn(one, /^12$/);
    for (const words of [...one.plan.trunks.leavesOut, ...one.plan.structure.leavesOut]) {
      expect(last).toContain(words.replace(/\s+/g, ' '));
    }
  }
});

test('a board of two colour schemes has the caution above every trunk and the schedule; another has none', () => {
  const { plan } = of(kestrelRise);
  const { facts } = kestrelRise;
  const job: Job = { ...kestrelRise, facts: { ...facts, board: { ...facts.board, wiringMixed: true } } };
  const sheets = packSheets({ job, plan, drawnAt, version: '0.0.0' });
  const mixed = { job, plan, sheets, drawings: drawingsOf(sheets) };
  const words = 'Two colour schemes meet in this board. Prove every conductor before you touch it, and mark it.';
  for (const no of [/^04\.A$/, /^04\.B$/, /^04\.C$/, /^05$/]) {
    expect(saidOn(mixed, no)).toContain(words);
    expect(saidOn(mixed, no)).toContain('go by the letters, never by the colour alone.');
    expect(saidOn(of(kestrelRise), no)).not.toContain('Two colour schemes');
  }
  for (const drawing of mixed.drawings.filter((_, k) => /^0[45]/.test((sheets[k] as Sheet).block.sheet))) {
    const { textOnText, lineThroughText } = flawsOf(drawing, { leftMm: 12, bottomMm: 2, rightMm: 208, topMm: 295 });
    expect([drawing.title, textOnText, lineThroughText]).toEqual([drawing.title, [], []]);
  }
});

test('a house of feet and gauges keeps its gauges and says that lengths are metric', () => {
  const larkspur = of(larkspurLane);
  expect(saidOn(larkspur, /^05$/)).toMatch(/\d\s?AWG/);
  expect(saidOn(larkspur, /^12$/)).toContain('Lengths are metric and conductors by gauge (AWG).');
  expect(saidOn(of(kestrelRise), /^12$/)).not.toContain('AWG');
});

test('CSV: every finding and every test comes back as it is in the plan', () => {
  const { job, plan } = of(kestrelRise);
  const files = csvFiles({ job, plan });
  expect(Object.keys(files)).toEqual([
    ...[
      'findings.csv',
      'kit.csv',
      'cuts.csv',
      'circuits.csv',
      'drops.csv',
      'tests.csv',
      'tasks.csv',
      'energy-months.csv',
    ],
  ]);
  const [heads, ...rows] = parseCsv(files['findings.csv'] as string);
  const column = (name: string) => rows.map((row) => readCsvWord(row[(heads as string[]).indexOf(name)] as string));
  expect(column('title')).toEqual(plan.checks.findings.map((finding) => finding.title));
  expect(column('value').map((cell) => (cell === '' ? undefined : Number(cell)))).toEqual(
    plan.checks.findings.map((finding) => finding.value),
  );
  expect(parseCsv(files['drops.csv'] as string)).toHaveLength(1 + 26); // 26 modules, a unit each, no spare drop
  for (const file of Object.values(files)) {
    const [first, ...more] = parseCsv(file);
    for (const row of more) expect(row).toHaveLength((first as string[]).length);
  }
  const months = parseCsv(files['energy-months.csv'] as string).slice(1);
  const sum = months.reduce((total, row) => total + Number(row[1]), 0);
  expect(sum).toBeCloseTo(plan.energy.annualKwh, 6);
});

test('JSON: job, hour and stages, with the long series as summaries', () => {
  const { plan } = of(kestrelRise);
  const text = planJson({ plan, drawnAt, version: '0.0.0' });
  const read = JSON.parse(text);
  expect([read.jobId, read.drawnAt, read.invented]).toEqual(['kestrel-rise', drawnAt, true]);
  expect(read.sun.ghi.count).toBe(plan.sun.steps);
  // the mean of hourly power is the year's energy over its hours
  expect(read.energy.acW.mean).toBeCloseTo((1000 * plan.energy.annualKwh) / plan.sun.steps, 6);
  expect(read.trunks.trunks[0].rise.totalV).toBe(plan.trunks.trunks[0]?.rise.totalV);
  expect(text.length).toBeLessThan(4_000_000);
});

test(
  'the same inputs give the same bytes; the hour of drawing is one of them',
  async () => {
    const { plan, sheets } = of(quaysideTerrace);
    const inputs = { job: quaysideTerrace, plan, drawnAt, version: '0.0.0', fonts };
    const [one, two] = [await installPack(inputs), await installPack(inputs)];
    expect(one.svg).toHaveLength(sheets.length);
    expect(Buffer.from(one.pdf).equals(Buffer.from(two.pdf))).toBe(true);
    expect([one.svg, one.csv, one.json]).toEqual([two.svg, two.csv, two.json]);
    const later = packSheets({ job: quaysideTerrace, plan, drawnAt: '2026-05-15T20:10:00Z', version: '0.0.0' });
    expect(later[0]?.block.drawnAt).not.toBe(sheets[0]?.block.drawnAt);
  },
  LONG,
);
