import type { Line } from '../trunks/types.ts';
import type { Working } from '../working.ts';

export interface BackedCircuit {
  readonly id: string;
  readonly name: string;
  readonly lines: readonly Line[];
  readonly runW: number;
  readonly nightW: number;
  readonly moved: boolean;
  readonly shed: boolean;
}

/** A motor's start on the battery with everything else running. */
export interface MotorStart {
  readonly circuitId: string;
  readonly name: string;
  /** Locked-rotor demand and the rest running with it, VA. Undefined where the plate gives nothing. */
  readonly startVA?: number;
  readonly withRestVA?: number;
  readonly availableVA: number;
  /** Current left for the motor over its locked-rotor current. */
  readonly k?: number;
  readonly verdict: 'starts' | 'will not' | 'ask' | 'no start peak' | 'plate missing';
  readonly working: Working;
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
  /** Circuits wanted in an outage that do not stand on a backed-up line. */
  readonly leftDark: readonly string[];
  readonly solarOnBackupVA: number;
  readonly solarShare?: number;
  /** Most an island can drive into a fault, against the magnetic trip of its breakers. */
  readonly islandFaultA?: number;
  readonly changeoverA?: number;
  readonly workings: readonly Working[];
  readonly leavesOut: readonly string[];
}
