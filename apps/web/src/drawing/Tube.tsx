import type { Line } from '@eaveline/plan';
import { wireToken } from './linesOfModules.ts';

export interface TubeProps {
  readonly d: string;
  readonly lines: readonly Line[];
}

/** A conductor: casing in ink on both edges, core in the wire's own colour. Its letters stand at its ends. */
export function Tube({ d, lines }: TubeProps) {
  const [line] = lines;
  return (
    <>
      <path d={d} fill="none" stroke="var(--casing)" strokeWidth="6" />
      <path d={d} fill="none" stroke={line === undefined ? 'var(--film)' : wireToken(line)} strokeWidth="3.6" />
      {lines.slice(1).map((other, i) => (
        <path
          key={other}
          d={d}
          fill="none"
          stroke={wireToken(other)}
          strokeWidth="3.6"
          strokeDasharray="6 12"
          strokeDashoffset={i * 6}
        />
      ))}
    </>
  );
}
