/** A scale with round ends and round steps. */
export interface GaugeScale {
  readonly from: number;
  readonly to: number;
  readonly step: number;
}

/** 1, 2, 2.5 or 5 times a power of ten, the next at or above. */
export function roundStep(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  const step = [1, 2, 2.5, 5, 10].find((each) => each * power >= least * (1 - 1e-9)) ?? 10;
  return step * power;
}

/** Decimals that show every mark of a step as it is: 2.5 needs one, 0.25 two. Rounded, 2.5 would be lettered 3. */
export function stepDecimals(step: number): number {
  return String(Number(step.toPrecision(12))).split('.')[1]?.length ?? 0;
}

/**
 * A scale that holds all the values with some room beyond the outermost.
 * It begins at nought where nought is near.
 *
 * @param steps  about how many.
 */
export function gaugeScale(values: readonly number[], steps = 5): GaugeScale {
  const known = values.filter((value) => Number.isFinite(value));
  const low = Math.min(...known);
  const high = Math.max(...known);
  if (known.length === 0) return { from: 0, to: 1, step: 0.2 };
  const span = high - low || Math.abs(high) || 1;
  const fromZero = low >= 0 && span > high * 0.08; // 230 of 253 V would be lost on a scale from nought
  const step = roundStep(((fromZero ? high : span) * 1.25) / steps);
  const from = fromZero ? 0 : Math.floor((low - span * 0.25) / step) * step;
  const to = Math.ceil((high + span * 0.1) / step) * step;
  return { from: round(from), to: round(to <= from ? from + step : to), step };
}

const round = (value: number) => Number(value.toPrecision(12));

/** The marks of a scale. */
export function gaugeTicks({ from, to, step }: GaugeScale): number[] {
  return Array.from({ length: Math.round((to - from) / step) + 1 }, (_, i) => round(from + i * step));
}
