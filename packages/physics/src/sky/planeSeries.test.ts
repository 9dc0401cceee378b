import { expect, test } from 'vitest';
import { sunSeries } from '../sun/sunSeries.ts';
import { incidenceAverages } from './incidenceAverages.ts';
import { incidenceModifier } from './incidenceModifier.ts';
import { planeIrradiance } from './planeIrradiance.ts';
import { blankPlaneColumns, planeSeries } from './planeSeries.ts';
import { hayDaviesSeries, isotropicSeries, perezSeries } from './skySeries.ts';

const site = { latitudeDeg: -34, longitudeDeg: 18.5, altitudeM: 200 };
const count = 3000;
const sun = sunSeries({ ...site, startMs: Date.UTC(2026, 2, 1), stepS: 1700, count });

/** Any light at all, all eight kinds of sky among it; repeatable. */
function anyLight() {
  let state = 7;
  const roll = (): number => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
  const [dni, dhi, ghi] = [new Float64Array(count), new Float64Array(count), new Float64Array(count)];
  for (let i = 0; i < count; i++) {
    dhi[i] = roll() < 0.05 ? 0 : 500 * roll() ** 2 * Math.max(0, sun.up[i]); // never above what enters the air
    dni[i] = roll() < 0.3 ? 0 : 900 * roll() ** 2;
    ghi[i] = dhi[i] + dni[i] * Math.max(0, sun.up[i]);
  }
  return { dni, dhi, ghi };
}
const light = anyLight();
const glass = { model: 'physical', thicknessM: 0.0032, nCoating: 1.29 } as const;

test('the two loops of a year are the single instant, step for step', () => {
  const plane = { tiltDeg: 37, azimuthDeg: 295, albedo: 0.3, incidence: glass };
  const perez = planeSeries(sun, light, perezSeries(sun, light), plane);
  const hay = planeSeries(sun, light, hayDaviesSeries(sun, light), plane);
  const even = planeSeries(sun, light, isotropicSeries(sun), plane);
  const passed = incidenceAverages(glass, 37);
  const bins = new Set<number>();
  for (let i = 0; i < count; i++) {
    if (sun.apparentZenithDeg[i] >= 90) {
      expect(perez.effective[i]).toBe(0);
      continue;
    }
    const once = planeIrradiance({
      ...{ sunZenithDeg: sun.apparentZenithDeg[i], sunAzimuthDeg: sun.azimuthDeg[i], dniExtra: sun.etrNormalWM2[i] },
      ...{ dni: light.dni[i], dhi: light.dhi[i], ghi: light.ghi[i] },
      ...{ tiltDeg: 37, surfaceAzimuthDeg: 295, albedo: 0.3 },
    });
    if (once.perezBin !== undefined) bins.add(once.perezBin);
    // tables of air mass and modifier, vectors in place of angles; 0.01 W/m² is asked, a fifth of it is kept
    const near = (value: number, want: number): void => expect(Math.abs(value - want)).toBeLessThan(0.002);
    near(perez.beam[i], once.poaBeam);
    near(perez.sky[i], once.skyPerez);
    near(perez.circumsolar[i], once.perezPartCircumsolar);
    near(perez.ground[i], once.groundDiffuse);
    near(hay.sky[i], once.skyHaydavies);
    near(even.sky[i], once.skyIsotropic);
    const kept = once.poaBeam * incidenceModifier(glass, once.aoiDeg);
    near(perez.effective[i], kept + once.skyPerez * passed.sky + once.groundDiffuse * (passed.ground ?? 1));
  }
  expect(bins.size).toBe(8);
});

test('without glass the effective light is all of it', () => {
  const bare = planeSeries(sun, light, perezSeries(sun, light), { tiltDeg: 90, azimuthDeg: 90 });
  for (let i = 0; i < count; i++) {
    expect(bare.effective[i]).toBeCloseTo(bare.beam[i] + bare.sky[i] + bare.ground[i], 9);
  }
});

test('writes over given columns and leaves nothing of the plane before', () => {
  const into = blankPlaneColumns(count);
  const sky = perezSeries(sun, light);
  planeSeries(sun, light, sky, { tiltDeg: 20, azimuthDeg: 0, incidence: glass }, into);
  const again = planeSeries(sun, light, sky, { tiltDeg: 60, azimuthDeg: 180, incidence: glass }, into);
  const fresh = planeSeries(sun, light, sky, { tiltDeg: 60, azimuthDeg: 180, incidence: glass });
  expect(again.effective).toBe(into.effective);
  expect(again.effective).toEqual(fresh.effective);
});

test('refuses a column too short and a gap in it', () => {
  expect(() => perezSeries(sun, { ...light, dhi: [1, 2] })).toThrow('dhi.length is 2');
  const gap = light.dni.slice();
  gap[12] = Number.NaN;
  expect(() => perezSeries(sun, { ...light, dni: gap })).toThrow('dni[12] is NaN');
});
