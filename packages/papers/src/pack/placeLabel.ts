import { type Item, type Lettering, leader, type Point, text } from '../drawing/index.ts';
import { metrics } from '../type/index.ts';

/** An upright rectangle of paper, mm. */
export interface Patch {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}

/** Paper that is taken, and the edge of what may be drawn on. */
export interface Ground {
  readonly edge: Patch;
  readonly taken: Patch[];
}

const LETTERING: Lettering = { capMm: 2.5, weight: 400, face: 'close' };
const DIRECTIONS = [20, 160, -20, -160, 45, 135, -45, -135, 70, 110, -70, -110];
const REACHES = [3, 5, 8, 11, 15, 20, 26, 33, 41, 50];

export function patchOf(points: readonly Point[], by = 0): Patch {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return {
    left: Math.min(...xs) - by,
    bottom: Math.min(...ys) - by,
    right: Math.max(...xs) + by,
    top: Math.max(...ys) + by,
  };
}

/** The paper a line of lettering takes, by its anchor on the baseline. */
export function patchOfText(
  words: string,
  [x, y]: Point,
  lettering: Lettering,
  anchor: 'start' | 'middle' | 'end',
): Patch {
  const wide = metrics.widthMm(words, lettering);
  const left = anchor === 'start' ? x : anchor === 'end' ? x - wide : x - wide / 2;
  const bottom = y - 0.35 * lettering.capMm;
  return { left: left - 0.3, bottom, right: left + wide + 0.3, top: y + 1.1 * lettering.capMm };
}

export function isFree(patch: Patch, { edge, taken }: Ground): boolean {
  const inside =
    patch.left >= edge.left && patch.right <= edge.right && patch.bottom >= edge.bottom && patch.top <= edge.top;
  const meets = (other: Patch): boolean =>
    patch.left < other.right && patch.right > other.left && patch.bottom < other.top && patch.top > other.bottom;
  return inside && !taken.some(meets);
}

/**
 * A name beside a thing, on a leader, at the nearest place where it lies on no other lettering; the place is then
 * taken. Nothing is drawn where none is free: the thing is named in the table below the drawing.
 */
export function placeLabel(words: string, at: Point, ground: Ground, from = 0): Item[] {
  for (const reach of REACHES) {
    for (const deg of DIRECTIONS) {
      const turn = (deg * Math.PI) / 180;
      const knee: Point = [at[0] + (from + reach) * Math.cos(turn), at[1] + (from + reach) * Math.sin(turn)];
      const way = knee[0] < at[0] ? -1 : 1;
      const foot: Point = [knee[0] + way, knee[1] + 0.9];
      const patch = patchOfText(words, foot, LETTERING, way > 0 ? 'start' : 'end');
      if (!isFree(patch, ground)) continue;
      ground.taken.push(patch);
      return leader(at, knee, words, LETTERING);
    }
  }
  return [];
}

/** A word set in the middle of free paper near a point, without a leader; `undefined` where there is none. */
export function placeWord(
  words: string,
  near: Point,
  ground: Ground,
  lettering: Lettering,
  reachMm = 40,
): Item | undefined {
  for (let reach = 0; reach <= reachMm; reach += 2) {
    const steps = reach === 0 ? 1 : 16;
    for (let k = 0; k < steps; k++) {
      const turn = (2 * Math.PI * k) / steps;
      const at: Point = [near[0] + reach * Math.cos(turn), near[1] + reach * Math.sin(turn)];
      const patch = patchOfText(words, at, lettering, 'middle');
      if (!isFree(patch, ground)) continue;
      ground.taken.push(patch);
      return text(words, at, { ...lettering, anchor: 'middle', halo: true });
    }
  }
  return undefined;
}
