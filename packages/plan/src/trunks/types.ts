import type { Working } from '../working.ts';

export type Line = 'L1' | 'L2' | 'L3';

/** A drop of a trunk with its unit, or a spare one. */
export interface Drop {
  /** `A5`. */
  readonly name: string;
  readonly number: number;
  readonly unitId?: string;
  /** Modules on that unit, by their names. */
  readonly moduleNames: readonly string[];
  readonly line?: Line;
  /** Distance along the trunk from the feed joint, m. */
  readonly fromFeedM: number;
  /** Volts above the board at full export, and above the point of supply. */
  readonly aboveBoardV: number;
  readonly aboveSupplyV: number;
  /** Middle of its unit along its rail from the rail's left end, mm; undefined for a spare drop. */
  readonly alongRailMm?: number;
  /** Straight distance from drop to unit against the unit's reach, mm; undefined where not worked out. */
  readonly reach?: { readonly needMm: number; readonly haveMm: number };
}

/** One piece of the trunk between two neighbouring drops. */
export interface TrunkSpan {
  readonly fromDrop: number;
  readonly toDrop: number;
  readonly lengthM: number;
  readonly jumper: boolean;
  readonly currentA: number;
  readonly riseV: number;
}

export interface RiseParts {
  readonly trunkV: number;
  readonly homeRunV: number;
  readonly mainsV: number;
  readonly totalV: number;
  /** Of nominal. */
  readonly share: number;
}

export interface TrunkPlan {
  readonly id: string;
  /** `A`. */
  readonly name: string;
  readonly lines: readonly Line[];
  readonly cableSheetId: string;
  readonly drops: readonly Drop[];
  readonly spans: readonly TrunkSpan[];
  readonly feedDrop: number;
  readonly unitCount: number;
  /** Rated export of one unit and of the whole trunk on its busiest line, A. */
  readonly unitA: number;
  readonly currentA: number;
  readonly currentWorking: Working;
  readonly ratedVA: number;
  /** Trunk cable laid, m, in drops, with jumpers. */
  readonly cableM: number;
  readonly slackM: number;
  readonly caps: { readonly end: number; readonly drop: number; readonly feedJoints: number };
  readonly homeRun: {
    readonly cableSheetId: string;
    readonly lengthM: number;
    readonly ohmPerM: number;
    readonly riseV: number;
  };
  /** To the unit that stands highest. Undefined where the mains are not known: then the rise stops at the board. */
  readonly rise: RiseParts;
  /** Nominal volts between the terminals of its units: what the rise is a share of. */
  readonly terminalV: number;
  readonly mainsKnown: boolean;
  readonly farDrop: number;
  readonly riseWorking: Working;
  /** Same with every battery discharging too, where there is one. */
  readonly riseWithBattery?: { readonly totalV: number; readonly working: Working };
  /** Every feed place tried: rise to the highest unit. */
  readonly feedOptions: readonly { readonly drop: number; readonly totalV: number }[];
  /** Every home-run size at hand tried, this feed. */
  readonly sizeOptions: readonly { readonly cableSheetId: string; readonly totalV: number }[];
}

export interface TrunksPlan {
  readonly trunks: readonly TrunkPlan[];
  /** Export on each line of the supply at full sun, A and VA. */
  readonly lineA: Readonly<Record<Line, number>>;
  readonly lineVA: Readonly<Record<Line, number>>;
  readonly nominalV: number;
  readonly workings: readonly Working[];
  readonly leavesOut: readonly string[];
}
