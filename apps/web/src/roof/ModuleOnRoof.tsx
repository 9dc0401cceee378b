import type { Line, PlacedModule, RoofPlane } from '@eaveline/plan';
import { type OpenState, openWords } from '../checks/openState.ts';
import { DrawnMark } from '../drawing/DrawnMark.tsx';
import { wireToken } from '../drawing/linesOfModules.ts';
import type { PlanView } from '../drawing/planView.ts';
import { distance, minus, type Px, pathOf, plus, unit } from '../drawing/point.ts';
import { Thing } from '../drawing/Thing.tsx';
import { Unread } from '../drawing/Unread.tsx';
import { figure } from '../words/figure.ts';
import { breachWords } from './breachWords.ts';

export interface ModuleOnRoofProps {
  readonly module: PlacedModule;
  readonly plane: RoofPlane;
  readonly view: PlanView;
  readonly lines: readonly Line[];
  readonly annualKwh: number | undefined;
  /** How the worst finding about it stands, where one is open. */
  readonly open?: OpenState | undefined;
  readonly selected: boolean;
  readonly onSelect: ((id: string) => void) | undefined;
  /** Id of the red hatching. */
  readonly hatch: string;
}

/** A module from above: its name, the flag of the line it feeds with the line's letters, a breach drawn as one. */
export function ModuleOnRoof({
  module,
  plane,
  view,
  lines,
  annualKwh,
  open,
  selected,
  onSelect,
  hatch,
}: ModuleOnRoofProps) {
  const corners = module.corners.map((corner) => view.inPlane(plane, corner));
  const centre = view.inPlane(plane, module.centre);
  const breach = breachWords(module, plane);
  const [a, b, c] = corners as [Px, Px, Px];
  // seen on the drawing: which side of the module is at the foot, so that lettering stands upright on every plane
  const wide = Math.max(Math.abs(b[0] - a[0]), Math.abs(c[0] - b[0]));
  const high = Math.max(Math.abs(b[1] - a[1]), Math.abs(c[1] - b[1]));
  const small = Math.min(wide, high) < 27;
  const name = small ? String(module.place) : `${module.row}·${module.place}`;
  const flag = flagOf(module, plane, view, small ? 3 : 6);
  const drawn = (
    <>
      <path
        d={pathOf(corners, true)}
        className={`${selected ? 'pen70 on-wash' : 'pen35 on-film'} ${breach === undefined ? '' : 'in-fails'}`}
      />
      {breach !== undefined && <path d={pathOf(corners, true)} fill={`url(#${hatch})`} />}
      {lines.length > 0 && flag.length > 8 && (
        <>
          <path d={pathOf([flag.from, flag.to])} stroke="var(--casing)" strokeWidth={small ? 4 : 6} />
          {lines.map((line, i) => (
            <path
              key={line}
              d={pathOf([partOf(flag, i / lines.length), partOf(flag, (i + 1) / lines.length)])}
              stroke={wireToken(line)}
              strokeWidth={small ? 2.2 : 3.6}
            />
          ))}
        </>
      )}
      <text
        className={`halo ${small ? 'zone' : ''} ${selected ? 'bold' : ''}`}
        x={centre[0]}
        y={centre[1] + (high > 29 ? (small ? 2 : -1) : 4)}
        textAnchor="middle"
      >
        {name}
      </text>
      {high > 29 && wide > (lines.length > 1 ? 28 : 18) && lines.length > 0 && (
        <text className="zone close halo" x={centre[0]} y={centre[1] + (small ? 13 : 12)} textAnchor="middle">
          {lines.length === 3 ? 'L123' : lines.join('-')}
        </text>
      )}
      {high <= 29 && wide > 44 && lines.length > 0 && (
        <text className="zone close halo" x={centre[0] + 24} y={centre[1] + 4} textAnchor="middle">
          {lines.length === 3 ? 'L123' : lines.join('-')}
        </text>
      )}
      <DrawnMark
        state={open}
        x={centre[0] + away(flag, centre, 0) * (wide / 2 - (small ? 6 : 8.5))}
        y={centre[1] + away(flag, centre, 1) * (high / 2 - (small ? 6 : 8.5))}
        size={small ? 9 : 13}
      />
      <path className="ring" d={pathOf(corners, true)} />
    </>
  );
  if (onSelect === undefined) return <Unread>{drawn}</Unread>;
  const kwh = annualKwh === undefined ? '' : `, ${figure(annualKwh, 0)} kWh a year`;
  const label = `${module.name}, ${plane.name} plane row ${module.row}, on ${lines.join(' and ') || 'no line'}${kwh}, ${breach ?? 'inside its setbacks'}${openWords(open)}`;
  return (
    <Thing id={`module:${module.id}`} label={label} selected={selected} onSelect={onSelect}>
      {drawn}
    </Thing>
  );
}

/** To which side of the middle the flag does not lie: there the mark has room. */
function away({ from, to }: { readonly from: Px; readonly to: Px }, centre: Px, axis: 0 | 1): 1 | -1 {
  return (from[axis] + to[axis]) / 2 > centre[axis] + 0.5 ? -1 : 1;
}

/** The flag lies along the module's lower edge, a little inside it. */
function flagOf({ at: [u, v], widthM }: PlacedModule, plane: RoofPlane, view: PlanView, inset: number) {
  const low = view.inPlane(plane, [u, v]);
  const end = view.inPlane(plane, [u + widthM, v]);
  const inward = unit(minus(view.inPlane(plane, [u, v + 1]), low));
  const along = unit(minus(end, low));
  const from = plus(plus(low, inward, inset), along, 6);
  const to = plus(plus(end, inward, inset), along, -6);
  return { from, to, length: distance(from, to) };
}

/** A point some share of the way along a flag: a unit on two lines carries the colours of both, side by side. */
function partOf({ from, to }: { readonly from: Px; readonly to: Px }, share: number): Px {
  return plus(from, minus(to, from), share);
}
