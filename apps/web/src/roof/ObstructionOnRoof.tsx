import type { RoofObstruction, RoofPlane, UV } from '@eaveline/plan';
import type { PlanView } from '../drawing/planView.ts';
import { pathOf } from '../drawing/point.ts';
import type { ObstructionLabel } from './labelSpot.ts';

export interface ObstructionOnRoofProps {
  readonly obstruction: RoofObstruction;
  readonly plane: RoofPlane;
  readonly view: PlanView;
  readonly label: ObstructionLabel;
}

const QUARTERS = [
  [1, 1],
  [-1, 1],
  [-1, -1],
  [1, -1],
] as const;

/** What stands on a plane, with the ring that is kept free about it. */
export function ObstructionOnRoof({ obstruction, plane, view, label }: ObstructionOnRoofProps) {
  const { centre, widthM, depthM, clearM } = obstruction;
  const [u, v] = centre;
  const body = QUARTERS.map(([x, y]): UV => [u + (x * widthM) / 2, v + (y * depthM) / 2]);
  const ring = Array.from({ length: 48 }, (_, i): UV => {
    const angle = (i / 48) * 2 * Math.PI;
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    return [u + Math.sign(cos) * (widthM / 2) + cos * clearM, v + Math.sign(sin) * (depthM / 2) + sin * clearM];
  });
  const [x, y] = view.inPlane(plane, centre);
  const { knee, text, anchor, words, box } = label;
  const lettered = words.length * 5.3;
  return (
    <g>
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
      <path className="pen25" d={`M${x} ${y}L${knee[0]} ${knee[1]}h${anchor === 'start' ? 8 : -8}`} />
      <circle className="on-ink" cx={x} cy={y} r="1.4" />
      <rect
        className="on-film"
        x={anchor === 'start' ? text[0] - 2 : text[0] - lettered - 2}
        y={box.y}
        width={lettered + 4}
        height={box.height}
      />
      <text className="close halo" x={text[0]} y={text[1]} textAnchor={anchor}>
        {words}
      </text>
    </g>
  );
}
