import { within } from '../refusal.ts';

const rad = (deg: number) => (deg * Math.PI) / 180;

/**
 * Shape coefficient μ1 of a pitched roof by EN 1991-1-3 (from memory): 0.8 to 30°, falling to 0 at 60°.
 * Not below 0.8 to 60° where anything stops the snow sliding, and the lower edge of an array does.
 */
export function enSnowShape(slopeDeg: number, slidingStopped = true): number {
  const a = within(slopeDeg, 0, 90, 'slopeDeg', 'Slope of the roof.');
  if (a <= 30 || (slidingStopped && a <= 60)) return 0.8;
  return a >= 60 ? 0 : (0.8 * (60 - a)) / 30;
}

export interface SnowLoad {
  /** On the plan area, kPa. */
  readonly planKPa: number;
  /** Per square metre of slope, along its normal and down the slope, kPa. */
  readonly normalKPa: number;
  readonly alongKPa: number;
}

function onSlope(planKPa: number, slopeDeg: number): SnowLoad {
  const cos = Math.cos(rad(slopeDeg));
  return { planKPa, normalKPa: planKPa * cos * cos, alongKPa: planKPa * cos * Math.sin(rad(slopeDeg)) };
}

/** Snow on a roof with an array by EN 1991-1-3: s = μ1·Ce·Ct·sk; characteristic. Drift and sliding from above: ask. */
export function enSnow(input: {
  readonly groundKPa: number;
  readonly slopeDeg: number;
  readonly exposure?: number;
  readonly thermal?: number;
  readonly slidingStopped?: boolean;
}): SnowLoad {
  const sk = within(input.groundKPa, 0, 50, 'groundKPa', 'From the national map and altitude.');
  const ce = within(input.exposure ?? 1, 0.8, 1.2, 'exposure', '0.8 windswept, 1.2 sheltered.');
  const ct = within(input.thermal ?? 1, 0.5, 1, 'thermal', '1 unless the roof melts it.');
  return onSlope(enSnowShape(input.slopeDeg, input.slidingStopped ?? true) * ce * ct * sk, input.slopeDeg);
}

/**
 * Snow on a roof by ASCE 7 (from memory): pf = 0.7·Ce·Ct·Is·pg, ps = Cs·pf, with Cs = 1 as the safe value.
 * In 7-22 pg is already at strength level; the edition decides the factors that follow.
 */
export function asceSnow(input: {
  readonly groundKPa: number;
  readonly slopeDeg: number;
  readonly exposure?: number;
  readonly thermal?: number;
  readonly importance?: number;
  readonly slopeFactor?: number;
}): SnowLoad {
  const pg = within(input.groundKPa, 0, 50, 'groundKPa', 'From the map or the official.');
  const ce = within(input.exposure ?? 1, 0.7, 1.2, 'exposure', 'See chapter 7.');
  const ct = within(input.thermal ?? 1, 0.85, 1.3, 'thermal', '1.2 for an open roof.');
  const is = within(input.importance ?? 1, 0.8, 1.2, 'importance', '1 for a house.');
  const cs = within(input.slopeFactor ?? 1, 0, 1, 'slopeFactor', '1 is safe.');
  within(input.slopeDeg, 0, 90, 'slopeDeg', 'Slope of the roof.');
  return onSlope(0.7 * ce * ct * is * pg * cs, input.slopeDeg);
}
