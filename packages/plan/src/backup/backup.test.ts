import {
  type BackupChoice,
  batterySheetSchema,
  type Choices,
  type CircuitFacts,
  changeoverSheetSchema,
  circuitFactsSchema,
  type SupplyFacts,
} from '@eaveline/job';
import { expect, test } from 'vitest';
import type { TrunkPlan, TrunksPlan } from '../trunks/types.ts';
import { type BackupView, backupStage } from './index.ts';

// A small house, hand-worked. Battery 6.0 kVA, 9.0 kVA for 10 s, 12.8 kWh usable, 93 % round trip.
const equipment: Choices['equipment'] = {
  battery: batterySheetSchema.parse({
    kind: 'battery',
    name: 'Store 13',
    usableKwh: 12.8,
    continuousVA: 6000,
    peakVA: 9000,
    peakS: 10,
    roundTrip: 0.93,
    massKg: 156,
    widthMm: 680,
    heightMm: 1300,
    depthMm: 245,
    faultA: 52,
  }),
  changeover: changeoverSheetSchema.parse({
    kind: 'changeover',
    name: 'Change 63',
    ratedA: 63,
    supply: 'three-phase',
    backupLines: 1,
    transferS: 0.1,
    bondRelay: false,
    widthMm: 380,
    heightMm: 520,
  }),
};

type Line = 'L1' | 'L2' | 'L3';
const circuit = (runW: number, lines: Line[], more: Partial<CircuitFacts> = {}): CircuitFacts =>
  circuitFactsSchema.parse({ name: `${runW} W`, lines, runW, wanted: 'must stay on', ...more });
const battery = (...lines: Line[]) =>
  ({
    sheet: 'battery',
    lines,
    cableSheet: 'c',
    lengthM: 9,
    route: { method: 'C', ambientC: 30, circuitsTogether: 1, insulationMm: 0 },
    breakerSheet: 'b',
    barrier: false,
    bollard: false,
  }) as const;
const moved = { moved: true, shed: false };
const backup = (more: Partial<BackupChoice>): BackupChoice => ({
  changeoverSheet: 'changeover',
  scope: 'part',
  lines: ['L1'],
  circuits: {},
  reserve: 0.2,
  trunks: {},
  ...more,
});
const threePhase: SupplyFacts = {
  system: 'three-phase',
  nominalV: 230,
  earthing: 'MEN',
  serviceA: 63,
  measuredV: {},
  mains: {},
};

function run(more: Partial<BackupView>, trunks: readonly Partial<TrunkPlan>[] = []) {
  const view: BackupView = {
    supply: threePhase,
    circuits: {},
    batteries: { one: { ...battery('L1'), lines: ['L1'] } },
    equipment,
    rules: { pack: 'au-nz', variant: 'au', editions: {} },
    ...more,
  };
  return backupStage.run(view, { trunks: { trunks } as unknown as TrunksPlan }, {});
}

const pump = { kind: 'pump', voltage: 230, lockedRotorA: 28.6, fullLoadA: 4.9 } as const;
const cooling = { kind: 'compressor', voltage: 230, lockedRotorA: 46, fullLoadA: 9.6 } as const;
/** Fridge 150 W, lights 320 W on L2, pump 1100 W, air-conditioner 2050 W on L3; all moved to L1. */
const house = {
  fridge: circuit(150, ['L1'], { nightW: 70, breakerA: 16 }),
  lights: circuit(320, ['L2'], { nightW: 110, breakerA: 10 }),
  pump: circuit(1100, ['L1'], { nightW: 30, motor: pump }),
  cooling: circuit(2050, ['L3'], { wanted: 'would be good', motor: cooling }),
  oven: circuit(2800, ['L3'], { wanted: 'no' }),
};
const all = { fridge: moved, lights: moved, pump: moved, cooling: moved };

test('part of a three-phase house: 150 + 320 + 1100 + 2050 = 3620 VA on L1, against 0.9 · 6000 = 5400', () => {
  const plan = run({ circuits: house, backup: backup({ circuits: all }) });
  expect(plan.byLine).toMatchObject([{ line: 'L1', runningVA: 3620, ratedVA: 6000, limitVA: 5400 }]);
  // the lights stand on L2 today and are taken over
  expect(plan.circuits.find(({ id }) => id === 'lights')).toMatchObject({ lines: ['L1'], standsOn: ['L2'], fed: true });
  expect(plan.circuits.find(({ id }) => id === 'oven')).toMatchObject({ moved: false, fed: false });
  expect(plan.leftDark).toEqual([]);
});

