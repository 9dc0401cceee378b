import type { UnitSheet } from '@eaveline/job';
import type { SunPlan } from '../sun/types.ts';

/** What one module of a unit gives at the unit's a.c. terminals, kWh. */
export interface UnitShare {
  readonly monthlyKwh: Float64Array;
  /** Σ power · (unit's power ÷ its rating), kWh: what a wire loss that grows with the square is a share of. */
  readonly monthlySquareKwh: Float64Array;
  /** Lost above the unit's rating. */
  readonly clippedKwh: number;
}

/** A unit's year. */
export interface UnitYear {
  readonly acW: Float64Array;
  /** In the order of its inputs. */
  readonly shares: readonly UnitShare[];
}

/**
 * A unit through the year: its modules' d.c. summed, times its weighted efficiency, held at its rating. What is lost
 * above the rating is shared among its modules by what each gave at that step.
 */
export function unitYear(sheet: UnitSheet, dcW: readonly Float64Array[], { steps, stepS, month }: SunPlan): UnitYear {
  const acW = new Float64Array(steps);
  const shares = dcW.map(() => ({ monthly: new Float64Array(12), square: new Float64Array(12), clipped: 0 }));
  const { ratedVA, efficiency } = sheet;
  for (let i = 0; i < steps; i++) {
    let sum = 0;
    for (const one of dcW) sum += one[i] as number;
    if (sum <= 0) continue;
    const whole = sum * efficiency;
    const ac = Math.min(whole, ratedVA);
    acW[i] = ac;
    const m = month[i] as number;
    for (let k = 0; k < dcW.length; k++) {
      const into = shares[k] as (typeof shares)[number];
      const share = ((dcW[k] as Float64Array)[i] as number) / sum;
      into.monthly[m] = (into.monthly[m] as number) + share * ac;
      into.square[m] = (into.square[m] as number) + (share * ac * ac) / ratedVA;
      into.clipped += share * (whole - ac);
    }
  }
  const kwh = stepS / 3.6e6;
  return {
    acW,
    shares: shares.map(({ monthly, square, clipped }) => ({
      monthlyKwh: monthly.map((sum) => sum * kwh),
      monthlySquareKwh: square.map((sum) => sum * kwh),
      clippedKwh: clipped * kwh,
    })),
  };
}
