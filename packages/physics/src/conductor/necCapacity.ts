import { Refusal, within } from '../refusal.ts';
import { NEC_310_16, NEC_AMBIENT_FACTOR, NEC_CONDUCTOR_COUNT_FACTOR } from './data/necAmpacity.ts';

export type NecColumnC = 60 | 75 | 90;

export interface NecCapacityInput {
  readonly conductor: 'copper';
  readonly awg: string;
  /** Column of the conductor's own insulation. */
  readonly insulationColumnC: NecColumnC;
  /** Outdoor or room air; the rooftop adder is put on top of it. */
  readonly ambientC: number;
  readonly currentCarryingConductors: number;
  /** Column of the coolest terminal the conductor lands on. */
  readonly terminalColumnC: NecColumnC;
  /** Raceway or cable in direct sun: the gap from the roof to its underside, mm. Left out: not on a sunlit roof. */
  readonly roofGapMm?: number;
  /** The gap below which the adder counts: 19 mm (3/4 in, 2023 edition) unless said; 22 mm (7/8 in) in 2017 and 2020. */
  readonly roofGapLimitMm?: number;
}

export interface NecCapacity {
  readonly tableA: number;
  /** Air with the rooftop adder. */
  readonly adjustedAmbientC: number;
  readonly ambientFactor: number;
  readonly adjustmentFactor: number;
  readonly correctedA: number;
  readonly terminalLimitA: number;
  /** The lesser of the corrected capacity and the terminal's. */
  readonly usableA: number;
}

/** Temperature added to the air round a raceway lying close over a sunlit roof: NEC 310.15(B)(2), 33 °C. */
export const ROOFTOP_ADDER_C = 33;

const COLUMN = { 60: 1, 75: 2, 90: 3 } as const;

/** NEC Table 310.16, copper, A. */
export function necTableAmpacityA(awg: string, columnC: NecColumnC): number {
  const row = NEC_310_16.find(([size]) => size === awg);
  const at = COLUMN[columnC];
  if (!row || at === undefined) {
    throw new Refusal({
      code: 'unknown-name',
      at: 'awg',
      got: `${awg} in the ${columnC} °C column`,
      want: 'copper 14 to 1, 1/0 to 4/0 or 250 kcmil, column 60, 75 or 90',
      mend: 'Choose a size and column of Table 310.16.',
    });
  }
  return row[at];
}

/** Factor of the band that holds the temperature, NEC 310.15(B)(1)(1). Decimals go to the hotter band. */
export function necAmbientFactor(columnC: NecColumnC, ambientC: number): number {
  const row = NEC_AMBIENT_FACTOR.find(([topC]) => ambientC <= topC);
  const factor = row?.[COLUMN[columnC]];
  if (factor === undefined || !(ambientC >= -60)) {
    throw new Refusal({
      code: 'outside-range',
      at: 'ambientC',
      got: ambientC,
      want: `a temperature the ${columnC} °C column has a factor for`,
      mend: 'Choose a hotter insulation, or raise the raceway off the roof.',
    });
  }
  return factor;
}

/** Factor for more than three current-carrying conductors, NEC 310.15(C)(1). */
export function necConductorCountFactor(conductors: number): number {
  within(conductors, 1, 1000, 'currentCarryingConductors', 'Count the conductors that carry current in the raceway.');
  return (NEC_CONDUCTOR_COUNT_FACTOR.find(([upTo]) => conductors <= upTo) as readonly [number, number])[1];
}

/**
 * Ampacity of a copper conductor in a raceway or cable after correction, and what its terminals allow.
 *
 *     corrected = table(insulation column) · ambient · count
 *     usable    = min(corrected, table(terminal column))
 *
 * The rooftop adder does not apply to XHHW-2 (NEC exception); leave the gap out then.
 *
 * @throws {Refusal} `unknown-name`, `outside-range`.
 *
 * Source: NEC 2023 310.15, 310.16, 110.14(C)(1).
 */
export function necCableCapacity(input: NecCapacityInput): NecCapacity {
  const { roofGapMm, roofGapLimitMm = 19 } = input;
  if (roofGapMm !== undefined) within(roofGapMm, 0, 5000, 'roofGapMm', 'Measure from the roof to the raceway.');
  const onHotRoof = roofGapMm !== undefined && roofGapMm < roofGapLimitMm;
  const adjustedAmbientC = input.ambientC + (onHotRoof ? ROOFTOP_ADDER_C : 0);

  const tableA = necTableAmpacityA(input.awg, input.insulationColumnC);
  const ambient = necAmbientFactor(input.insulationColumnC, adjustedAmbientC);
  const adjustment = necConductorCountFactor(input.currentCarryingConductors);
  const terminalLimitA = necTableAmpacityA(input.awg, input.terminalColumnC);
  const correctedA = tableA * ambient * adjustment;
  return {
    tableA,
    adjustedAmbientC,
    ambientFactor: ambient,
    adjustmentFactor: adjustment,
    correctedA,
    terminalLimitA,
    usableA: Math.min(correctedA, terminalLimitA),
  };
}
