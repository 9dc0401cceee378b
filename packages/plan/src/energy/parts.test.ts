import type { UnitSheet } from '@eaveline/job';
import { expect, test } from 'vitest';
import { module430 as sheet } from '../../test/sheets.ts';
import type { PlaneSun } from '../roof/types.ts';
import type { SunPlan } from '../sun/types.ts';
import type { TrunksPlan } from '../trunks/types.ts';
import { nineInTen } from './energyRange.ts';
import { exportLossAtMostKwh } from './exportCap.ts';
import { houseLoads } from './houseLoads.ts';
import { modulePower } from './modulePower.ts';
import { moduleYear } from './moduleYear.ts';
import { unitWires } from './unitWire.ts';
import { unitYear } from './unitYear.ts';

const of = (...values: number[]) => Float64Array.of(...values);

/** Power in proportion to light, 0.3 % less a kelvin; of unlike sections the best two, or the darkest of all three. */
const byLight = (light: number, cellC: number) => light * 0.43 * (1 - 0.003 * (cellC - 25));
const linear = {
  power: byLight,
  sectionPower(a: number, b: number, c: number, cellC: number) {
    const [, middle = 0, least = 0] = [a, b, c].sort((x, y) => y - x);
    return Math.max((2 * byLight(middle, cellC)) / 3, byLight(least, cellC));
  },
};
/** An hour at noon on an equinox, and one like it. */
const noon = { level: Uint8Array.of(24, 24), levelShare: of(0, 0), from: of(138, 138), to: of(150, 150) };
/** The same share of the beam at every hour of every day. */
const evenRaster = (open: number) => ({
  sums: Float32Array.from({ length: 49 * 289 }, (_, k) => (k % 289) * open),
  first: new Float32Array(49),
  last: new Float32Array(49).fill(288),
  hidden: 1 - open,
});

test('one hour by hand: 800 W/m² in the plane, 780 behind the glass, 20 °C, NOCT 44 °C', () => {
  // cell 20 + 24/800 · 800 = 44 °C; 780 · 0.98 · 0.43 · (1 − 0.003 · 19) = 309.96 W
  const sun = { steps: 2, stepS: 3600, airC: of(20, 20) } as SunPlan;
  const light = {
    beam: of(680, 0),
    diffuse: of(100, 0),
    beamBare: of(695, 0),
    diffuseBare: of(105, 0),
    sky: of(60, 0),
    skyBare: of(63, 0),
  } as unknown as PlaneSun;
  const year = moduleYear(sun, light, undefined, noon, linear, 44);
  expect(year.dcW[0]).toBeCloseTo(780 * 0.98 * 0.43 * (1 - 0.003 * 19), 9);
  expect(year.dcW[0]).toBeCloseTo(309.96, 2);
  expect(year.bareKwhM2).toBeCloseTo(0.8, 12);
  // half of the beam behind a tree: 340 + 100 behind the glass, 347.5 + 105 in the plane: cell 33.575 °C
  const half = evenRaster(0.5);
  const shaded = moduleYear(sun, light, { beam: [half, half, half], sky: [1, 1, 1], inside: [] }, noon, linear, 44);
  expect(shaded.dcW[0]).toBeCloseTo(440 * 0.98 * 0.43 * (1 - 0.003 * 8.575), 9);
  expect(1 - shaded.bareKwhM2 / shaded.openKwhM2).toBeCloseTo(347.5 / 800, 12);
  expect(shaded.behindGlassKwhM2).toBeCloseTo(0.44, 12);
  // a third of the sky hidden: 20 of the 60 behind the glass, 21 in the plane, and the ground’s 40 stay
  const under = moduleYear(
    sun,
    light,
    { beam: [undefined, undefined, undefined], sky: [2 / 3, 2 / 3, 2 / 3], inside: [] },
    noon,
    linear,
    44,
  );
  expect(under.bareKwhM2).toBeCloseTo(0.8 - 0.021, 12);
  expect(under.behindGlassKwhM2).toBeCloseTo(0.78 - 0.02, 12);
});

