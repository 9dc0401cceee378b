import { type Shown, showWithin } from './showWithin.ts';

const DECIMALS = {
  V: 2,
  A: 2,
  kA: 2,
  mA: 1,
  VA: 0,
  W: 0,
  kWh: 1,
  N: 0,
  MPa: 0,
  m: 2,
  mm: 0,
  Ω: 2,
  '%': 1,
  '': 2,
} as const;

/** Units findings are given in. */
export type Unit = keyof typeof DECIMALS;

/** A figure against its limit, and both as they are written with their unit. */
export interface Against {
  readonly value: number;
  readonly limit: number;
  readonly sense: 'at most' | 'at least';
  readonly unit: Unit;
  readonly shown: Shown;
}

/** Puts a figure beside its limit, shown with the decimals that its unit is read with. */
export function against(value: number, sense: Against['sense'], limit: number, unit: Unit): Against {
  const whole = Number.isInteger(value) && Number.isInteger(limit);
  const { value: mine, limit: most } = showWithin(value, limit, sense, whole ? 0 : DECIMALS[unit]);
  const named = (text: string) => (unit === '' ? text : `${text} ${unit}`);
  return { value, limit, sense, unit, shown: { value: named(mine), limit: named(most) } };
}

/** A figure alone, with its unit. */
export function shown(value: number, unit: Unit): string {
  return against(value, 'at most', value, unit).shown.value;
}
