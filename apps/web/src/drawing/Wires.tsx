import type { CSSProperties } from 'react';

/** Schemes a board may be wired in, as the survey records them, with the letters of their conductors. */
export const SCHEMES = {
  iec: ['L1', 'L2', 'L3', 'N', 'PE'],
  'au-nz': ['L1', 'L2', 'L3', 'N', 'PE'],
  'gb-older': ['L1', 'L2', 'L3', 'N', 'PE'],
  'us-120-240': ['L1', 'L2', 'N', 'PE'],
  'us-120-208': ['L1', 'L2', 'L3', 'N', 'PE'],
} as const;
export type Scheme = keyof typeof SCHEMES;

/** What a scheme's colours are called, conductor for conductor: said wherever they are shown. */
export const COLOURS: Readonly<Record<Scheme, readonly string[]>> = {
  iec: ['brown', 'black', 'grey', 'light blue', 'green and yellow'],
  'au-nz': ['red', 'white', 'blue', 'black', 'green and yellow'],
  'gb-older': ['red', 'yellow', 'blue', 'black', 'green and yellow'],
  'us-120-240': ['black', 'red', 'white', 'green'],
  'us-120-208': ['black', 'red', 'blue', 'white', 'green'],
};

export interface WiresProps {
  readonly scheme: Scheme;
  /** `A`, `B`, `C` in place of `L1`, `L2`, `L3`, where the board is lettered so. */
  readonly letters?: 'L' | 'A';
  /** Only as many lines as the supply has. */
  readonly lines?: 1 | 2 | 3;
  readonly width?: number;
}

const ROW = 18;
const END = 24;

/** The conductors of a board, a tube each: casing in ink, core in the wire's own colour, its letters at both ends. */
export function Wires({ scheme, letters = 'L', lines = 3, width = 220 }: WiresProps) {
  const all = SCHEMES[scheme].map((name, k) => ({ name, colour: COLOURS[scheme][k] ?? '' }));
  const shown = all.filter(({ name }) => !name.startsWith('L') || Number(name[1]) <= lines);
  const lettered = (name: string) =>
    letters === 'A' && name.startsWith('L') ? ('ABC'[Number(name[1]) - 1] ?? name) : name;
  const said = shown.map(({ name, colour }) => `${lettered(name)} ${colour}`).join(', ');
  return (
    <svg
      data-wiring={scheme}
      width={width}
      height={shown.length * ROW}
      viewBox={`0 0 ${width} ${shown.length * ROW}`}
      role="img"
      aria-label={`Conductors: ${said}`}
    >
      {shown.map(({ name }, k) => {
        const y = k * ROW + ROW / 2;
        const core: CSSProperties = { stroke: `var(--${name.toLowerCase()})` };
        const d = `M${END} ${y}H${width - END}`;
        return (
          <g key={name}>
            <path d={d} fill="none" stroke="var(--casing)" strokeWidth="6" />
            <path d={d} fill="none" style={core} strokeWidth="3.6" />
            {name === 'PE' && (
              <path d={d} fill="none" style={{ stroke: 'var(--pe-stripe)' }} strokeWidth="3.6" strokeDasharray="8 8" />
            )}
            <text className="bold" x="0" y={y + 4.5}>
              {lettered(name)}
            </text>
            <text className="bold" x={width} y={y + 4.5} textAnchor="end">
              {lettered(name)}
            </text>
          </g>
        );
      })}
    </svg>
  );
}
