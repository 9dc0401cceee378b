import {
  type Choices,
  cableSheetSchema,
  demoJobs,
  ironbarkClinic,
  type Job,
  jobSchema,
  kestrelRise,
} from '@eaveline/job';
import { expect, test } from 'vitest';
import type { ArrayPlan } from '../array/types.ts';
import type { BoardPlan } from '../board/types.ts';
import { rulePacks } from '../rules/index.ts';
import type { TrunksPlan } from '../trunks/types.ts';
import { createPlanner } from '../workOut.ts';
import { kitStage } from './index.ts';
import type { KitView } from './kitInput.ts';
import type { KitPlan } from './types.ts';

const part = (use: string, name: string) => ({ kind: 'part', use, name }) as Choices['equipment'][string];
const equipment = {
  rail: { kind: 'rail', name: 'Rail', stockMm: 4200, longestRunMm: 12000 },
  mid: { kind: 'clamp', name: 'Mid', place: 'mid' },
  end: { kind: 'clamp', name: 'End', place: 'end' },
  hook: { kind: 'fixing', name: 'Hook', screws: 2 },
  module: { kind: 'module', name: 'Module' },
  unit: { kind: 'unit', name: 'Unit' },
  trunk: { kind: 'trunk-cable', name: 'Trunk 1.20 m', dropPitchMm: 1200 },
  c6: cableSheetSchema.parse({
    kind: 'cable',
    name: '6 mm²',
    conductor: { material: 'copper', areaMm2: 6 },
    cores: 3,
    insulation: 'PVC',
    insulationC: 70,
    sunlight: false,
  }),
  b20: { kind: 'breaker', name: 'C20' },
  cap: part('end-cap', 'End cap of the maker'),
} as unknown as Choices['equipment'];

/** One row of seven with two rails of 8158 mm on eight feet each; one trunk of seven fed at its first drop. */
function house(more: Partial<KitView> = {}, homeRunM = 22) {
  const feetMm = [400, 1450, 2500, 3550, 4600, 5650, 6700, 7750];
  const clamps = Array.from({ length: 8 }, (_, k) => ({
    u: k === 0 ? 0.05 : k === 7 ? 8.108 : 0.05 + 1.154 * k - 0.01,
    kind: k === 0 || k === 7 ? 'end' : 'mid',
  }));
  const rails = ['lower', 'upper'].map((which, k) => ({
    id: which,
    name: `S1 ${which}`,
    rowId: 'r',
    planeId: 'p',
    v: k,
    fromU: 0,
    toU: 8.158,
    lengthMm: 8158,
    onRafters: true,
    feet: feetMm.map((mm, n) => ({ id: `${which}-${n}`, u: mm / 1000 })),
    clamps,
  }));
  const modules = Array.from({ length: 7 }, () => ({ sheetId: 'module' }));
  const array = { modules, rows: [{ id: 'r', name: 'S1' }], rails } as unknown as ArrayPlan;
  const trunkPlan = {
    id: 'a',
    name: 'A',
    cableSheetId: 'trunk',
    drops: Array.from({ length: 8 }, () => ({})),
    cableM: 9 * 1.2,
    caps: { end: 1, drop: 2, feedJoints: 1 },
  };
  const trunks = { trunks: [trunkPlan] } as unknown as TrunksPlan;
  const circuit = {
    kind: 'trunk',
    of: 'a',
    name: 'A',
    cableSheetId: 'c6',
    breakerSheetId: 'b20',
    lengthM: homeRunM,
  };
  const board = { circuits: [circuit] } as unknown as BoardPlan;
  const view: KitView = {
    system: 'single-phase',
    board: { surgeDevice: false },
    circuits: {},
    units: Object.fromEntries(modules.map((_, k) => [`u${k}`, { sheet: 'unit', trunkId: 'a', drop: k + 1 }])),
    // seven units, the third drop idle, one drop spare past the last
    trunks: { a: { name: 'A', cableSheet: 'trunk', spareDrops: 1, jumpers: {} } } as unknown as Choices['trunks'],
    batteries: {},
    mounting: {
      railSheet: 'rail',
      midClampSheet: 'mid',
      endClampSheet: 'end',
      fixingSheet: 'hook',
      railPastMm: 50,
      footSpacingMm: 1200,
      gapUnderMm: 100,
    },
    equipment,
    parts: {},
    spares: { modules: 1, units: 1 },
    labels: {},
    rules: { pack: 'au-nz', variant: 'au', editions: {} },
    ...more,
  };
  return kitStage.run(view, { array, trunks, board }, {});
}

const count = (kit: KitPlan, id: string) => kit.lines.find((line) => line.id === id)?.count;

