import type { RoofObstruction, RoofPlane, UV } from '@eaveline/plan';
import type { PlanView } from '../drawing/planView.ts';
import { pathOf } from '../drawing/point.ts';
import { figure } from '../words/figure.ts';

export interface ObstructionOnRoofProps {
  readonly obstruction: RoofObstruction;
  readonly plane: RoofPlane;
  readonly view: PlanView;
}

const QUARTERS = [
  [1, 1],
  [-1, 1],
  [-1, -1],
  [1, -1],
] as const;

/** What stands on a plane, with the ring that is kept free about it. */
export function ObstructionOnRoof({
  obstruction: { centre, widthM, depthM, clearM, name },
  plane,
  view,
}: ObstructionOnRoofProps) {
  const [u, v] = centre;
  const body = QUARTERS.map(([x, y]): UV => [u + (x * widthM) / 2, v + (y * depthM) / 2]);
  const ring = Array.from({ length: 48 }, (_, i): UV => {
    const angle = (i / 48) * 2 * Math.PI;
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    return [u + Math.sign(cos) * (widthM / 2) + cos * clearM, v + Math.sign(sin) * (depthM / 2) + sin * clearM];
  });
  const [x, y] = view.inPlane(plane, centre);
  const r = (clearM + widthM / 2) * view.pxPerM;
  return (
    <g role="img" aria-label={`${name} on the ${plane.name} plane, ${figure(clearM * 1000, 0)} mm kept clear`}>
      {clearM > 0 && (
        <path
          className="pen25 centre-line"
          d={pathOf(
            ring.map((at) => view.inPlane(plane, at)),
            true,
          )}
        />
      )}
      <path
        className="pen35 on-film"
        d={pathOf(
          body.map((at) => view.inPlane(plane, at)),
          true,
        )}
      />
      <path className="pen25" d={`M${x} ${y}L${x + r * 0.75 + 4} ${y - r * 0.75 - 4}h8`} />
      <circle className="on-ink" cx={x} cy={y} r="1.4" />
      <text className="close halo" x={x + r * 0.75 + 15} y={y - r * 0.75}>
        {name}, {figure(clearM * 1000, 0)} clear
      </text>
    </g>
  );
}
