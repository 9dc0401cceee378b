import { type Box, freeSpot } from '../drawing/freeSpot.ts';
import type { Px } from '../drawing/point.ts';

/** Where a plane's name stands, and how it is lettered. */
export interface NameSpot {
  readonly at: Px;
  /** Lettered up the drawing, read from the right. */
  readonly upright: boolean;
  /** What it covers. */
  readonly box: Box;
  /** In the close face, where the plain one is too wide. */
  readonly close: boolean;
}

const PLAIN = { letter: 8.4, line: 20 } as const;
const CLOSE = { letter: 5.8, line: 14 } as const;

/** The first way a name fits a plane without lying on its modules: plain before close, flat before upright. */
export function nameSpot(name: string, outline: readonly Px[], taken: readonly Box[]): NameSpot | undefined {
  for (const face of [PLAIN, CLOSE]) {
    const long = name.length * face.letter;
    for (const upright of [false, true]) {
      const size = upright ? { width: face.line, height: long } : { width: long, height: face.line };
      const at = freeSpot(outline, taken, size);
      if (at === undefined) continue;
      const box = { x: at[0] - size.width / 2, y: at[1] - size.height / 2, ...size };
      return { at, upright, box, close: face === CLOSE };
    }
  }
  return undefined;
}
