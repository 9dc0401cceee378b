import type { ArrayRow, PlacedModule, Plan, Rail } from '@eaveline/plan';
import { type OpenState, openState, worseOf } from '../checks/openState.ts';
import { Chain } from '../drawing/Chain.tsx';
import { DrawnMark } from '../drawing/DrawnMark.tsx';
import type { Px } from '../drawing/point.ts';
import { pxPerM, scaleFor } from '../drawing/scale.ts';
import { useWidth } from '../drawing/useWidth.ts';
import { figure } from '../words/figure.ts';

export interface RowDrawingProps {
  readonly plan: Plan;
  readonly row: ArrayRow;
  /** The one selected, where one is. */
  readonly module: PlacedModule | undefined;
}

const TOP = 12;

/** One row in its plane: modules, rails, clamps, feet on their rafters, and the sizes a crew sets out by. */
export function RowDrawing({ plan, row, module }: RowDrawingProps) {
  const { ref, width } = useWidth<HTMLDivElement>();
  const plane = plan.roof.planes.find(({ id }) => id === row.planeId);
  const modules = plan.array.modules.filter(({ rowId }) => rowId === row.id);
  const rails = plan.array.rails.filter(({ rowId }) => rowId === row.id).sort((a, b) => a.v - b.v);
  const from = Math.min(row.at[0], ...rails.map(({ fromU }) => fromU)) - 0.25;
  const to = Math.max(row.at[0] + row.lengthMm / 1000, ...rails.map(({ toU }) => toU)) + 0.25;
  const scale = scaleFor({ wideM: to - from, highM: row.heightM }, { width: width - 4, height: 112 });
  const perM = pxPerM(scale);
  const [, bottom] = row.at;
  const x = (u: number) => (u - from) * perM + 2;
  const y = (v: number) => TOP + (bottom + row.heightM - v) * perM;
  const foot = y(bottom);
  const rafters = (plane?.raftersU ?? []).filter((u) => u > from && u < to);
  const lower = rails[0];
  const stateOf = (rail: Rail) =>
    worseOf(
      openState(plan.checks.findings, { kind: 'rail', id: rail.id, parts: true }),
      openState(plan.checks.findings, { kind: 'rail', id: 'rails' }),
    );
  return (
    <div ref={ref}>
      <svg
        width={Math.max(width, x(to))}
        height={foot + 42}
        viewBox={`0 0 ${Math.max(width, x(to))} ${foot + 42}`}
        role="img"
        aria-label={rowWords(row, rails, stateOf)}
      >
        {modules.map(({ id, at: [u, v], widthM, heightM, row: r, place }) => (
          <g key={id}>
            <rect
              className={`pen35 ${id === module?.id ? 'on-wash' : 'on-film'}`}
              x={x(u)}
              y={y(v + heightM)}
              width={widthM * perM}
              height={heightM * perM}
            />
            <text className="close halo" x={x(u + widthM / 2)} y={y(v + heightM / 2) + 4} textAnchor="middle">
              {r}·{place}
            </text>
          </g>
        ))}
        {rafters.map((u) => (
          <path key={u} className="pen25 centre-line in-quiet" d={`M${x(u)} ${TOP - 8}V${foot + 8}`} />
        ))}
        {rails.map((rail) => (
          <g key={rail.id}>
            <rect
              className={rail.keepsLimits ? 'pen25 on-film' : 'pen25 on-film in-fails'}
              x={x(rail.fromU)}
              y={y(rail.v) - 2.5}
              width={(rail.toU - rail.fromU) * perM}
              height="5"
            />
            {rail.feet.map(({ id, u }) => (
              <path
                key={id}
                className={rail.onRafters ? 'on-ink' : 'pen35 on-film'}
                d={`M${x(u)} ${y(rail.v) + 3}l4.5 8h-9Z`}
              />
            ))}
            <DrawnMark state={stateOf(rail)} x={x(rail.toU)} y={y(rail.v)} size={13} />
          </g>
        ))}
        {lower && <FootSizes rail={lower} x={x} y={foot} />}
      </svg>
      <p className="quiet small">
        {`1:${scale}. Row ${figure(row.lengthMm, 0)}, rails ${rails.map(({ lengthMm }) => figure(lengthMm, 0)).join(' and ')}, ${bottom < 0 ? `${figure(-bottom * 1000, 0)} below the eave` : `${figure(bottom * 1000, 0)} up the slope from the eave`}. ${footWords(rails)}`}
      </p>
    </div>
  );
}

interface FootSizesProps {
  readonly rail: Rail;
  readonly x: (u: number) => number;
  readonly y: number;
}

/** From the rail's left end to its feet, one size after another. */
function FootSizes({ rail, x, y }: FootSizesProps) {
  const stops = [rail.fromU, ...rail.feet.map(({ u }) => u), rail.toU];
  const points = stops.map((u): Px => [x(u), y + 8]);
  const words = stops.slice(1).map((u, i) => figure((u - (stops[i] ?? u)) * 1000, 0));
  return <Chain points={points} words={words} off={-26} close />;
}

function footWords(rails: readonly Rail[]): string {
  if (rails.some(({ onRafters }) => !onRafters)) return 'Feet are nominal: rafters are not measured.';
  if (rails.some(({ keepsLimits }) => !keepsLimits)) return 'Feet cannot keep spacing and overhang on these rafters.';
  return 'Feet stand on rafters.';
}

function rowWords(row: ArrayRow, rails: readonly Rail[], stateOf: (rail: Rail) => OpenState | undefined): string {
  const open = rails.flatMap((rail) => {
    const state = stateOf(rail);
    return state === undefined ? [] : [`${rail.name} ${state === 'ask' ? 'asks' : 'fails'}`];
  });
  return `Row ${row.name}: ${row.moduleIds.length} modules, ${rails.length} rails, ${rails.reduce((sum, { feet }) => sum + feet.length, 0)} feet${open.length === 0 ? '' : `, ${open.join(', ')}`}`;
}
