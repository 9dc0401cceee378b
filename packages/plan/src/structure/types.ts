import type { Working } from '../working.ts';

export type LoadLevel = 'characteristic' | 'design' | 'allowable';

export interface FootLoad {
  readonly footId: string;
  readonly railId: string;
  readonly planeId: string;
  readonly zone: 'interior' | 'edge' | 'corner';
  /** Net upward at the level named, N; undefined where a coefficient or speed is missing. */
  readonly upliftN?: number;
  readonly downN?: number;
}

export interface StructurePlan {
  /** Design method: which standard and combination. */
  readonly method: string;
  readonly level: LoadLevel;
  /** Velocity pressure, Pa; undefined where a fact is missing. */
  readonly pressurePa?: number;
  readonly edgeWidthM?: number;
  readonly feet: readonly FootLoad[];
  readonly worst?: {
    readonly footId: string;
    readonly where: string;
    readonly upliftN: number;
    readonly capacityN?: number;
    readonly working: Working;
  };
  /** Fixing's stated resistance and its level. */
  readonly capacity?: { readonly upliftN: number; readonly level: LoadLevel; readonly basis: string };
  readonly rails: readonly {
    readonly railId: string;
    readonly momentNm?: number;
    readonly stressMPa?: number;
    readonly deflectionMm?: number;
    readonly longestSpanM: number;
    readonly longestOverhangM: number;
  }[];
  readonly massPerM2: number;
  /** What is missing before it can be judged, job paths. */
  readonly missing: readonly string[];
  readonly workings: readonly Working[];
  readonly leavesOut: readonly string[];
}
