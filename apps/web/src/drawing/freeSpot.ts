import { inside, type Px } from './point.ts';

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const cornersOf = ({ x, y, width, height }: Box): Px[] => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
];

/** How far apart two boxes are; below nought where they overlap. */
function roomBetween(a: Box, b: Box): number {
  const dx = Math.max(a.x - (b.x + b.width), b.x - (a.x + a.width));
  const dy = Math.max(a.y - (b.y + b.height), b.y - (a.y + a.height));
  return Math.max(dx, dy);
}

/**
 * Where lettering of some size fits best inside an outline without lying on the things in it: the place of most room
 * about it on a grid of places. Undefined where it fits nowhere.
 */
export function freeSpot(
  outline: readonly Px[],
  things: readonly Box[],
  size: { readonly width: number; readonly height: number },
): Px | undefined {
  const xs = outline.map(([x]) => x);
  const ys = outline.map(([, y]) => y);
  const [minX, maxX, minY, maxY] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  let best: { readonly at: Px; readonly room: number } | undefined;
  const STEPS = 24;
  for (let i = 1; i < STEPS; i++) {
    for (let j = 1; j < STEPS; j++) {
      const at: Px = [minX + ((maxX - minX) * i) / STEPS, minY + ((maxY - minY) * j) / STEPS];
      const box = { x: at[0] - size.width / 2, y: at[1] - size.height / 2, ...size };
      if (!cornersOf(box).every((corner) => inside(corner, outline))) continue;
      const centre = Math.hypot(at[0] - (minX + maxX) / 2, at[1] - (minY + maxY) / 2);
      const room = Math.min(...things.map((thing) => roomBetween(box, thing)), 40) - centre / 50;
      if (things.some((thing) => roomBetween(box, thing) < 2)) continue;
      if (best === undefined || room > best.room) best = { at, room };
    }
  }
  return best?.at;
}
