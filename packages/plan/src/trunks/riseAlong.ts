import {
  addPhasors,
  exportPhasors,
  liftOver,
  magnitudes,
  type PhasorRun,
  type Phasors,
  riseBetween,
  type SupplyKind,
  sourcePhasors,
} from '@eaveline/physics';
import { type LaidDrop, sourcesOf } from './layDrops.ts';

/** The road from the trunk's joint to the point of supply, without lengths that are not known. */
export interface RiseRoad {
  readonly system: SupplyKind;
  readonly nominalV: number;
  readonly trunkOhmPerM: number;
  readonly homeRun: PhasorRun;
  /** Undefined where length or size of the mains is not known. */
  readonly mains?: PhasorRun;
  /** Everything that flows through the mains: all trunks, and the battery when it gives. */
  readonly mainsCurrent: Phasors;
}

export interface SpanRise {
  readonly fromDrop: number;
  readonly toDrop: number;
  readonly currentA: number;
  /** Rise over this span between the terminals of the unit at its outer end, V. */
  readonly riseV: number;
}

export interface RiseAlong {
  readonly spans: readonly SpanRise[];
  /** Above the board and above the point of supply at each drop, V. */
  readonly aboveBoardV: readonly number[];
  readonly aboveSupplyV: readonly number[];
  /** Index of the drop with a unit that stands highest. */
  readonly far: number;
  /** The three parts at that drop. */
  readonly trunkV: number;
  readonly homeRunV: number;
  readonly mainsV: number;
  readonly totalV: number;
  /** Current of the busiest line at the joint, A. */
  readonly currentA: number;
}

/**
 * Volts along a trunk with every unit at its rating: two arms on one joint, then the home run, then the mains.
 *
 * Each unit counts as a constant current at nominal voltage. At constant power the current falls as the voltage
 * rises, so the true rise is lower by about its own percentage: this errs on the high side.
 */
export function riseAlong(drops: readonly LaidDrop[], feedDrop: number, road: RiseRoad): RiseAlong {
  const voltage = sourcePhasors(road.system, road.nominalV);
  const exports = drops.map((drop) => exportPhasors(sourcesOf(drop), voltage));
  const total = exports.reduce(addPhasors, new Float64Array(8));
  const homeLift = liftOver(road.homeRun, total);
  const mainsLift = road.mains === undefined ? new Float64Array(8) : liftOver(road.mains, road.mainsCurrent);

  const lift: Phasors[] = drops.map(() => homeLift);
  const spans: SpanRise[] = [];
  const joint = feedDrop - 1;
  const fromLow = runningSums(exports);
  const fromHigh = runningSums(exports.toReversed()).toReversed();
  const arm = (step: 1 | -1) => {
    for (let k = joint + step; k >= 0 && k < drops.length; k += step) {
      const beyond = (step > 0 ? fromHigh : fromLow)[k] as Phasors;
      const lengthM = Math.abs((drops[k]?.atM ?? 0) - (drops[k - step]?.atM ?? 0));
      const over = liftOver({ lengthM, lineOhmPerM: road.trunkOhmPerM }, beyond);
      lift[k] = addPhasors(lift[k - step] ?? homeLift, over);
      spans.push({
        fromDrop: k - step + 1,
        toDrop: k + 1,
        currentA: busiest(beyond),
        riseV: dropRise(drops[k], over, voltage),
      });
    }
  };
  arm(-1);
  arm(1);
  spans.sort((a, b) => Math.min(a.fromDrop, a.toDrop) - Math.min(b.fromDrop, b.toDrop));

  const aboveBoardV = drops.map((drop, k) => dropRise(drop, lift[k] ?? homeLift, voltage));
  const aboveSupplyV = drops.map((drop, k) => (aboveBoardV[k] ?? 0) + dropRise(drop, mainsLift, voltage));
  const far = indexOfHighest(drops, aboveSupplyV);
  const homeRunV = dropRise(drops[far], homeLift, voltage);
  const mainsV = dropRise(drops[far], mainsLift, voltage);
  return {
    spans,
    aboveBoardV,
    aboveSupplyV,
    far,
    trunkV: (aboveBoardV[far] ?? 0) - homeRunV,
    homeRunV,
    mainsV,
    totalV: aboveSupplyV[far] ?? 0,
    currentA: busiest(total),
  };
}

/** Sum of each with all before it. */
function runningSums(currents: readonly Phasors[]): Phasors[] {
  let sum: Phasors = new Float64Array(8);
  return currents.map((current) => {
    sum = addPhasors(sum, current);
    return sum;
  });
}

/** The larger of the rises between a unit's terminals; for a bare drop, of a line to neutral. */
function dropRise(drop: LaidDrop | undefined, lift: Phasors, voltage: Phasors): number {
  const between = drop !== undefined && drop.between.length > 0 ? drop.between : ([[0, 'N']] as const);
  return Math.max(...between.map(([from, to]) => riseBetween(from, to, lift, voltage)));
}

function busiest(i: Phasors): number {
  const [a, b, c] = magnitudes(i);
  return Math.max(a, b, c);
}

function indexOfHighest(drops: readonly LaidDrop[], riseV: readonly number[]): number {
  let best = -1;
  drops.forEach((drop, k) => {
    if (drop.unitId === undefined) return;
    if (best < 0 || (riseV[k] ?? 0) > (riseV[best] ?? 0)) best = k;
  });
  return Math.max(0, best);
}
