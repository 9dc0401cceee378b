import { finite, positive, Refusal, within } from '../refusal.ts';
import type { Force } from './level.ts';

/** Which standard's factors hold. */
export type LoadCode = 'AS/NZS' | 'EN' | 'ASD';

/** Standard gravity as the worked cases use it, m/s². */
const G = 9.81;

export interface FixingInput {
  readonly code: LoadCode;
  /** Pressure of the site, Pa. With ASCE: the panel's own pressure, positive, and a net coefficient of −1. */
  readonly pressurePa: number;
  /** Net coefficient on the panel; negative is uplift. From a table, a wind-tunnel report or an engineer. */
  readonly netCoefficient: number;
  /** Share of panel on this fixing, m². */
  readonly areaM2: number;
  /** Array with rails, kg/m² of slope. */
  readonly weightKgPerM2: number;
  readonly slopeDeg: number;
}

export interface FixingUplift {
  /** Wind away from the roof, unfactored, N. */
  readonly windN: number;
  /** Weight on this fixing, N. */
  readonly weightN: number;
  readonly factoredWindN: number;
  /** What of the weight holds against it, along the roof's normal. */
  readonly heldN: number;
  /** Net force out of the roof; zero when the weight holds it. */
  readonly uplift: Force;
  readonly combination: string;
}

interface UpliftFactors {
  readonly wind: number;
  readonly weight: number;
  readonly level: 'design' | 'allowable';
  readonly combination: string;
}

const UPLIFT: Readonly<Record<LoadCode, UpliftFactors>> = {
  'AS/NZS': { wind: 1, weight: 0.9, level: 'design', combination: '0.9G + Wu' },
  EN: { wind: 1.5, weight: 0.9, level: 'design', combination: '0.9G + 1.5W' },
  ASD: { wind: 0.6, weight: 0.6, level: 'allowable', combination: '0.6D + 0.6W' },
};

function factorsOf<T>(table: Readonly<Record<LoadCode, T>>, code: LoadCode): T {
  const found = table[code];
  if (found === undefined) {
    throw new Refusal({
      code: 'unknown-name',
      at: 'code',
      got: code,
      want: 'AS/NZS, EN or ASD',
      mend: 'Name the load standard.',
    });
  }
  return found;
}

/**
 * Uplift on one fixing, normal to the roof.
 *
 *     uplift = γW·q·|C|·A − γG·m·g·A·cos(slope)
 *
 * Only the weight that is on that fixing counts, and only its part along the normal.
 *
 * Source: AS/NZS 1170.0, EN 1990, ASCE 7 combinations (from memory).
 */
export function fixingUplift(input: FixingInput): FixingUplift {
  const { wind, weight, level, combination } = factorsOf(UPLIFT, input.code);
  const q = positive(input.pressurePa, 'pressurePa', 'Work out the pressure of the site.');
  const c = within(input.netCoefficient, -10, 0, 'netCoefficient', 'Negative for uplift; down has a sum of its own.');
  const areaM2 = positive(input.areaM2, 'areaM2', 'Spacing times half the module along the rail.');
  const kg = within(input.weightKgPerM2, 0, 100, 'weightKgPerM2', '11 to 15 is usual.');
  const slope = within(input.slopeDeg, 0, 89, 'slopeDeg', 'Slope of the roof.');
  const windN = -q * c * areaM2;
  const weightN = kg * G * areaM2;
  const factoredWindN = wind * windN;
  const heldN = weight * weightN * Math.cos((slope * Math.PI) / 180);
  return {
    windN,
    weightN,
    factoredWindN,
    heldN,
    uplift: { newtons: Math.max(0, factoredWindN - heldN), level },
    combination,
  };
}

export interface FixingDownInput {
  readonly code: LoadCode;
  /** Unfactored, on this fixing, along the roof's normal, N. */
  readonly weightN: number;
  readonly windN: number;
  readonly snowN: number;
}

const DOWN: Readonly<
  Record<LoadCode, { level: 'design' | 'allowable'; rows: readonly (readonly [string, number, number, number])[] }>
> = {
  // name, weight, wind, snow
  'AS/NZS': {
    level: 'design',
    rows: [
      ['1.35G', 1.35, 0, 0],
      ['1.2G + Wu', 1.2, 1, 0],
      ['1.2G + Su', 1.2, 0, 1],
    ],
  },
  EN: {
    level: 'design',
    rows: [
      ['1.35G + 1.5S + 0.9W', 1.35, 0.9, 1.5],
      ['1.35G + 1.5W + 0.75S', 1.35, 1.5, 0.75],
    ],
  },
  ASD: {
    level: 'allowable',
    rows: [
      ['D + 0.6W', 1, 0.6, 0],
      ['D + S', 1, 0, 1],
      ['D + 0.75(0.6W) + 0.75S', 1, 0.45, 0.75],
    ],
  },
};

/** The worst downward combination on one fixing. ASCE 7-22 ground snow is already at strength level: give 0.7 of it. */
export function fixingDown(input: FixingDownInput): { down: Force; combination: string } {
  const { level, rows } = factorsOf(DOWN, input.code);
  const loads = [input.weightN, input.windN, input.snowN].map((n, i) => {
    finite(n, ['weightN', 'windN', 'snowN'][i]);
    return within(n, 0, 1e6, ['weightN', 'windN', 'snowN'][i], 'Towards the roof is positive; give 0 for none.');
  });
  let worst = { combination: '', newtons: -1 };
  for (const [combination, g, w, s] of rows) {
    const newtons = g * loads[0] + w * loads[1] + s * loads[2];
    if (newtons > worst.newtons) worst = { combination, newtons };
  }
  return { down: { newtons: worst.newtons, level }, combination: worst.combination };
}
