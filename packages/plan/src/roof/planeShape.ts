import { type PlaneFacts, planeOutline, planeToHouse } from '@eaveline/job';
import { Refusal } from '@eaveline/physics';
import { areaM2, clipConvex, leftOf } from './clipConvex.ts';
import type { ENU, RoofEdge, UV } from './types.ts';

/** Kept free along the edges, m in the surface. */
export interface Setbacks {
  readonly eaveM: number;
  readonly ridgeM: number;
  readonly sideM: number;
}

type EdgeSide = RoofEdge['side'];

/** A plane's outline and what follows from it alone. */
export interface PlaneShape {
  readonly outline: readonly UV[];
  readonly outline3d: readonly ENU[];
  readonly edges: readonly RoofEdge[];
  readonly areaM2: number;
  readonly usable: readonly UV[];
  readonly along: ENU;
  readonly upSlope: ENU;
  readonly normal: ENU;
}

/**
 * Unit vectors of a plane that faces `a` clockwise from north at pitch `p`, east, north, up:
 *
 *     normal (sin p sin a, sin p cos a, cos p) · along (−cos a, sin a, 0) · up the slope (−cos p sin a, −cos p cos a, sin p)
 *
 * (along, up the slope, normal) is right-handed; seen from in front of the eave, along points right.
 */
export function planeFrame(facingDeg: number, pitchDeg: number): { along: ENU; upSlope: ENU; normal: ENU } {
  const a = (facingDeg * Math.PI) / 180;
  const p = (pitchDeg * Math.PI) / 180;
  return {
    along: [-Math.cos(a), Math.sin(a), 0],
    // taken from 0: a plane that faces north exactly has 0 east in it, not −0, and reads the same after JSON
    upSlope: [0 - Math.cos(p) * Math.sin(a), 0 - Math.cos(p) * Math.cos(a), Math.sin(p)],
    normal: [Math.sin(p) * Math.sin(a), Math.sin(p) * Math.cos(a), Math.cos(p)],
  };
}

/**
 * Outline, edges and usable part of a plane: eave, ridge and two straight sides, so always convex, and the usable
 * part is the outline cut by each edge moved inward by its setback, exactly.
 *
 * @throws {Refusal} `inconsistent` where the ridge ends before it begins.
 */
export function planeShape(plane: PlaneFacts, setbacks: Setbacks, at: string): PlaneShape {
  const { ridgeFromM, ridgeToM } = plane;
  if (ridgeFromM > ridgeToM) {
    throw new Refusal({
      code: 'inconsistent',
      at: `${at}.ridgeFromM`,
      got: ridgeFromM,
      want: `at most ridgeToM, ${ridgeToM}`,
      mend: 'Both are counted from the left end of the eave.',
    });
  }
  const outline = planeOutline(plane);
  const edges = planeEdges(plane, outline, setbacks);
  return {
    outline,
    outline3d: outline.map((point) => planeToHouse(plane, point)),
    edges,
    areaM2: areaM2(outline),
    usable: clipConvex(
      outline,
      edges.map(({ from, to, setbackM }) => leftOf(from, to, setbackM)),
    ),
    ...planeFrame(plane.facingDeg, plane.pitchDeg),
  };
}

function planeEdges(plane: PlaneFacts, outline: readonly UV[], setbacks: Setbacks): PlaneShape['edges'] {
  const sides: readonly EdgeSide[] =
    outline.length === 4 ? ['eave', 'right', 'ridge', 'left'] : ['eave', 'right', 'left'];
  const setback = { eave: setbacks.eaveM, ridge: setbacks.ridgeM, left: setbacks.sideM, right: setbacks.sideM };
  return sides.map((side, k) => {
    const from = outline[k] as UV;
    const to = outline[(k + 1) % outline.length] as UV;
    return {
      side,
      kind: plane.edges[side],
      from,
      to,
      lengthM: Math.hypot(to[0] - from[0], to[1] - from[1]),
      setbackM: setback[side],
    };
  });
}