test('one section in the dark of a tree: the light is a third less of the beam, the power goes by the sections', () => {
  const sun = { steps: 1, stepS: 3600, airC: of(20) } as SunPlan;
  const light = {
    ...{ beam: of(600), diffuse: of(90), sky: of(60) },
    ...{ beamBare: of(600), diffuseBare: of(90), skyBare: of(60) },
  } as unknown as PlaneSun;
  const dark = evenRaster(0);
  const shade = { beam: [undefined, undefined, dark], sky: [1, 1, 0.5], inside: [] } as const;
  const year = moduleYear(sun, light, shade, noon, linear, 44);
  // mean light 600 · 2/3 + 60 · 5/6 + 30 = 480
  expect(year.behindGlassKwhM2).toBeCloseTo(0.48, 12);
  // cell 20 + 0.03 · 480 = 34.4 °C; two sections at (690 · 0.98) give two thirds of what the module would there
  const warmth = 1 - 0.003 * 9.4;
  expect(year.dcW[0]).toBeCloseTo((2 / 3) * 690 * 0.98 * 0.43 * warmth, 9);
  expect(year.evenDcKwh).toBeCloseTo((480 * 0.98 * 0.43 * warmth) / 1000, 12);
});

test('the module gives its rated power at 1000 W/m² and 25 °C, and about 0.3 % less a kelvin', () => {
  const { power, method } = modulePower(sheet);
  expect(method).toBe('five parameters');
  expect(power(1000, 25)).toBeCloseTo(430, 9);
  // the model's own coefficient follows from Voc and Isc and need not be the sheet's: 40 K warmer within 3 % of 378.4 W
  expect(Math.abs(power(1000, 65) / (430 * (1 - 0.003 * 40)) - 1)).toBeLessThan(0.03);
  expect(power(0, 10)).toBe(0);
});

test('a sheet that fits no diode goes by its rated power, and says why', () => {
  const { power, method, why } = modulePower({ ...sheet, cellsInSeries: 108 });
  expect(method).toBe('rated power and its coefficient');
  expect(why).toContain('cellsInSeries');
  // 500 W/m² at 45 °C: 430 · 0.5 · (1 − 0.003 · 20) = 202.1 W
  expect(power(500, 45)).toBeCloseTo(202.1, 6);
});

test('two modules on one unit of 500 VA: 300 + 250 W at 96 % is 528 W, held at 500, the loss shared 6 to 5', () => {
  const unit = { ratedVA: 500, efficiency: 0.96 } as UnitSheet;
  const sun = { steps: 2, stepS: 3600, month: Uint8Array.of(3, 4) } as unknown as SunPlan;
  const { acW, shares } = unitYear(unit, [of(300, 100), of(250, 0)], sun);
  expect([...acW]).toEqual([500, 96]);
  expect(shares.map(({ clippedKwh }) => clippedKwh)).toEqual([
    expect.closeTo((0.028 * 6) / 11, 12),
    expect.closeTo((0.028 * 5) / 11, 12),
  ]);
  expect(shares[0]?.monthlyKwh[3]).toBeCloseTo((0.5 * 6) / 11, 12);
  expect(shares[0]?.monthlyKwh[4]).toBeCloseTo(0.096, 12);
  // 96 W of 500: the square counts 96 · 96/500 = 18.432 W
  expect(shares[0]?.monthlySquareKwh[4]).toBeCloseTo(0.018432, 12);
});

test('the units’ wire losses add up to the trunk’s I²R', () => {
  // two units of 400 VA at 230 V, 1.73913 A each; home run 0.5 Ω there and back, 0.2 Ω more to the second:
  // 3.47826² · 0.5 + 1.73913² · 0.2 = 6.6541 W; the first stands 1.73913 V above the board, the second 2.08696 V
  const drops = [
    { unitId: 'u1', aboveBoardV: 1.7391304348 },
    { unitId: 'u2', aboveBoardV: 2.0869565217 },
    { aboveBoardV: 2.0869565217 },
  ];
  const trunks = { trunks: [{ lines: ['L2'], drops }] } as unknown as TrunksPlan;
  const wires = unitWires(trunks, () => ({ connection: 'line-neutral' }) as UnitSheet, {
    system: 'single-phase',
    nominalV: 230,
  });
  const lossW = [...wires.values()].reduce((sum, { lossShare }) => sum + 400 * lossShare, 0);
  expect(lossW).toBeCloseTo(3.4782608696 ** 2 * 0.5 + 1.7391304348 ** 2 * 0.2, 6);
  expect(wires.get('u1')?.lines).toEqual([{ line: 'L2', share: 1 }]);
});

