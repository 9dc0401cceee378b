import type { SunPlan } from '../sun/types.ts';
import type { Line } from '../trunks/types.ts';
import type { UnitWire } from './unitWire.ts';
import type { WorkedUnit } from './workUnits.ts';

/** Units that share a year, as one line sees them: how many, and their losses. */
interface Load {
  readonly acW: Float64Array;
  readonly ratedVA: number;
  count: number;
  lossShares: number;
}

/** Power at the board, in sum and on each line: power of each unit less its loss, lossShare · power²/rating. */
export function sumArray(
  units: readonly WorkedUnit[],
  wires: ReadonlyMap<string, UnitWire>,
  steps: number,
): { readonly acW: Float64Array; readonly acByLineW: Partial<Record<Line, Float64Array>> } {
  const acW = new Float64Array(steps);
  const acByLineW: Partial<Record<Line, Float64Array>> = {};
  for (const [line, loads] of loadsByLine(units, wires)) {
    const own = new Float64Array(steps);
    for (const { acW: each, ratedVA, count, lossShares } of loads) {
      const square = lossShares / ratedVA;
      for (let i = 0; i < steps; i++) {
        const watts = each[i] as number;
        own[i] = (own[i] as number) + watts * (count - square * watts);
      }
    }
    for (let i = 0; i < steps; i++) acW[i] = (acW[i] as number) + (own[i] as number);
    if (line !== undefined) acByLineW[line] = own;
  }
  return { acW, acByLineW };
}

/** What stands on each line, units of one year counted together; units on no trunk stand on no line. */
function loadsByLine(units: readonly WorkedUnit[], wires: ReadonlyMap<string, UnitWire>) {
  const byLine = new Map<Line | undefined, Load[]>();
  for (const { unitId, acW, ratedVA } of units) {
    const wire = wires.get(unitId);
    for (const { line, share } of wire?.lines ?? [{ line: undefined, share: 1 }]) {
      const loads = byLine.get(line) ?? [];
      byLine.set(line, loads);
      let load = loads.find((one) => one.acW === acW && one.ratedVA === ratedVA);
      if (load === undefined) {
        load = { acW, ratedVA, count: 0, lossShares: 0 };
        loads.push(load);
      }
      load.count += share;
      load.lossShares += share * (wire?.lossShare ?? 0);
    }
  }
  return byLine;
}

/** Mean day of each month, W by hour of standard time; 0 for an hour without a step. */
export function meanDays(acW: Float64Array, { steps, month, hour }: SunPlan): number[][] {
  const sums = new Float64Array(12 * 24);
  const counts = new Float64Array(12 * 24);
  for (let i = 0; i < steps; i++) {
    const k = (month[i] as number) * 24 + (hour[i] as number);
    sums[k] = (sums[k] as number) + (acW[i] as number);
    counts[k] = (counts[k] as number) + 1;
  }
  const mean = (k: number) => ((counts[k] as number) > 0 ? (sums[k] as number) / (counts[k] as number) : 0);
  return Array.from({ length: 12 }, (_, m) => Array.from({ length: 24 }, (_hour, h) => mean(m * 24 + h)));
}
