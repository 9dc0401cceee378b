import type { Working } from '../working.ts';

/** u to the right along the eave, v up the slope, metres. */
export type UV = readonly [u: number, v: number];
/** East, north, up from the house's origin, metres. */
export type ENU = readonly [e: number, n: number, u: number];

export interface RoofEdge {
  /** Which side of the plane it is, as seen from in front of the eave: its setback goes by this. */
  readonly side: 'eave' | 'right' | 'ridge' | 'left';
  readonly kind: 'eave' | 'ridge' | 'hip' | 'valley' | 'verge' | 'wall';
  readonly from: UV;
  readonly to: UV;
  readonly lengthM: number;
  /** Kept free along it. */
  readonly setbackM: number;
}

export interface RoofObstruction {
  readonly id: string;
  readonly kind: string;
  readonly name: string;
  readonly centre: UV;
  readonly widthM: number;
  readonly depthM: number;
  readonly heightM: number;
  readonly clearM: number;
}

export interface RoofPlane {
  readonly id: string;
  readonly name: string;
  /** First letter or letters, unique in the job: `N`. */
  readonly letter: string;
  readonly facingDeg: number;
  readonly pitchDeg: number;
  /** Anticlockwise, first point the left end of the eave. */
  readonly outline: readonly UV[];
  readonly outline3d: readonly ENU[];
  readonly edges: readonly RoofEdge[];
  readonly areaM2: number;
  /** Outline after setbacks. Empty where nothing is left. */
  readonly usable: readonly UV[];
  /** Usable part less the clear zones of obstructions, overlaps counted once. */
  readonly usableAreaM2: number;
  readonly obstructions: readonly RoofObstruction[];
  /** u of each rafter's middle, metres; undefined where the first rafter or the spacing is not known. */
  readonly raftersU?: readonly number[];
  /** Unit vectors: along the eave, up the slope, outward. */
  readonly along: ENU;
  readonly upSlope: ENU;
  readonly normal: ENU;
  readonly sun: PlaneFigures;
}

/** Light of a year on a plane without near shade. */
export interface PlaneFigures {
  readonly monthlyKwhM2: readonly number[];
  readonly annualKwhM2: number;
  /** Same before incidence and horizon. */
  readonly annualBareKwhM2: number;
}

/** The same with its irradiance, W/m², one value a step of the sun stage. */
export interface PlaneSun extends PlaneFigures {
  /** Light from the sun and from the bright sky about it, incidence loss taken off; horizon of the survey taken off. */
  readonly beam: Float64Array;
  /** Rest of the sky, and ground, in the plane, incidence loss taken off. */
  readonly diffuse: Float64Array;
  /** Of `diffuse`, what comes from the sky. */
  readonly sky: Float64Array;
  /** As `beam`, before the glass takes its share. */
  readonly beamBare: Float64Array;
  /** As `diffuse`, before the glass takes its share. */
  readonly diffuseBare: Float64Array;
  readonly skyBare: Float64Array;
}

export interface RoofPlan {
  readonly planes: readonly RoofPlane[];
  readonly workings: readonly Working[];
  readonly leavesOut: readonly string[];
}

/** A plane with the light of every step. */
export interface LitPlane extends RoofPlane {
  readonly sun: PlaneSun;
}

export interface LitRoof extends RoofPlan {
  readonly planes: readonly LitPlane[];
}