test('starts: the air-conditioner asks 46 · 230 = 10 580 VA of 9000 − 1570 left, k 0.702; the pump has k 0.985', () => {
  const { starts } = run({ circuits: house, backup: backup({ circuits: all }) });
  const [hard, easy] = starts;
  expect(hard).toMatchObject({ circuitId: 'cooling', startVA: 10580, availableVA: 9000, leftVA: 7430, verdict: 'ask' });
  expect(hard?.withRestVA).toBe(10580 + 1570);
  expect(hard?.k).toBeCloseTo(7430 / 10580, 12);
  // pump: 28.6 · 230 = 6578 VA; the rest 150 + 320 + 2050 = 2520 leaves 6480
  expect(easy).toMatchObject({ circuitId: 'pump', leftVA: 6480, verdict: 'starts' });
  expect(easy?.k).toBeCloseTo(6480 / 6578, 12);
});

test('mends: half the start is 5290 + 1570 = 6860 VA; shedding the 320 W lights lets the pump start whole', () => {
  const { starts } = run({ circuits: house, backup: backup({ circuits: all }) });
  // 10 580 alone is above 9000: nothing shed can help the air-conditioner
  expect(starts[0]?.mends.map(({ value }) => value)).toEqual([6860, undefined]);
  expect(starts[0]?.mends[1]?.changes).toEqual([
    { path: ['choices', 'backup', 'circuits', 'cooling', 'moved'], value: false },
  ]);
  // pump: 6578 + 2520 = 9098 of 9000. Without the fridge 8948: enough, and the lightest
  expect(starts[1]?.mends[0]).toMatchObject({ words: 'Shed 150 W in island.', value: 8948 });
});

test('behind a soft starter of three times full load: 230 · 9.6 · 3 = 6624 VA; a compressor stays a question', () => {
  const soft = {
    ...house,
    cooling: circuit(2050, ['L3'], { motor: { ...cooling, softStarter: { timesFullLoad: 3 } } }),
  };
  const hard = run({ circuits: soft, backup: backup({ circuits: all }) }).starts.find((s) => s.circuitId === 'cooling');
  expect(hard?.startVA).toBeCloseTo(6624, 9);
  expect(hard?.k).toBeCloseTo(7430 / 6624, 12);
  expect(hard?.verdict).toBe('ask');
});

test('a plate without figures is asked for, an inverter-driven machine has no peak, code letter J ½ hp is 3995 VA', () => {
  const motors = {
    bare: circuit(500, ['L1'], { motor: { kind: 'pump', voltage: 230 } }),
    odd: circuit(500, ['L1'], { motor: { kind: 'pump', voltage: 230, codeLetter: 'O', horsepower: 1 } }),
    driven: circuit(900, ['L1'], { motor: { kind: 'inverter-driven', voltage: 230 } }),
    lettered: circuit(700, ['L1'], { motor: { kind: 'pump', voltage: 230, codeLetter: 'J', horsepower: 0.5 } }),
  };
  const choices = { bare: moved, odd: moved, driven: moved, lettered: moved };
  const by = new Map(
    run({ circuits: motors, backup: backup({ circuits: choices }) }).starts.map((s) => [s.circuitId, s]),
  );
  expect(by.get('bare')?.verdict).toBe('plate missing');
  expect(by.get('odd')?.verdict).toBe('plate missing');
  expect(by.get('driven')?.verdict).toBe('no start peak');
  // upper end of J, 7.99 kVA a horsepower
  expect(by.get('lettered')?.startVA).toBeCloseTo(3995, 9);
});

test('split-phase: 240 V loads half on each leg, the battery gives each leg half, a 240 V start is held by the fuller leg', () => {
  const circuits = {
    heat: circuit(3200, ['L1', 'L2'], {
      lineToLine: true,
      motor: { kind: 'compressor', voltage: 240, lockedRotorA: 58 },
    }),
    kitchen: circuit(450, ['L1']),
    range: circuit(7000, ['L1', 'L2'], { lineToLine: true, wanted: 'no' }),
  };
  const plan = run({
    supply: { ...threePhase, system: 'split-phase', nominalV: 120, serviceA: 100 },
    mainSwitchA: 100,
    circuits,
    batteries: {
      one: { ...battery('L1'), lines: ['L1', 'L2'] },
      two: { ...battery('L1'), lines: ['L1', 'L2'] },
    },
    backup: backup({ scope: 'whole', lines: ['L1', 'L2'], circuits: { range: { moved: true, shed: true } } }),
    rules: { pack: 'us', variant: 'us', editions: {} },
  });
  // heat 1600 a leg, kitchen 450 on L1, range shed; two batteries of 6000 give 6000 a leg
  expect(plan.byLine.map(({ runningVA, ratedVA }) => [runningVA, ratedVA])).toEqual([
    [2050, 6000],
    [1600, 6000],
  ]);
  // 58 · 240 = 13 920 VA; a leg gives 9000, 450 of it taken: 2 · 8550 = 17 100
  expect(plan.starts[0]).toMatchObject({ startVA: 13920, availableVA: 18000, leftVA: 17100, verdict: 'starts' });
  // whole house: the changeover carries the service
  expect(plan.changeoverNeedA).toBe(100);
});

