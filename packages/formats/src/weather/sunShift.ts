import { type SunClock, wrapHours } from './sunClock.ts';
import type { HourRow } from './weatherYear.ts';

/** Shifts tried on either side, h. */
const REACH_H = 1.5;

/**
 * Radiation-weighted mean of true solar time, less noon, h. About 0 when the labels mean what
 * they should; positive when the radiation is late. Clouds that prefer the afternoon move it by
 * some minutes, a wrong longitude or offset by hours (folded into −12 to 12).
 */
export function energyCentreH(rows: readonly HourRow[], clock: SunClock): number | undefined {
  let cos = 0;
  let sin = 0;
  for (const [i, { ghi }] of rows.entries()) {
    const angle = ((clock.hourAngleH[i] as number) * Math.PI) / 12;
    cos += (ghi ?? 0) * Math.cos(angle);
    sin += (ghi ?? 0) * Math.sin(angle);
  }
  if (cos === 0 && sin === 0) return undefined;
  const middle = (Math.atan2(sin, cos) * 12) / Math.PI;
  let weight = 0;
  let moment = 0;
  for (const [i, { ghi }] of rows.entries()) {
    weight += ghi ?? 0;
    moment += (ghi ?? 0) * wrapHours((clock.hourAngleH[i] as number) - middle);
  }
  return wrapHours(middle + moment / weight);
}

/**
 * Shift of the sun, h, at which global = diffuse + direct · cos z closes best (least squares);
 * undefined when the file has too little beam to tell, or the minimum lies at the end of the range.
 */
export function closureShiftH(rows: readonly HourRow[], clock: SunClock): number | undefined {
  const used = rows.flatMap(({ ghi, dni, dhi }, i) =>
    ghi !== undefined && dhi !== undefined && dni !== undefined && dni > 50 && clock.cosZenith(i, 0) > 0.1
      ? [{ i, dni, beam: ghi - dhi }]
      : [],
  );
  if (used.length < 20) return undefined;
  return leastShift(1 / 12, (shiftH) => {
    let sum = 0;
    for (const { i, dni, beam } of used) sum += (beam - dni * Math.max(0, clock.cosZenith(i, shiftH))) ** 2;
    return sum / used.length;
  });
}

/**
 * Shift of the sun, h, at which the upper edge of the radiation (ninth decile of each clock hour
 * in each half month) has the shape of a clear sky. Clouds that prefer the afternoon lower the
 * mean but hardly the edge. Needs most of a year.
 *
 * Misfit: 1 − cos² of the angle between the two daily profiles, averaged over half months.
 * Clear sky by shape only: cos z · exp(−0.059 / cos z), the form of `clearSkyHaurwitz1945`.
 */
export function envelopeShiftH(rows: readonly HourRow[], clock: SunClock): number | undefined {
  const halves = halfMonths(rows);
  if (halves.length < 20) return undefined;
  const tenth = halves.map((hours) => hours.map((list) => ninthDecile(list.map((i) => rows[i]?.ghi ?? 0))));
  return leastShift(1 / 6, (shiftH) => {
    let misfit = 0;
    for (const [k, hours] of halves.entries()) {
      const clear = hours.map((list) => meanOf(list.map((i) => clearShape(clock, i, shiftH))));
      misfit += 1 - cosSquared(tenth[k] as number[], clear);
    }
    return misfit / halves.length;
  });
}

/** Rows of each half month by clock hour; half months with fewer than ten days are left out. */
function halfMonths(rows: readonly HourRow[]): number[][][] {
  const halves = Array.from({ length: 24 }, () => Array.from({ length: 24 }, () => [] as number[]));
  for (const [i, { month, day, hour, ghi }] of rows.entries()) {
    if (ghi !== undefined) halves[(month - 1) * 2 + (day > 15 ? 1 : 0)]?.[hour - 1]?.push(i);
  }
  return halves.filter((hours) => hours.every((list) => list.length >= 10));
}

/** Mean of the clear shape over the hour around row i. */
function clearShape(clock: SunClock, i: number, shiftH: number): number {
  let sum = 0;
  for (const part of [-1 / 3, 0, 1 / 3]) {
    const cosZ = clock.cosZenith(i, shiftH + part);
    if (cosZ > 0.01) sum += cosZ * Math.exp(-0.059 / cosZ);
  }
  return sum / 3;
}

function ninthDecile(values: number[]): number {
  values.sort((a, b) => a - b);
  return values[Math.floor(0.9 * (values.length - 1))] as number;
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function cosSquared(a: readonly number[], b: readonly number[]): number {
  let ab = 0;
  let aa = 0;
  let bb = 0;
  for (const [k, x] of a.entries()) {
    const y = b[k] as number;
    ab += x * y;
    aa += x * x;
    bb += y * y;
  }
  return aa > 0 && bb > 0 ? (ab * ab) / (aa * bb) : 1;
}

/** Least of a smooth misfit over ±1.5 h: grid, then a parabola through the three points about the least. */
function leastShift(stepH: number, misfit: (shiftH: number) => number): number | undefined {
  const half = Math.round(REACH_H / stepH);
  const values = Array.from({ length: 2 * half + 1 }, (_, k) => misfit((k - half) * stepH));
  const at = values.indexOf(Math.min(...values));
  if (at <= 0 || at >= 2 * half) return undefined;
  const [left, middle, right] = values.slice(at - 1, at + 2) as [number, number, number];
  const bend = left - 2 * middle + right;
  return (at - half + (bend > 0 ? (left - right) / (2 * bend) : 0)) * stepH;
}
