import type { Line } from '../trunks/types.ts';
import type { Working } from '../working.ts';

/** One circuit that carries solar or a battery to the board. */
export interface SourceCircuit {
  /** `trunk:a`, `battery:b1`. */
  readonly id: string;
  readonly kind: 'trunk' | 'battery';
  /** Id of the trunk or battery. */
  readonly of: string;
  readonly name: string;
  readonly lines: readonly Line[];
  readonly designA: number;
  readonly designWorking: Working;
  readonly breakerSheetId: string;
  readonly breakerA: number;
  readonly cableSheetId: string;
  readonly lengthM: number;
  /** Table current, each correction, and what is left. */
  readonly capacity: {
    readonly tableA: number;
    readonly factors: readonly { readonly name: string; readonly factor: number }[];
    readonly capacityA: number;
    readonly working: Working;
    /** Why no table at hand gives a figure; the capacity then stands as 0, and the check asks. */
    readonly noTable?: string;
  };
  /** Smallest cable at hand that meets capacity, and why each smaller one does not. */
  readonly sizes: readonly {
    readonly cableSheetId: string;
    readonly capacityA: number;
    readonly meets: boolean;
    readonly why: string;
  }[];
  /** Hot loop at the far end of the circuit; undefined where the supply's loop is not known. */
  readonly loop?: {
    readonly ohm: number;
    readonly coldOhm: number;
    readonly limitOhm?: number;
    readonly working: Working;
  };
  /** Line and earth conductor of the run, and what lies beyond it, cold, Ω: what a meter reads with the ends linked. */
  readonly conductorsColdOhm: Working;
  readonly beyondColdOhm: Working;
  /** Earth conductor of the run alone, cold, Ω. */
  readonly earthColdOhm: Working;
  /** Prospective current at the board against the breaker. */
  readonly breakingKA: number;
}

export interface BoardPlan {
  readonly name: string;
  readonly circuits: readonly SourceCircuit[];
  /** Sources on each line, what stood there before among them, A. */
  readonly lineA: Readonly<Record<Line, number>>;
  readonly lineVA: Readonly<Record<Line, number>>;
  /** Of these, solar that stood there before, A. */
  readonly thereA: Readonly<Record<Line, number>>;
  /** Of that, what stands on an element of the meter of its own: the house's limit does not see it, A. */
  readonly thereApartA: Readonly<Record<Line, number>>;
  readonly largestDifferenceVA: number;
  /** Neutral current with full sun and no load, A; undefined on a single-phase board. */
  readonly neutralA?: number;
  readonly bus: {
    readonly busA?: number;
    readonly mainA?: number;
    readonly sourceA: number;
    /** What the region's rule compares, and its limit. */
    readonly comparedA?: number;
    readonly limitA?: number;
    readonly rule: string;
    readonly working?: Working;
  };
  readonly waysNeeded: number;
  readonly waysFree?: number;
  readonly standingLeakageMA: number;
  readonly prospectiveA?: number;
  readonly workings: readonly Working[];
  readonly leavesOut: readonly string[];
}
