import type { Mend } from '../finding.ts';
import type { Line } from '../trunks/types.ts';
import type { Working } from '../working.ts';

export interface BackedCircuit {
  readonly id: string;
  readonly name: string;
  /** Lines it is fed from in island; where it is not moved, the lines it stands on. */
  readonly lines: readonly Line[];
  /** Lines it stands on today. */
  readonly standsOn: readonly Line[];
  readonly runW: number;
  readonly nightW: number;
  readonly moved: boolean;
  readonly shed: boolean;
  /** Moved, and every line it needs is kept alive. A three-phase machine on a backup of one line is not fed. */
  readonly fed: boolean;
}

/** A motor's start on the battery with everything else running. */
export interface MotorStart {
  readonly circuitId: string;
  readonly name: string;
  readonly lines: readonly Line[];
  /** Locked-rotor demand and the rest running with it, VA. Undefined where the plate gives nothing. */
  readonly startVA?: number;
  readonly withRestVA?: number;
  /** Short-time rating of the batteries on its lines, VA: what `withRestVA` is set against. */
  readonly availableVA: number;
  /** The same less the rest that runs: what `startVA` is set against; k is its share. */
  readonly leftVA: number;
  /** Current left for the motor over its locked-rotor current. */
  readonly k?: number;
  readonly verdict: 'starts' | 'will not' | 'ask' | 'no start peak' | 'plate missing';
  /** How k came about; where there is none, why. */
  readonly working: Working;
  /** How `withRestVA` and `availableVA` came about. */
  readonly withRestWorking?: Working;
  readonly availableWorking: Working;
  /** Ways out where it does not simply start, each worked out; their values are `withRestVA` as it would be. */
  readonly mends: readonly Mend[];
}

export interface BackupPlan {
  readonly present: boolean;
  readonly lines: readonly Line[];
  readonly circuits: readonly BackedCircuit[];
  /** By line: running sum against the rating, with the region's or practice's share. */
  readonly byLine: readonly {
    readonly line: Line;
    readonly runningVA: number;
    readonly ratedVA: number;
    readonly limitVA: number;
    readonly working: Working;
  }[];
  /** Every fed motor, the hardest start first. */
  readonly starts: readonly MotorStart[];
  readonly usableKwh: number;
  readonly reserve: number;
  /** Hours of a night from full and from the reserve alone, without sun. */
  readonly night?: {
    readonly loadW: number;
    readonly fullH: number;
    readonly reserveH: number;
    readonly working: Working;
  };
  /** Ids of circuits wanted in an outage that stay dark: must stay on, but not moved, shed or not fed; or moved and not fed. */
  readonly leftDark: readonly string[];
  readonly solarOnBackupVA: number;
  readonly solarShare?: number;
  /** Most an island can drive into a fault, against the magnetic trip of its breakers. */
  readonly islandFaultA?: number;
  /** For each fed circuit whose breaker is known: would even a type B of that rating trip at once? */
  readonly islandTrips: readonly {
    readonly circuitId: string;
    readonly breakerA: number;
    readonly magneticFromA: number;
    readonly magneticTrip: 'trips' | 'may' | 'will not';
  }[];
  readonly changeoverA?: number;
  /** Most that passes through the changeover on one line. */
  readonly changeoverNeedA?: number;
  readonly workings: readonly Working[];
  readonly leavesOut: readonly string[];
}