test('three-phase machine on a backup of one line: not fed, left dark, and not in the sums', () => {
  const circuits = { lathe: circuit(2200, ['L1', 'L2', 'L3'], { wanted: 'would be good' }), fridge: house.fridge };
  const plan = run({ circuits, backup: backup({ circuits: { lathe: moved, fridge: moved } }) });
  expect(plan.leftDark).toEqual(['lathe']);
  expect(plan.byLine[0]?.runningVA).toBe(150);
});

test('left dark: must stay on, and not moved or shed', () => {
  const plan = run({ circuits: house, backup: backup({ circuits: { pump: { moved: true, shed: true } } }) });
  expect(plan.leftDark).toEqual(['fridge', 'lights', 'pump']);
});

test('night of 210 W: 12.8 · √0.93 = 12.344 kWh lasts 58.8 h, a reserve of 20 % 11.8 h', () => {
  const { night } = run({ circuits: house, backup: backup({ circuits: all }) });
  expect(night?.loadW).toBe(70 + 110 + 30);
  expect(night?.fullH).toBeCloseTo(12343.9 / 210, 2);
  expect(night?.reserveH).toBeCloseTo(0.2 * 58.78, 2);
});

test('batteries on lines of their own: the fuller line goes dark first', () => {
  const circuits = { a: circuit(100, ['L1'], { nightW: 100 }), b: circuit(100, ['L2'], { nightW: 300 }) };
  const { night } = run({
    circuits,
    batteries: { one: { ...battery('L1'), lines: ['L1'] }, two: { ...battery('L2'), lines: ['L2'] } },
    backup: backup({ lines: ['L1', 'L2'], circuits: { a: moved, b: moved } }),
  });
  expect(night?.loadW).toBe(400);
  expect(night?.fullH).toBeCloseTo(12343.9 / 300, 2);
});

test('island fault 52 A: above the whole band of a B10 (30 to 50 A) it trips, inside that of a B16 (48 to 80 A) it may', () => {
  const plan = run({ circuits: house, backup: backup({ circuits: all }) });
  expect(plan.islandFaultA).toBe(52);
  expect(plan.islandTrips).toEqual([
    { circuitId: 'fridge', breakerA: 16, magneticFromA: 48, magneticTrip: 'may' },
    { circuitId: 'lights', breakerA: 10, magneticFromA: 30, magneticTrip: 'trips' },
  ]);
});

test('solar 3600 VA on the backed-up side of 6000: 0.6; changeover 26.1 A battery + 15.7 A load = 41.8 A', () => {
  const trunk = { id: 'a', name: 'A', lines: ['L1'] as const, ratedVA: 3600, currentA: 15.652 };
  const plan = run({ circuits: house, backup: backup({ circuits: all, trunks: { a: true, b: false } }) }, [
    trunk,
    { ...trunk, id: 'b' },
  ]);
  expect(plan.solarOnBackupVA).toBe(3600);
  expect(plan.solarShare).toBe(0.6);
  // 6000 ÷ 230 + max(3620 ÷ 230 = 15.739, 15.652)
  expect(plan.changeoverNeedA).toBeCloseTo(9620 / 230, 9);
  expect(plan.changeoverA).toBe(63);
});

test('a battery on a line that is not kept alive gives the island nothing', () => {
  const plan = run({
    circuits: house,
    batteries: { one: { ...battery('L2'), lines: ['L2'] } },
    backup: backup({ circuits: all }),
  });
  expect(plan.byLine[0]).toMatchObject({ ratedVA: 0, limitVA: 0 });
  expect(plan.starts[0]).toMatchObject({ k: 0, verdict: 'will not' });
  expect(plan.night).toBeUndefined();
});

test('no backup: what must stay on is left dark', () => {
  const plan = run({ circuits: house });
  expect(plan.present).toBe(false);
  expect(plan.leftDark).toEqual(['fridge', 'lights', 'pump']);
});
