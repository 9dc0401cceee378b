import type { RoofPlane, UV } from '@eaveline/plan';
import type { Px } from './point.ts';
import { pxPerM } from './scale.ts';

export interface Bounds {
  readonly minE: number;
  readonly maxE: number;
  readonly minN: number;
  readonly maxN: number;
}

/** What the planes cover seen from above, m. */
export function boundsOf(planes: readonly Pick<RoofPlane, 'outline3d'>[]): Bounds {
  const all = planes.flatMap(({ outline3d }) => outline3d);
  if (all.length === 0) return { minE: 0, maxE: 1, minN: 0, maxN: 1 };
  const east = all.map(([e]) => e);
  const north = all.map(([, n]) => n);
  return { minE: Math.min(...east), maxE: Math.max(...east), minN: Math.min(...north), maxN: Math.max(...north) };
}

/** The house seen from above, north up. */
export interface PlanView {
  readonly scale: number;
  readonly pxPerM: number;
  readonly width: number;
  readonly height: number;
  place(eastM: number, northM: number): Px;
  /** A point of a plane, given along the eave and up the slope. */
  inPlane(plane: Pick<RoofPlane, 'outline3d' | 'along' | 'upSlope'>, at: UV): Px;
}

/** A view with some room round the roof, in px, for sizes and names. */
export function planView(
  bounds: Bounds,
  scale: number,
  margin: { readonly x: number; readonly y: number; readonly foot: number },
): PlanView {
  const perM = pxPerM(scale);
  const place = (eastM: number, northM: number): Px => [
    margin.x + (eastM - bounds.minE) * perM,
    margin.y + (bounds.maxN - northM) * perM,
  ];
  return {
    scale,
    pxPerM: perM,
    width: (bounds.maxE - bounds.minE) * perM + 2 * margin.x,
    height: (bounds.maxN - bounds.minN) * perM + margin.y + margin.foot,
    place,
    inPlane({ outline3d, along, upSlope }, [u, v]) {
      const [e, n] = outline3d[0] ?? [0, 0, 0];
      return place(e + along[0] * u + upSlope[0] * v, n + along[1] * u + upSlope[1] * v);
    },
  };
}
