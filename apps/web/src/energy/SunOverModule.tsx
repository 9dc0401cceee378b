import { SKY_AZIMUTHS, type SkyOver } from '@eaveline/plan';
import { useId } from 'react';
import { Hatch } from '../drawing/Hatch.tsx';
import { Thing } from '../drawing/Thing.tsx';
import { useWidth } from '../drawing/useWidth.ts';
import { hourLine, LONGEST_DAY_DEG, SUN_DAYS, type SunLine, sunAt, sunWay } from './sunLines.ts';

export interface SunOverModuleProps {
  readonly id: string;
  readonly label: string;
  readonly latitudeDeg: number;
  readonly sky: SkyOver;
  readonly selected: boolean;
  readonly onSelect: (id: string) => void;
}

const LEFT = 34;
const TOP = 16;
const HIGH = 230;
/** By the sun: it stands highest at 12. */
const HOURS = Array.from({ length: 13 }, (_, k) => 6 + k);
const COMPASS = [
  [0, 'N'],
  [45, 'NE'],
  [90, 'E'],
  [135, 'SE'],
  [180, 'S'],
  [225, 'SW'],
  [270, 'W'],
  [315, 'NW'],
] as const;

/**
 * The sky over one module from its middle, the equator's side in the middle: ways of the sun, and what stands before
 * them; hatched where light comes through.
 */
export function SunOverModule({ id, label, latitudeDeg, sky, selected, onSelect }: SunOverModuleProps) {
  const { ref, width } = useWidth<HTMLDivElement>();
  const hatch = useId();
  const foot = TOP + HIGH;
  const middle = latitudeDeg < 0 ? 0 : 180;
  /** Degrees from the middle of the drawing, −180 to 180. */
  const turned = (azimuth: number) => ((azimuth - middle + 540) % 360) - 180;
  const x = (azimuth: number) => LEFT + ((turned(azimuth) + 180) / 360) * (width - LEFT - 8);
  const y = (height: number) => foot - (Math.max(0, height) / 90) * HIGH;
  const way = (line: SunLine) =>
    line
      .map(([azimuth, height], k) => {
        const before = line[k - 1];
        // near the zenith, or through the seam behind, the line begins anew
        const leaps = before === undefined || Math.abs(turned(azimuth) - turned(before[0])) > 60;
        return `${leaps ? 'M' : 'L'}${x(azimuth).toFixed(1)} ${y(height).toFixed(1)}`;
      })
      .join('');
  const rim = (heights: readonly number[]) => `${way(inOrder(heights, turned))}`;
  return (
    <div ref={ref}>
      <svg width={width} height={foot + 26} viewBox={`0 0 ${width} ${foot + 26}`} aria-label="The sky over a module">
        <defs>
          <Hatch id={hatch} ink="quiet" gap={5} />
        </defs>
        <Thing id={id} label={label} selected={selected} onSelect={onSelect}>
          <rect className="on-film" x={LEFT} y={TOP} width={width - LEFT - 8} height={HIGH} />
          {SUN_DAYS.map(({ declinationDeg, name }) => (
            <path
              key={declinationDeg}
              className={name === undefined ? 'pen18' : 'pen50'}
              d={way(sunWay(latitudeDeg, declinationDeg))}
            />
          ))}
          {HOURS.map((hour) => (
            <path key={hour} className="pen18 hidden-line" d={way(hourLine(latitudeDeg, hour))} />
          ))}
          {sky.bodies.map(({ name, transmission, heights }) =>
            stretches(heights, turned).map((stretch) => (
              <g key={`${name} ${stretch[0]?.[0]}`}>
                <path className={`pen35 ${transmission === 0 ? 'on-deep' : 'on-film'}`} d={outline(stretch, x, y)} />
                {transmission > 0 && <path fill={`url(#${hatch})`} d={outline(stretch, x, y)} />}
              </g>
            )),
          )}
          <path className="pen35 hidden-line" d={rim(sky.behindDeg)} />
          {sky.horizonDeg && <path className="pen70" d={rim(sky.horizonDeg)} />}
          <rect className="ring" x={LEFT + 2} y={TOP + 2} width={width - LEFT - 12} height={HIGH - 4} />
        </Thing>
        {SUN_DAYS.map(({ declinationDeg, name }) => {
          const [azimuth, height] = sunWay(latitudeDeg, declinationDeg).reduce(
            (top, each) => (each[1] > top[1] ? each : top),
            [middle, -1] as readonly [number, number],
          );
          return name === undefined || height < 0 ? null : (
            <text key={name} className="close halo" x={x(azimuth)} y={y(height) - 5} textAnchor="middle">
              {name}
            </text>
          );
        })}
        {HOURS.map((hour) => {
          const [azimuth, height] = sunAt(latitudeDeg, Math.sign(latitudeDeg) * LONGEST_DAY_DEG, 15 * (hour - 12));
          return hour === 12 || height < 8 ? null : (
            <text
              key={hour}
              className="close halo quiet"
              x={x(azimuth) + (hour < 12 === latitudeDeg < 0 ? 7 : -7)}
              y={y(height) - 3}
              textAnchor={hour < 12 === latitudeDeg < 0 ? 'start' : 'end'}
            >
              {hour}
            </text>
          );
        })}
        {sky.bodies.map(({ name, heights }) => {
          const top = highest(heights);
          return top === undefined || top[1] < 4 ? null : (
            <text key={name} className="close halo" x={x(top[0])} y={y(top[1]) - 5} textAnchor="middle">
              {name}
            </text>
          );
        })}
        {[0, 30, 60, 90].map((height) => (
          <g key={height}>
            <path className="pen25" d={`M${LEFT - 5} ${y(height)}H${LEFT}`} />
            <text x={LEFT - 8} y={y(height) + 4.5} textAnchor="end">
              {height}°
            </text>
          </g>
        ))}
        <path className="pen50" d={`M${LEFT} ${TOP}V${foot}H${width - 8}`} />
        {COMPASS.filter(([azimuth]) => Math.abs(turned(azimuth)) < 180).map(([azimuth, name]) => (
          <g key={name}>
            <path className="pen25" d={`M${x(azimuth)} ${foot}v5`} />
            <text x={x(azimuth)} y={foot + 19} textAnchor="middle">
              {name}
            </text>
          </g>
        ))}
      </svg>
      <p className="quiet small">
        Hours by the sun. Thick: the horizon of the survey. Below the broken line the module is seen from behind.
        Hatched: light comes through.
      </p>
    </div>
  );
}

