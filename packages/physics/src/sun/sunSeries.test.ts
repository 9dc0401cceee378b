import { expect, test } from 'vitest';
import { sunPosition } from './sunPosition.ts';
import { sunAtInstants, sunSeries } from './sunSeries.ts';

const RAD = Math.PI / 180;

/** Repeatable numbers in 0…1. */
function dice(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** Largest angle between the fast and the full sun at sampled steps, degrees; zenith, azimuth·sin z, vector. */
function worstMiss(latitudeDeg: number, year: number, stepS: number, count: number): readonly number[] {
  const site = { latitudeDeg, longitudeDeg: 2 * latitudeDeg + 1, altitudeM: 800 };
  const startMs = Date.UTC(year, 0, 1);
  const fast = sunSeries({ ...site, startMs, stepS, count });
  const roll = dice(year * 100 + latitudeDeg + 90);
  let [zenith, across, vector] = [0, 0, 0];
  for (let sample = 0; sample < 60; sample++) {
    const i = sample === 0 ? 0 : sample === 1 ? count - 1 : Math.floor(roll() * count);
    const full = sunPosition({ ...site, timeMs: startMs + i * stepS * 1000 });
    const z = full.apparentZenithDeg * RAD;
    const a = full.azimuthDeg * RAD;
    const turn = ((fast.azimuthDeg[i] - full.azimuthDeg + 540) % 360) - 180;
    const gap = Math.hypot(
      fast.east[i] - Math.sin(z) * Math.sin(a),
      fast.north[i] - Math.sin(z) * Math.cos(a),
      fast.up[i] - Math.cos(z),
    );
    zenith = Math.max(zenith, Math.abs(fast.apparentZenithDeg[i] - full.apparentZenithDeg));
    across = Math.max(across, Math.abs(turn * Math.sin(z)));
    vector = Math.max(vector, gap / RAD);
    expect(Math.abs(fast.etrNormalWM2[i] - full.etrNormalDistanceWM2)).toBeLessThan(1e-3);
  }
  return [zenith, across, vector];
}

test('a year of any step keeps to the full algorithm within 0.0001°', () => {
  // asked for are 0.001°; the interpolation of the slow quantities alone is good to 0.00001°
  for (const [stepS, count] of [
    [3600, 8760],
    [300, 105_120],
    [60, 10_000],
    [7200.5, 400],
  ] as const) {
    for (const latitudeDeg of [-66, -34, 0, 23.4, 46, 70, 89]) {
      for (const miss of worstMiss(latitudeDeg, 2025, stepS, count)) expect(miss).toBeLessThan(1.2e-4);
    }
  }
  for (const year of [1990, 2059])
    for (const miss of worstMiss(52, year, 3600, 8760)) expect(miss).toBeLessThan(1.2e-4);
});

test('rows of a typical year, out of several years, with lone rows between', () => {
  const site = { latitudeDeg: 40, longitudeDeg: -105, altitudeM: 1700, deltaTS: 67 };
  const times: number[] = [];
  for (const [year, month, hours] of [
    [2005, 0, 744],
    [1998, 1, 672],
    [2011, 2, 3],
    [1991, 11, 1],
  ] as const) {
    for (let h = 0; h < hours; h++) times.push(Date.UTC(year, month, 1, h, 30));
  }
  const fast = sunAtInstants(times, site);
  expect(fast.count).toBe(1420);
  times.forEach((timeMs, i) => {
    if (i % 17 !== 0 && i < 1410) return;
    const full = sunPosition({ ...site, timeMs });
    expect(Math.abs(fast.apparentZenithDeg[i] - full.apparentZenithDeg)).toBeLessThan(1.2e-4);
    expect(Math.abs(fast.up[i] - Math.cos(full.apparentZenithDeg * RAD))).toBeLessThan(2e-6);
  });
});

test('refuses half a step and a row without an instant', () => {
  const site = { latitudeDeg: 40, longitudeDeg: 0 };
  expect(() => sunSeries({ ...site, startMs: 0, stepS: 0, count: 5 })).toThrow('stepS is 0');
  expect(() => sunSeries({ ...site, startMs: 0, stepS: 60, count: 2.5 })).toThrow('count is 2.5');
  expect(() => sunAtInstants([0, 3_600_000, Number.NaN], site)).toThrow('timesMs[2] is NaN');
});
