import { expect, test } from 'vitest';
import { fixingDown, fixingUplift } from './fixing.ts';
import { utilisation } from './level.ts';
import { ascePanelPressurePa, ascePressure, asEdgeWidthM, asPressure, enPeakPressure, enZones } from './pressure.ts';
import { enDesignResistance, enScrewWithdrawal, ndsLagWithdrawal } from './screw.ts';
import { asceSnow, enSnow, enSnowShape } from './snow.ts';

// Worked by hand from the formulas of each standard, to the newton; coefficients are stated, not looked up.

test('AS/NZS 1170.2, region A, terrain 3, 5 m: 45 · 0.83 = 37.35 m/s, 837 Pa, edge 2 m', () => {
  const site = asPressure({ region: 'A', terrain: 3, heightM: 5 });
  expect(site.speedMPerS).toBeCloseTo(37.35, 10);
  expect(site.pressurePa).toBeCloseTo(837.0, 1);
  expect(asEdgeWidthM(12, 10, 5)).toBe(2);
});

test('its foot, 1.2 m × 0.861 m at 22.5°: 1027 N inside (C −1.3), 1546 N at the edge (C −1.9)', () => {
  const foot = {
    code: 'AS/NZS',
    pressurePa: asPressure({ region: 'A', terrain: 3, heightM: 5 }).pressurePa,
    areaM2: (1.2 * 1.722) / 2,
    weightKgPerM2: 11.5,
    slopeDeg: 22.5,
  } as const;
  const inside = fixingUplift({ ...foot, netCoefficient: -1.3 });
  expect(inside.windN).toBeCloseTo(1124.2, 0);
  expect(inside.weightN).toBeCloseTo(116.6, 1);
  expect(Math.round(inside.uplift.newtons)).toBe(1027);
  expect(inside.uplift.level).toBe('design');
  expect(Math.round(fixingUplift({ ...foot, netCoefficient: -1.9 }).uplift.newtons)).toBe(1546);
});

test('EN 1991-1-4, 24 m/s, terrain II, 6 m: 733.4 Pa; terrain III 500.1 Pa; zones of a 10 m house', () => {
  const two = enPeakPressure({ basicMPerS: 24, terrain: 'II', heightM: 6 });
  expect(two.terrainFactor).toBeCloseTo(0.19, 6);
  expect(two.roughness).toBeCloseTo(0.9096, 4);
  expect(two.speedMPerS).toBeCloseTo(21.83, 2);
  expect(two.turbulence).toBeCloseTo(0.2089, 4);
  expect(two.basicPressurePa).toBeCloseTo(360, 6);
  expect(two.pressurePa).toBeCloseTo(733.4, 1);
  const three = enPeakPressure({ basicMPerS: 24, terrain: 'III', heightM: 6 });
  expect(three.terrainFactor).toBeCloseTo(0.2154, 4);
  expect(three.pressurePa).toBeCloseTo(500.1, 1);
  expect(enZones(10, 6)).toEqual({ eM: 10, edgeM: 1, cornerM: 2.5 });
});

test('its foot, 1.2 m × 0.567 m at 35°: 1.5 W − 0.9 G cos = 914 N', () => {
  const got = fixingUplift({
    code: 'EN',
    pressurePa: enPeakPressure({ basicMPerS: 24, terrain: 'II', heightM: 6 }).pressurePa,
    netCoefficient: -1.3,
    areaM2: 1.2 * 0.567,
    weightKgPerM2: 12,
    slopeDeg: 35,
  });
  expect(got.factoredWindN).toBeCloseTo(973.1, 1);
  expect(got.heldN).toBeCloseTo(59.1, 1);
  expect(Math.round(got.uplift.newtons)).toBe(914);
});

test('the quoted digest case: 1243 Pa · 1.3 · 4 m² = 6464 N up, · 1.0 = 4972 N down, no factor in either', () => {
  const foot = {
    code: 'EN',
    pressurePa: 1243,
    netCoefficient: -1.3,
    areaM2: 4,
    weightKgPerM2: 0,
    slopeDeg: 0,
  } as const;
  expect(Math.round(fixingUplift(foot).windN)).toBe(6464);
  expect(Math.round(fixingUplift({ ...foot, netCoefficient: -1 }).windN)).toBe(4972);
});

test('ASCE 7: 115 mph, exposure B, 1600 m: 796.8 Pa; feet 536 N and 1740 N allowable', () => {
  const site = ascePressure({ basicMPerS: 115 * 0.44704, exposure: 'B', heightM: 4, elevationM: 1600 });
  expect(site.kz).toBe(0.7);
  expect(site.ke).toBeCloseTo(0.8266, 4);
  expect(site.pressurePa).toBeCloseTo(796.8, 0);
  const foot = { code: 'ASD', netCoefficient: -1, areaM2: 1.219 * 0.861, weightKgPerM2: 12, slopeDeg: 26.6 } as const;
  const mild = -ascePanelPressurePa({ pressurePa: site.pressurePa, gcp: -1.5, edgeFactor: 1, equalisation: 0.8 });
  expect(mild).toBeCloseTo(956.2, 0);
  expect(Math.round(fixingUplift({ ...foot, pressurePa: mild }).uplift.newtons)).toBe(536);
  const edge = -ascePanelPressurePa({ pressurePa: site.pressurePa, gcp: -3, edgeFactor: 1.5, equalisation: 0.8 });
  const worst = fixingUplift({ ...foot, pressurePa: edge }).uplift;
  expect(Math.round(worst.newtons)).toBe(1740);
  expect(worst.level).toBe('allowable');
});

