import { metrics } from '../type/metrics.ts';
import { disc, letteringOf, polyline, text } from './make.ts';
import type { Item, Lettering, Point } from './model.ts';

/**
 * A leader: a dot on the thing, a line to `knee`, the words on a shelf from there.
 *
 * The shelf runs to the right, or to the left where the knee lies left of the dot.
 */
export function leader(
  dot: Point,
  knee: Point,
  words: string,
  look: Partial<Lettering> & { quiet?: string } = {},
): Item[] {
  const lettering = letteringOf(look);
  const lines = look.quiet === undefined ? [words] : [words, look.quiet];
  const wide = Math.max(...lines.map((line) => metrics.widthMm(line, lettering)));
  const way = knee[0] < dot[0] ? -1 : 1;
  const shelf: Point = [knee[0] + way * (wide + 1), knee[1]];
  const anchor = way > 0 ? 'start' : 'end';
  const x = knee[0] + way * 1;
  return [
    disc(dot, 0.55, { layer: 'SIZE' }),
    polyline([dot, knee, shelf], { layer: 'SIZE' }),
    text(words, [x, knee[1] + 0.9], { layer: 'SIZE', ...lettering, anchor, halo: true }),
    ...(look.quiet === undefined
      ? []
      : [
          text(look.quiet, [x, knee[1] - 0.9 - lettering.capMm], {
            layer: 'SIZE',
            ...lettering,
            anchor,
            ink: 'quiet',
            halo: true,
          }),
        ]),
  ];
}
