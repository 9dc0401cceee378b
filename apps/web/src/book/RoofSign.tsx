import { type Job, planeOutline, planeToHouse } from '@eaveline/job';

export interface RoofSignProps {
  readonly facts: Job['facts'];
  readonly choices: Job['choices'];
}

const WIDE = 52;
const HIGH = 38;

/** A job's roof in small, from its own measures: outlines, and the rows of modules as solids. */
export function RoofSign({ facts: { roof }, choices }: RoofSignProps) {
  const planes = Object.entries(roof.planes).map(([id, plane]) => ({
    id,
    points: planeOutline(plane).map((at) => planeToHouse(plane, at)),
  }));
  const rows = Object.entries(choices.rows).flatMap(([id, row]) => {
    const plane = roof.planes[row.planeId];
    const sheet = choices.equipment[row.moduleSheet];
    const count = Object.values(choices.modules).filter(({ rowId }) => rowId === id).length;
    if (plane === undefined || sheet?.kind !== 'module' || count === 0) return [];
    const [across, up] =
      row.orientation === 'portrait' ? [sheet.widthMm, sheet.lengthMm] : [sheet.lengthMm, sheet.widthMm];
    const wide = (count * across + (count - 1) * row.gapMm) / 1000;
    const high = up / 1000;
    const corners = [
      [0, 0],
      [wide, 0],
      [wide, high],
      [0, high],
    ] as const;
    return [{ id, points: corners.map(([u, v]) => planeToHouse(plane, [row.uM + u, row.vM + v])) }];
  });
  const all = planes.flatMap(({ points }) => points);
  const east = all.map(([e]) => e);
  const north = all.map(([, n]) => n);
  const [minE, maxE, minN, maxN] = [Math.min(...east), Math.max(...east), Math.min(...north), Math.max(...north)];
  const scale = Math.min((WIDE - 4) / (maxE - minE || 1), (HIGH - 4) / (maxN - minN || 1));
  const left = (WIDE - scale * (maxE - minE)) / 2;
  const top = (HIGH - scale * (maxN - minN)) / 2;
  const path = (points: readonly (readonly [number, number, number])[]) =>
    `M${points.map(([e, n]) => `${(left + (e - minE) * scale).toFixed(1)} ${(top + (maxN - n) * scale).toFixed(1)}`).join('L')}Z`;
  return (
    <svg width={WIDE} height={HIGH} viewBox={`0 0 ${WIDE} ${HIGH}`} aria-hidden="true">
      {planes.map(({ id, points }) => (
        <path key={id} className="pen25" d={path(points)} />
      ))}
      {rows.map(({ id, points }) => (
        <path key={id} className="on-ink" d={path(points)} />
      ))}
    </svg>
  );
}
