import { cutStock } from '@eaveline/physics';
import type { RailPiece } from './splitRails.ts';
import type { KitPlan, RailCut } from './types.ts';

/** Width of a saw cut, mm: common practice, no source. */
export const KERF_MM = 3;

const METHOD =
  'best of first-fit decreasing, best-fit decreasing, tight filling and, where these miss the bound, cutting patterns; bound by material, Martello and Toth, and the pattern programme';

/** Which piece comes from which bar, and how few bars there could be. */
export function cutRails(
  pieces: readonly RailPiece[],
  stockMm: number,
): { readonly cuts: readonly RailCut[]; readonly cutting: KitPlan['cutting'] } {
  if (pieces.length === 0) {
    return {
      cuts: [],
      cutting: { bars: 0, lowerBound: 0, proven: true, wasteShare: 0, kerfMm: KERF_MM, method: METHOD },
    };
  }
  const plan = cutStock({ binCapacity: stockMm, sizes: pieces.map(({ lengthMm }) => lengthMm), kerf: KERF_MM });
  const cuts = plan.items.map((items, k): RailCut => {
    const own = items.map((i) => pieces[i] as RailPiece);
    const usedMm = own.reduce((sum, { lengthMm }) => sum + lengthMm + KERF_MM, 0);
    // a last piece that ends flush needs no cut
    return { bar: k + 1, stockMm, pieces: own, offcutMm: Math.max(0, stockMm - usedMm) };
  });
  const lengthMm = pieces.reduce((sum, piece) => sum + piece.lengthMm, 0);
  return {
    cuts,
    cutting: {
      bars: plan.count,
      lowerBound: plan.lowerBound,
      proven: plan.proven,
      wasteShare: 1 - lengthMm / (plan.count * stockMm),
      kerfMm: KERF_MM,
      method: METHOD,
    },
  };
}
