import type { Point, Scale } from '../drawing/index.ts';

/** How plan metres become millimetres of paper. */
export interface PlanView {
  readonly scale: Scale;
  readonly onPaper: (eastNorthM: readonly [number, number]) => Point;
}