/** Heights with their azimuths, from the left of the drawing to its right. */
function inOrder(heights: readonly number[], turned: (azimuth: number) => number): SunLine {
  return SKY_AZIMUTHS.slice(0, -1)
    .map((azimuth, k) => [azimuth, heights[k] ?? 0] as const)
    .sort(([a], [b]) => turned(a) - turned(b));
}

type Stretch = readonly (readonly [azimuth: number, low: number, high: number])[];

/** Unbroken stretches of a body from left to right: one that stands across the seam behind is drawn in two. */
function stretches(
  heights: readonly (readonly [number, number] | undefined)[],
  turned: (azimuth: number) => number,
): Stretch[] {
  const columns = SKY_AZIMUTHS.slice(0, -1)
    .map((azimuth, k) => [azimuth, heights[k]] as const)
    .sort(([a], [b]) => turned(a) - turned(b));
  const out: (readonly [number, number, number])[][] = [];
  let open = false;
  for (const [azimuth, between] of columns) {
    if (between === undefined || between[1] <= 0) {
      open = false;
      continue;
    }
    if (!open) out.push([]);
    out.at(-1)?.push([azimuth, between[0], between[1]]);
    open = true;
  }
  return out;
}

/** Round one stretch: along its top, back along its foot. A body one column wide is a degree wide. */
function outline(stretch: Stretch, x: (azimuth: number) => number, y: (height: number) => number): string {
  const wide = stretch.length === 1 ? 1 : 0;
  const points = [
    ...stretch.map(([azimuth, , high]) => [x(azimuth) - wide, y(high)]),
    ...(wide ? stretch.map(([azimuth, , high]) => [x(azimuth) + wide, y(high)]) : []),
    ...(wide ? stretch.map(([azimuth, low]) => [x(azimuth) + wide, y(low)]) : []),
    ...[...stretch].reverse().map(([azimuth, low]) => [x(azimuth) - wide, y(low)]),
  ];
  return `M${points.map(([px = 0, py = 0]) => `${px.toFixed(1)} ${py.toFixed(1)}`).join('L')}Z`;
}

function highest(heights: readonly (readonly [number, number] | undefined)[]): readonly [number, number] | undefined {
  let top: readonly [number, number] | undefined;
  for (const [k, between] of heights.entries())
    if (between !== undefined && between[1] > (top?.[1] ?? 0)) top = [SKY_AZIMUTHS[k] as number, between[1]];
  return top;
}