test('ASCE Kz at 15 ft: 0.575 in B, 0.849 in C (7-16)', () => {
  const site = { basicMPerS: 50, heightM: 4 };
  expect(ascePressure({ ...site, exposure: 'C' }).kz).toBeCloseTo(0.849, 3);
  expect(2.01 * (15 / 1200) ** (2 / 7)).toBeCloseTo(0.575, 3);
});

test('EN 1995 screws: 8 × 60 mm in C24 6355 N, design 4400 N; 6 × 50 mm 3503 N', () => {
  const eight = enScrewWithdrawal({ diameterMm: 8, threadInWoodMm: 60, densityKgPerM3: 350 });
  expect(Math.round(eight.newtons)).toBe(6355);
  expect(Math.round(enDesignResistance(eight).newtons)).toBe(4400);
  expect(Math.round(enScrewWithdrawal({ diameterMm: 6, threadInWoodMm: 50, densityKgPerM3: 350 }).newtons)).toBe(3503);
});

test('NDS 5/16 in lag: 204.8, 266.0, 306.9 lb/in; 2.5 in of it in wind 3643 N', () => {
  const lag = (specificGravity: number) =>
    ndsLagWithdrawal({ diameterIn: 0.3125, threadInWoodIn: 2.5, specificGravity });
  expect([0.42, 0.5, 0.55].map((g) => Number(lag(g).lbPerInch.toFixed(1)))).toEqual([204.8, 266, 306.9]);
  expect(Math.abs(lag(0.42).newtons - 3643)).toBeLessThan(1);
});

test('EN snow: 1 kPa on the ground at 35° with an array: 0.8 on plan, 0.537 normal, 0.376 along', () => {
  expect(enSnowShape(35, false)).toBeCloseTo(0.667, 3);
  expect(enSnowShape(40, false)).toBeCloseTo(0.533, 3);
  expect(enSnowShape(61)).toBe(0);
  const got = enSnow({ groundKPa: 1, slopeDeg: 35 });
  expect(got.planKPa).toBeCloseTo(0.8, 12);
  expect(got.normalKPa).toBeCloseTo(0.537, 3);
  expect(got.alongKPa).toBeCloseTo(0.376, 3);
  expect(got.normalKPa * 680.4).toBeCloseTo(365, 0);
});

test('ASCE snow: 0.7 · 1.44 kPa = 1.008 kPa flat', () => {
  expect(asceSnow({ groundKPa: 1.44, slopeDeg: 0 }).normalKPa).toBeCloseTo(1.008, 6);
});

test('down: the worst combination by hand', () => {
  // EN: 1.35·100 + 1.5·400 + 0.9·300 = 1005; 1.35·100 + 1.5·300 + 0.75·400 = 885
  const loads = { weightN: 100, windN: 300, snowN: 400 };
  expect(fixingDown({ code: 'EN', ...loads })).toEqual({
    down: { newtons: 1005, level: 'design' },
    combination: '1.35G + 1.5S + 0.9W',
  });
  // ASD: D + S = 500; D + 0.45·300 + 0.75·400 = 535
  expect(fixingDown({ code: 'ASD', ...loads }).down).toEqual({ newtons: 535, level: 'allowable' });
});

test('a design load meets a design resistance and nothing else', () => {
  expect(utilisation({ newtons: 1027, level: 'design' }, { newtons: 4400, level: 'design' })).toBeCloseTo(0.2334, 4);
  const ultimate = { newtons: 1027, level: 'design' } as const;
  expect(() => utilisation(ultimate, { newtons: 3643, level: 'allowable' })).toThrow('both design or both allowable');
});

test('refuses what the formulas do not hold for', () => {
  expect(() => asPressure({ region: 'A', terrain: 3, heightM: 14 })).toThrow('heightM is 14');
  expect(() => asPressure({ region: 'W' as never, terrain: 3, heightM: 5 })).toThrow('region is W');
  expect(() => enScrewWithdrawal({ diameterMm: 5, threadInWoodMm: 60, densityKgPerM3: 350 })).toThrow('6 to 12');
  expect(() => enScrewWithdrawal({ diameterMm: 8, threadInWoodMm: 40, densityKgPerM3: 350 })).toThrow('six diameters');
  const foot = { code: 'EN', pressurePa: 700, areaM2: 1, weightKgPerM2: 12, slopeDeg: 20 } as const;
  expect(() => fixingUplift({ ...foot, netCoefficient: 1.3 })).toThrow('Negative for uplift');
});