test('a row of seven: 12 mid clamps, 4 end clamps, 16 feet + 5 % = 17 fixings, 34 screws, 2 lugs', () => {
  const kit = house();
  expect(count(kit, 'mid-clamp')).toBe(2 * 6);
  expect(count(kit, 'end-clamp')).toBe(4);
  expect(count(kit, 'fixing')).toBe(17);
  expect(count(kit, 'fixing-screw')).toBe(34);
  expect(count(kit, 'earth-lug')).toBe(2);
  expect(count(kit, 'module:module')).toBe(8);
  expect(count(kit, 'unit:unit')).toBe(8);
});

test('two rails of 8158 mm from bars of 4200: two splices each, six pieces, five bars', () => {
  // lower: in the span 3550 to 4600 a splice may sit to 3896, and from 4253, which the bar does not reach; 4262 mm are
  // left, so one more, to 7592 in the last span. Upper: 300 mm off both, 3392 and 7046
  const kit = house();
  expect(kit.splices.map(({ railId, atMm, clear }) => [railId, atMm, clear])).toEqual([
    ['lower', 3896, true],
    ['lower', 7592, true],
    ['upper', 3392, true],
    ['upper', 7046, true],
  ]);
  expect(count(kit, 'splice')).toBe(4);
  expect(count(kit, 'bonding-jumper')).toBe(4);
  // pieces 3896, 3696, 566 and 3392, 3654, 1112: four fill a bar each, 566 goes beside 3392, 1112 beside none
  expect(count(kit, 'rail')).toBe(5);
  expect(kit.cuts.map((bar) => bar.pieces.map(({ lengthMm }) => lengthMm))).toEqual([
    [3896],
    [3696],
    [3654],
    [3392, 566],
    [1112],
  ]);
});

test('trunk: 8 drops laid and one spare are 9, one end cap, two drop caps, 10.8 m clipped every half metre and 2 a module', () => {
  const kit = house();
  expect(count(kit, 'trunk:trunk')).toBe(9);
  expect(count(kit, 'end-cap')).toBe(1);
  expect(count(kit, 'drop-cap')).toBe(2);
  expect(count(kit, 'feed-joint')).toBe(1);
  expect(count(kit, 'roof-box')).toBe(1);
  // 10.8 ÷ 0.5 = 21.6, so 22, and 14
  expect(count(kit, 'cable-clip')).toBe(36);
  // a part with a sheet goes by its name, one without by the trade's
  expect(kit.lines.find(({ id }) => id === 'end-cap')).toMatchObject({ sheetId: 'cap', name: 'End cap of the maker' });
  expect(kit.lines.find(({ id }) => id === 'drop-cap')).toMatchObject({ name: 'drop cap' });
  expect(kit.lines.find(({ id }) => id === 'drop-cap')?.sheetId).toBeUndefined();
});

test('home run 22 m + 10 % is 24.2, so 25 m; 31 m is 34.1, so 35 m; 30 m is 33 m and no metre more', () => {
  expect(count(house(), 'cable:c6')).toBe(25);
  expect(count(house({}, 31), 'cable:c6')).toBe(35);
  expect(count(house({}, 30), 'cable:c6')).toBe(33);
});

test('surge device where the board has none; not counted, and said, where nobody looked', () => {
  expect(count(house(), 'surge-device')).toBe(1);
  expect(count(house({ board: { surgeDevice: true } }), 'surge-device')).toBeUndefined();
  const unknown = house({ board: {} });
  expect(count(unknown, 'surge-device')).toBeUndefined();
  expect(unknown.leavesOut.join()).toContain('surge device is not known');
});

test('one current transformer a line, one isolator a trunk, one breaker a circuit', () => {
  expect(count(house(), 'current-transformer')).toBe(1);
  expect(count(house({ system: 'three-phase' }), 'current-transformer')).toBe(3);
  expect(count(house(), 'isolator')).toBe(1);
  expect(count(house(), 'breaker:b20')).toBe(1);
});

test('labels: without battery and backup only those for solar; one left off stays off', () => {
  const kit = house();
  const due = rulePacks.au.labels.filter(({ when }) => when !== 'battery' && when !== 'backup');
  expect(kit.labels.map(({ id }) => id)).toEqual(due.map(({ id }) => id));
  expect(kit.labels.every(({ count: n }) => n === 1)).toBe(true);
  expect(house({ labels: { shutdown: false } }).labels.some(({ id }) => id === 'shutdown')).toBe(false);
});

