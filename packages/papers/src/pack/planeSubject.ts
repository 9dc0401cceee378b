import type { ArrayRow, PlacedModule, Rail, RoofPlane } from '@eaveline/plan';
import type { Point, Scale } from '../drawing/index.ts';
import type { Pack } from './packContext.ts';

/** A plane with what stands on it. */
export interface PlaneSubject {
  readonly pack: Pack;
  readonly plane: RoofPlane;
  readonly rows: readonly ArrayRow[];
  readonly rails: readonly Rail[];
  readonly modules: readonly PlacedModule[];
}

/** Slope metres on paper: u to the right, v up. */
export interface PlaneView {
  readonly scale: Scale;
  readonly onPaper: (uv: readonly [number, number]) => Point;
}
