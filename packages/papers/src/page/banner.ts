import { box, corners, hatched, line, text } from '../drawing/make.ts';
import { mark, staleMark } from '../drawing/marks.ts';
import type { Ink, Item, Point } from '../drawing/model.ts';
import { fit } from '../type/wrap.ts';
import type { Frame } from './frame.ts';

/** Why a page may not be taken at its word. It stands at the head of every page. */
export interface Banner {
  readonly kind: 'invented' | 'fails' | 'open' | 'stale';
  readonly words: string;
}

/** Height of one banner line. */
export const bannerMm = 7;
const CAP = 2.5;

const inks: Readonly<Record<Banner['kind'], Ink>> = { invented: 'ink', fails: 'fails', open: 'ask', stale: 'ink' };

/** Banner lines under the upper edge of the frame, each with its mark and ruled off. */
export function bannerItems({ leftMm, rightMm, topMm }: Frame, banners: readonly Banner[]): Item[] {
  return banners.flatMap((banner, k) => {
    const bottom = topMm - bannerMm * (k + 1);
    const middle = bottom + bannerMm / 2;
    const { lines, ...look } = fit(banner.words, rightMm - leftMm - 14, [CAP], { weight: 700 });
    return [
      ...markOf(banner.kind, [leftMm + 5.6, middle]),
      text(lines[0] ?? '', [leftMm + 10.5, middle - CAP / 2], { ...look, ink: inks[banner.kind] }),
      line([leftMm, bottom], [rightMm, bottom], { layer: 'FRAME', pen: 0.35 }),
    ];
  });
}

function markOf(kind: Banner['kind'], middle: Point): Item[] {
  switch (kind) {
    case 'fails':
      return [mark('fails', middle)];
    case 'open':
      return [mark('ask', middle)];
    case 'stale':
      return [staleMark(middle)];
    case 'invented': {
      const [x, y] = middle;
      const area = corners([x - 1.6, y - 1.6], 3.2, 3.2);
      return [
        hatched(area, { gapMm: 0.9 }, { pen: 0.25 }),
        box([x - 1.6, y - 1.6], 3.2, 3.2, { layer: 'TEXT', pen: 0.35 }),
      ];
    }
    default: {
      const never: never = kind;
      return never;
    }
  }
}
