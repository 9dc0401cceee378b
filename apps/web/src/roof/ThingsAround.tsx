import type { Job } from '@eaveline/job';
import type { Bounds, PlanView } from '../drawing/planView.ts';
import { round } from '../drawing/point.ts';
import { figure } from '../words/figure.ts';

export interface ThingsAroundProps {
  readonly objects: Job['facts']['site']['objects'];
  readonly view: PlanView;
  readonly bounds: Bounds;
}

/** A crown as it is drawn from above: bows round a circle. */
function crown(x: number, y: number, r: number): string {
  const bows = 10;
  const at = (i: number) => {
    const angle = (i / bows) * 2 * Math.PI;
    return `${round(x + Math.cos(angle) * r)} ${round(y + Math.sin(angle) * r)}`;
  };
  const bow = round(r * 0.36);
  return `M${at(0)}${Array.from({ length: bows }, (_, i) => `A${bow} ${bow} 0 0 1 ${at(i + 1)}`).join('')}Z`;
}

/** Trees, poles and neighbours: in their place where the drawing reaches so far, else at its edge with how far off they stand. */
export function ThingsAround({ objects, view, bounds }: ThingsAroundProps) {
  return Object.entries(objects).map(([id, { kind, name, eastM, northM, heightM, widthM }]) => {
    const [x, y] = view.place(eastM, northM);
    const r = (widthM / 2) * view.pxPerM;
    const off = Math.hypot(
      Math.max(bounds.minE - eastM, eastM - bounds.maxE, 0),
      Math.max(bounds.minN - northM, northM - bounds.maxN, 0),
    );
    const within = x > -r && x < view.width + r * 0.6 && y > -r * 0.6 && y < view.height;
    // out of its place it is a sign, small enough for the corner outside the sizes
    const drawnR = within ? r : 14;
    const at = within
      ? { x, y }
      : { x: Math.min(Math.max(x, 17), view.width - 17), y: Math.min(Math.max(y, 17), view.height - 17) };
    const right = at.x > view.width / 2;
    // beside it; at the head or the foot of the drawing out of the way of the sizes there
    const labelY = within
      ? Math.max(at.y - drawnR * 0.4, 10)
      : at.y < 60
        ? 10
        : at.y > view.height - 60
          ? view.height - 4
          : at.y - drawnR - 6;
    const words = `${name}, ${figure(heightM, 0)} m high${off > 0 ? `, ${figure(off, 1)} m off` : ''}${within ? '' : ', not in its place'}`;
    return (
      <g key={id}>
        {kind === 'tree' ? (
          <path className="pen35 on-film" d={crown(at.x, at.y, drawnR)} />
        ) : (
          <rect className="pen35 on-film" x={at.x - drawnR} y={at.y - drawnR} width={2 * drawnR} height={2 * drawnR} />
        )}
        <path className="pen25" d={`M${at.x - 5} ${at.y}h10M${at.x} ${at.y - 5}v10`} />
        <text
          className="close halo"
          x={right ? at.x - drawnR - 10 : at.x + drawnR + 10}
          y={labelY}
          textAnchor={right ? 'end' : 'start'}
        >
          {words}
        </text>
      </g>
    );
  });
}