test('a three-phase unit stands on three lines by thirds; 240 V line to line is twice the nominal 120', () => {
  const trunks = (lines: string[]) =>
    ({ trunks: [{ lines, drops: [{ unitId: 'u', aboveBoardV: 2.4 }] }] }) as unknown as TrunksPlan;
  const sheetOf = (connection: UnitSheet['connection']) => () => ({ connection }) as UnitSheet;
  const three = unitWires(trunks(['L1', 'L2', 'L3']), sheetOf('three-phase'), { system: 'three-phase', nominalV: 230 });
  expect(three.get('u')?.lines.map(({ share }) => share)).toEqual([1 / 3, 1 / 3, 1 / 3]);
  const split = unitWires(trunks(['L1', 'L2']), sheetOf('line-line'), { system: 'split-phase', nominalV: 120 });
  expect(split.get('u')?.lossShare).toBeCloseTo(0.01, 12);
});

test('export limit: 6 and 4 kW against 5 kVA a line lose 1 kW, against 8 kVA in sum 2 kW, without a limit nothing is said', () => {
  const byLine = { L1: of(6000, 0), L2: of(4000, 0) };
  expect(exportLossAtMostKwh(byLine, { perLineVA: 5000 }, 3600)).toBeCloseTo(1, 12);
  expect(exportLossAtMostKwh(byLine, { totalVA: 8000 }, 3600)).toBeCloseTo(2, 12);
  // both: 9 kW pass the lines, 8 pass the sum
  expect(exportLossAtMostKwh(byLine, { perLineVA: 5000, totalVA: 8000 }, 1800)).toBeCloseTo(1, 12);
  expect(exportLossAtMostKwh(byLine, {}, 3600)).toBeUndefined();
});

test('16 A of old solar on L1 takes 3.68 kVA of what may leave: 6 kW there against 5 − 3.68 = 1.32 kVA lose 4.68 kW', () => {
  const byLine = { L1: of(6000, 0), L2: of(4000, 0) };
  const thereVA = { L1: 16 * 230 };
  expect(exportLossAtMostKwh(byLine, { perLineVA: 5000, thereVA }, 3600)).toBeCloseTo(4.68, 12);
  // in sum 8 − 3.68 = 4.32 kVA are left for 10 kW
  expect(exportLossAtMostKwh(byLine, { totalVA: 8000, thereVA }, 3600)).toBeCloseTo(5.68, 12);
  // more old solar than may leave: all is lost on that line, and no more than all
  expect(exportLossAtMostKwh(byLine, { perLineVA: 5000, thereVA: { L1: 6900 } }, 3600)).toBeCloseTo(6, 12);
});

test('8760 kWh spread evenly is 1 kW; from 18:00 to 06:30 that is a night of 12.5 kWh', () => {
  const day = Array.from({ length: 12 }, () => ({ riseH: 6.5, noonH: 12, setH: 18 }));
  const loads = houseLoads({ annualKwh: 8760, dayShape: Array.from({ length: 24 }, () => 1 / 24) }, day);
  expect(loads.hourlyW?.[7]).toBeCloseTo(1000, 9);
  expect(loads.nightKwh).toBeCloseTo(12.5, 9);
  expect(houseLoads({ annualKwh: 5000 }, day)).toEqual({ annualKwh: 5000 });
  // where the sun stays up in one month nobody can say what a night is
  const arctic = [{ noonH: 12 }, ...day.slice(1)];
  expect(
    houseLoads({ annualKwh: 8760, dayShape: Array.from({ length: 24 }, () => 1 / 24) }, arctic).nightKwh,
  ).toBeUndefined();
});

test('climate 5 % and model 4 % make nine in ten within 1.645 · √(25 + 16) = 10.53 %', () => {
  const [low, high] = nineInTen(0.05);
  expect(low).toBeCloseTo(0.8947, 4);
  expect(high).toBeCloseTo(1.1053, 4);
});
