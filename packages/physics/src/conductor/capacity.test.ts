import { expect, test } from 'vitest';
import { ambientFactor, groupingFactor, iecCableCapacity, insulationFactor } from './capacity.ts';
import { IEC_AIR_FACTOR, IEC_GROUND_FACTOR } from './data/iecCapacity.ts';
import { necCableCapacity } from './necCapacity.ts';
import { smallestCable } from './smallestCable.ts';

// IEC 60364-5-52:2009 Annex B: table × ambient × grouping, multiplied by hand; 0.01 A, the last digit given.
test.each([
  ['PVC', 2, 'C', 4, 40, 'bunched_or_enclosed', 1, 36, 31.32],
  ['XLPE', 2, 'B2', 6, 50, 'bunched_or_enclosed', 3, 51, 29.274],
  ['XLPE', 3, 'E', 10, 40, 'single_layer_perforated_tray', 2, 75, 60.06],
  ['PVC', 3, 'C', 16, 30, 'single_layer_wall_floor_or_unperforated_tray', 4, 76, 57],
] as const)(
  '%s %i loaded, method %s, %f mm² at %i °C',
  (insulation, loadedConductors, method, sizeMm2, ambientC, grouping, circuits, tableA, izA) => {
    const got = iecCableCapacity({
      conductor: 'copper',
      insulation,
      loadedConductors,
      method,
      sizeMm2,
      ambientC,
      grouping,
      circuits,
    });
    expect(got.tabulatedA).toBe(tableA);
    expect(Math.abs(got.capacityA - izA)).toBeLessThan(0.01);
  },
);

// NEC 2023 310.16, 310.15(B)(1)(1), 310.15(C)(1), 110.14(C): multiplied by hand.
test.each([
  ['12', 90, 48, 3, 60, 24.6, 20, 20],
  ['10', 90, 60, 6, 60, 22.72, 30, 22.72],
  ['6', 75, 38, 4, 75, 45.76, 65, 45.76],
] as const)(
  '%s AWG, %i °C insulation at %i °C',
  (awg, insulationColumnC, ambientC, conductors, terminalColumnC, correctedA, terminalA, usableA) => {
    const got = necCableCapacity({
      conductor: 'copper',
      awg,
      insulationColumnC,
      ambientC,
      currentCarryingConductors: conductors,
      terminalColumnC,
    });
    expect(got.correctedA).toBeCloseTo(correctedA, 2);
    expect(got.terminalLimitA).toBe(terminalA);
    expect(got.usableA).toBeCloseTo(usableA, 2);
  },
);

test('a raceway 10 mm over a sunlit roof sees 33 °C more air: 38 becomes 71, factor 0.50', () => {
  const wire = {
    conductor: 'copper',
    awg: '10',
    insulationColumnC: 90,
    ambientC: 38,
    currentCarryingConductors: 3,
    terminalColumnC: 75,
  } as const;
  expect(necCableCapacity({ ...wire, roofGapMm: 10 })).toMatchObject({ adjustedAmbientC: 71, correctedA: 20 });
  expect(necCableCapacity({ ...wire, roofGapMm: 25 }).adjustedAmbientC).toBe(38);
});

test('every ambient factor follows √((Tmax − T)/(Tmax − base)) to 0.006', () => {
  let seen = 0;
  for (const [insulation, maxC] of [
    ['PVC', 70],
    ['XLPE', 90],
  ] as const) {
    for (const [table, baseC] of [
      [IEC_AIR_FACTOR, 30],
      [IEC_GROUND_FACTOR, 20],
    ] as const) {
      for (const [atC, factor] of table[insulation]) {
        expect(Math.abs(factor - Math.sqrt((maxC - atC) / (maxC - baseC)))).toBeLessThan(0.006);
        seen++;
      }
    }
  }
  expect(seen).toBe(52);
});

test('between two rows of a table the worse one holds', () => {
  expect(ambientFactor('PVC', 41)).toBe(0.79);
  expect(groupingFactor('bunched_or_enclosed', 10)).toBe(0.45);
  expect(groupingFactor('single_layer_ladder_or_cleats', 40)).toBe(0.78);
  expect([0, 30, 100, 150, 400, 900].map(insulationFactor)).toEqual([1, 0.88, 0.78, 0.63, 0.51, 0.5]);
});

test('20 A on a 20 A breaker over 25 m at 2 %: 6 mm², and why each smaller size failed', () => {
  // volts: 2·20 A·25 m·r(70 °C); r = 12.1, 7.41, 4.61, 3.08 Ω/km × 1.1965
  const got = smallestCable({
    currentA: 20,
    breakerA: 20,
    routeLengthM: 25,
    limitPercent: 2,
    insulation: 'PVC',
    loadedConductors: 2,
    method: 'C',
    ambientC: 30,
    nominalV: 230,
    phases: 1,
  });
  expect(got.chooseMm2).toBe(6);
  expect(got.candidates.map((c) => [c.sizeMm2, c.izA, Number(c.percent.toFixed(4)), c.failed])).toEqual([
    [1.5, 19.5, 6.2946, ['capacity', 'volts']],
    [2.5, 27, 3.8548, ['volts']],
    [4, 36, 2.3982, ['volts']],
    [6, 46, 1.6023, []],
  ]);
});

test('no size is enough: says so and chooses none', () => {
  const got = smallestCable({
    currentA: 20,
    breakerA: 20,
    routeLengthM: 500,
    limitPercent: 1,
    insulation: 'PVC',
    loadedConductors: 2,
    method: 'C',
    ambientC: 30,
    nominalV: 230,
    phases: 1,
    sizesMm2: [4, 6],
  });
  expect(got.chooseMm2).toBeUndefined();
  expect(got.candidates).toHaveLength(2);
});

test('refuses air too hot for the insulation, grouped ducts, an unknown size', () => {
  const cable = {
    conductor: 'copper',
    insulation: 'PVC',
    loadedConductors: 2,
    method: 'C',
    sizeMm2: 4,
    ambientC: 30,
  } as const;
  expect(() => iecCableCapacity({ ...cable, ambientC: 65 })).toThrow('ambientC is 65; it has to be -60 to 60');
  expect(() => iecCableCapacity({ ...cable, method: 'D1', circuits: 2 })).toThrow('B.52.19');
  expect(() => iecCableCapacity({ ...cable, sizeMm2: 5 })).toThrow('5 mm² copper PVC');
  expect(() => iecCableCapacity({ ...cable, circuits: 0 })).toThrow('circuits is 0');
  const wire = {
    conductor: 'copper',
    awg: '12',
    insulationColumnC: 60,
    ambientC: 58,
    currentCarryingConductors: 3,
    terminalColumnC: 60,
  } as const;
  expect(() => necCableCapacity(wire)).toThrow('ambientC is 58');
});
