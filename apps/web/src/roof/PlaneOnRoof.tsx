import type { RoofEdge, RoofPlane } from '@eaveline/plan';
import { type OpenState, openWords } from '../checks/openState.ts';
import { DrawnMark } from '../drawing/DrawnMark.tsx';
import type { PlanView } from '../drawing/planView.ts';
import { type Px, pathOf } from '../drawing/point.ts';
import { Thing } from '../drawing/Thing.tsx';
import { figure } from '../words/figure.ts';
import type { NameSpot } from './nameSpot.ts';

export interface PlaneOnRoofProps {
  readonly plane: RoofPlane;
  readonly view: PlanView;
  /** Name and pitch, and where there is room for them; nowhere, where there is none. */
  readonly name: string;
  readonly spot: NameSpot | undefined;
  /** Where there is room for the mark of what is open about it. */
  readonly markAt: Px | undefined;
  /** How the worst finding about it stands, where one is open. */
  readonly open?: OpenState | undefined;
  readonly selected: boolean;
  /** Undefined where modules are what is selected. */
  readonly onSelect: ((id: string) => void) | undefined;
}

/** Eaves and verges bound the roof; ridges, hips and valleys lie within it. */
const PEN: Readonly<Record<RoofEdge['kind'], string>> = {
  eave: 'pen50',
  verge: 'pen50',
  wall: 'pen70',
  ridge: 'pen35',
  hip: 'pen35',
  valley: 'pen35',
};

/** One plane from above: its edges in their pens, what is kept free along them dashed, its name where there is room. */
export function PlaneOnRoof({ plane, view, name, spot, markAt, open, selected, onSelect }: PlaneOnRoofProps) {
  const outline = plane.outline.map((at) => view.inPlane(plane, at));
  const usable = plane.usable.map((at) => view.inPlane(plane, at));
  const drawn = (
    <>
      <path d={pathOf(outline, true)} className="on-film" />
      {selected && (
        <path d={pathOf(outline, true)} fill="none" stroke="var(--marker)" strokeWidth="9" strokeLinejoin="bevel" />
      )}
      {plane.edges.map((edge) => (
        <path
          key={edge.side}
          className={selected ? 'pen70' : PEN[edge.kind]}
          d={pathOf([view.inPlane(plane, edge.from), view.inPlane(plane, edge.to)])}
        />
      ))}
      {usable.length > 2 && <path className="pen25 hidden-line" d={pathOf(usable, true)} />}
      {spot && (
        <text
          className={spot.close ? 'close halo' : 'l30 halo'}
          textAnchor="middle"
          transform={`translate(${spot.at[0]} ${spot.at[1]}) rotate(${spot.upright ? -90 : 0})`}
          dy="5"
        >
          {name}
        </text>
      )}
      {markAt && <DrawnMark state={open} x={markAt[0]} y={markAt[1]} size={15} />}
      <path className="ring" d={pathOf(outline, true)} />
    </>
  );
  if (onSelect === undefined) return drawn;
  const label = `${name}, ${figure(plane.usableAreaM2, 0)} m² free, ${plane.raftersU === undefined ? 'rafters not measured' : 'rafters known'}${openWords(open)}`;
  return (
    <Thing id={`plane:${plane.id}`} label={label} selected={selected} onSelect={onSelect}>
      {drawn}
    </Thing>
  );
}
