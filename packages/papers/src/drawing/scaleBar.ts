import { positive } from '@eaveline/physics';
import { box, corners, line, solid, text } from './make.ts';
import type { Item, Point } from './model.ts';

/** Scales we draw at, 1 to this. Never in between. */
export const scales = [10, 20, 40, 50, 75, 100, 125, 200] as const;
export type Scale = (typeof scales)[number];

/** The least reduction at which a thing of this size fits the room, or `undefined` when none does. */
export function scaleFor(
  thing: { widthMm: number; heightMm: number },
  room: { widthMm: number; heightMm: number },
): Scale | undefined {
  return scales.find((n) => thing.widthMm / n <= room.widthMm && thing.heightMm / n <= room.heightMm);
}

/** The bar that shows whether a print is true: 100 mm, a stroke every 10. By its left end. */
export function checkBar([x, y]: Point): Item[] {
  const look = { layer: 'SIZE', pen: 0.25 } as const;
  const strokes = Array.from({ length: 11 }, (_, k) => {
    const high = k % 10 === 0 ? 2 : k === 5 ? 1.6 : 1;
    return line([x + 10 * k, y], [x + 10 * k, y + high], look);
  });
  return [
    line([x, y], [x + 100, y], { ...look, pen: 0.5 }),
    ...strokes,
    text('100 mm if printed true', [x + 102, y], { layer: 'SIZE', capMm: 2.1, ink: 'quiet' }),
  ];
}

/**
 * A bar of true lengths: alternating fields, each one metre (or `stepM`), figures above.
 *
 * @throws {Refusal} `not-positive` for a scale, a step or a count that is not above zero.
 */
export function scaleBar([x, y]: Point, scale: number, count = 5, stepM = 1): Item[] {
  const mend = 'Give the scale as the number after 1:, and lengths in metres.';
  const step = (1000 * positive(stepM, 'stepM', mend)) / positive(scale, 'scale', mend);
  positive(count, 'count', mend);
  const look = { layer: 'SIZE', pen: 0.25 } as const;
  const items: Item[] = [];
  for (let k = 0; k < count; k++) {
    const field = corners([x + k * step, y], step, 1.2);
    items.push(k % 2 === 0 ? solid(field, { layer: 'SIZE' }) : box([x + k * step, y], step, 1.2, look));
  }
  for (let k = 0; k <= count; k++) {
    const figure = String(Math.round(k * stepM * 100) / 100);
    items.push(
      text(k === count ? `${figure} m` : figure, [x + k * step, y + 2.2], {
        layer: 'SIZE',
        capMm: 2.1,
        anchor: 'middle',
      }),
    );
  }
  return items;
}
