import type { ArrayRow, Plan, RoofPlane } from '@eaveline/plan';
import { Chain } from '../drawing/Chain.tsx';
import type { Bounds, PlanView } from '../drawing/planView.ts';
import { minus, type Px, plus, unit } from '../drawing/point.ts';
import { figure } from '../words/figure.ts';
import { alongEave } from './alongEave.ts';

export interface RoofSizesProps {
  readonly plan: Plan;
  readonly view: PlanView;
  readonly bounds: Bounds;
  readonly selected: string | undefined;
}

const mm = (metres: number) => figure(metres * 1000, 0);

/** Sizes of the whole house, and of the row one is on along its eave. */
export function RoofSizes({ plan, view, bounds, selected }: RoofSizesProps) {
  const { minE, maxE, minN, maxN } = bounds;
  const southWest = view.place(minE, minN);
  const southEast = view.place(maxE, minN);
  const northWest = view.place(minE, maxN);
  const module = plan.array.modules.find(({ id }) => selected === `module:${id}`);
  const row = plan.array.rows.find(({ id }) => id === module?.rowId) ?? plan.array.rows[0];
  const plane = plan.roof.planes.find(({ id }) => id === row?.planeId);
  // the row's own sizes lie along its eave; where that is at the foot, the width of the house goes to the top
  const rowAtFoot = row !== undefined && plane !== undefined && Math.cos((plane.facingDeg * Math.PI) / 180) < -0.7;
  const width = rowAtFoot ? [northWest, view.place(maxE, maxN)] : [southWest, southEast];
  return (
    <>
      <Chain points={width} words={[mm(maxE - minE)]} off={rowAtFoot ? 24 : -24} />
      <Chain points={[southWest, northWest]} words={[mm(maxN - minN)]} off={26} />
      {row && plane && <RowChain row={row} plane={plane} view={view} />}
    </>
  );
}

/** Along the eave: to the row, the row itself, what is left, or by how much it stands past the end. */
function RowChain({
  row,
  plane,
  view,
}: {
  readonly row: ArrayRow;
  readonly plane: RoofPlane;
  readonly view: PlanView;
}) {
  const eave = plane.edges.find(({ side }) => side === 'eave');
  if (eave === undefined) return null;
  const [start] = row.at;
  const pieces = alongEave(eave.lengthM, start, start + row.lengthMm / 1000);
  const stops = [...pieces.slice(0, 1).map(({ fromM }) => fromM), ...pieces.map(({ toM }) => toM)];
  const points = stops.map((u) => view.inPlane(plane, [u, 0]));
  // a little outside the eave, whichever way the plane faces
  const outward = unit(minus(points[0] as Px, view.inPlane(plane, [0, 1])));
  const shifted = points.map((point) => plus(point, outward, 0));
  const way = unit(minus(shifted.at(-1) as Px, shifted[0] as Px));
  const side = way[1] * outward[0] - way[0] * outward[1] > 0 ? 1 : -1;
  return <Chain points={shifted} words={pieces.map(({ fromM, toM }) => mm(toM - fromM))} off={24 * side} />;
}
