import { line, solid, text } from './make.ts';
import type { Item, Point } from './model.ts';

/**
 * An arrow to true north with its letter at the foot.
 *
 * @param at       middle of the shaft, mm.
 * @param northDeg direction of north on this sheet, counter-clockwise from east: 90 is up.
 */
export function northArrow(at: Point, northDeg = 90, lengthMm = 14): Item[] {
  const turn = (northDeg * Math.PI) / 180;
  const on = (along: number, aside: number): Point => [
    at[0] + along * Math.cos(turn) - aside * Math.sin(turn),
    at[1] + along * Math.sin(turn) + aside * Math.cos(turn),
  ];
  const half = lengthMm / 2;
  const capMm = 2.5;
  const foot = on(-half - 1.2 - capMm / 2, 0);
  return [
    line(on(-half, 0), on(half - 2, 0), { layer: 'SIZE', pen: 0.35 }),
    solid([on(half, 0), on(half - 4, 1.1), on(half - 4, -1.1)], { layer: 'SIZE' }),
    text('N', [foot[0], foot[1] - capMm / 2], { layer: 'SIZE', capMm, weight: 700, anchor: 'middle' }),
  ];
}