test('no mounting chosen: no rails, and it is said', () => {
  const { mounting, ...view } = kitStage.view(kestrelRise);
  expect(mounting).toBeDefined();
  const plan = createPlanner()(kestrelRise);
  const kit = kitStage.run(view, plan, {});
  expect(kit.cutting).toMatchObject({ bars: 0, wasteShare: 0 });
  expect(kit.lines.some(({ group }) => group === 'mounting')).toBe(false);
  expect(kit.leavesOut.join()).toContain('No rails and fixings are chosen');
});

test('a change in the job is a change in the kit', () => {
  const plan = createPlanner();
  const before = plan(kestrelRise).kit;
  const changed = (change: (job: Job) => void) => {
    const job = jobSchema.parse(structuredClone(kestrelRise));
    change(job);
    return plan(job).kit;
  };
  // 31 + 22 + 26 = 79 m + 10 % = 86.9, so 87; ten metres more are 97.9, so 98
  expect(count(before, 'cable:cable-6')).toBe(87);
  const longer = changed(({ choices }) => {
    if (choices.trunks.a) choices.trunks.a.homeRun.lengthM += 10;
  });
  expect(count(longer, 'cable:cable-6')).toBe(98);
  const spare = changed(({ choices }) => {
    if (choices.trunks.a) choices.trunks.a.spareDrops = 2;
  });
  expect(count(spare, 'trunk:bramble-120-1')).toBe((count(before, 'trunk:bramble-120-1') ?? 0) + 2);
  expect(count(spare, 'drop-cap')).toBe((count(before, 'drop-cap') ?? 0) + 2);
  const thicker = changed(({ choices }) => {
    if (choices.trunks.a) choices.trunks.a.homeRun.cableSheet = 'cable-10';
  });
  // 22 + 26 = 48 m, 52.8; 31 + 9 = 40 m, 44
  expect([count(thicker, 'cable:cable-6'), count(thicker, 'cable:cable-10')]).toEqual([53, 44]);
  const wide = changed(({ choices }) => {
    if (choices.mounting) choices.mounting.footSpacingMm = 1800;
  });
  expect(count(wide, 'fixing')).toBeLessThan(count(before, 'fixing') ?? 0);
});

test('Ironbark: eight rows of twelve, every rail broken once: 176 − 16 mid clamps, 32 + 32 end clamps', () => {
  // 13 828 + 100 mm of rail, 12 000 allowed; 8 rows · 2 rails · 11 mid clamps, one of each rail gives way to two end clamps
  const { kit } = createPlanner()(ironbarkClinic);
  expect(kit.breaks.length).toBe(16);
  expect(count(kit, 'mid-clamp')).toBe(160);
  expect(count(kit, 'end-clamp')).toBe(64);
  expect(count(kit, 'bonding-jumper')).toBe((count(kit, 'splice') ?? 0) + 16);
});

test.each(demoJobs.map((job) => [job.name, job] as const))('law over %s', (_, job) => {
  const plan = createPlanner()(job);
  const { kit, array } = plan;
  const ids = kit.lines.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  for (const line of kit.lines) {
    expect(Number.isInteger(line.count) && line.count > 0, line.id).toBe(true);
    expect(line.working.value, line.id).toBe(line.count);
    if (line.sheetId !== undefined) expect(job.choices.equipment[line.sheetId], line.id).toBeDefined();
  }
  // every rail is cut whole, less 20 mm at each expansion break
  const pieces = kit.cuts.flatMap((bar) => bar.pieces);
  for (const rail of array.rails) {
    const cutMm = pieces.filter(({ railId }) => railId === rail.id).reduce((sum, { lengthMm }) => sum + lengthMm, 0);
    const breaks = kit.breaks.filter(({ railId }) => railId === rail.id).length;
    expect(cutMm + 20 * breaks).toBe(Math.round(rail.lengthMm));
  }
  for (const bar of kit.cuts) {
    const cuts = bar.offcutMm === 0 ? bar.pieces.length - 1 : bar.pieces.length;
    const usedMm = bar.pieces.reduce((sum, { lengthMm }) => sum + lengthMm, 0) + 3 * cuts;
    expect(usedMm).toBeLessThanOrEqual(bar.stockMm);
  }
  // backup and structure stand beside it without a hole
  const figures = [
    ...plan.structure.feet.flatMap(({ upliftN, downN }) => [upliftN, downN]),
    ...plan.structure.rails.flatMap(({ momentNm, deflectionMm }) => [momentNm, deflectionMm]),
    ...plan.backup.byLine.flatMap(({ runningVA, limitVA }) => [runningVA, limitVA]),
    ...plan.backup.starts.flatMap(({ startVA, k, leftVA }) => [startVA, k, leftVA]),
  ];
  for (const figure of figures) if (figure !== undefined) expect(Number.isFinite(figure)).toBe(true);
  expect(plan.structure.feet.length).toBe(array.rails.flatMap(({ feet }) => feet).length);
});
