import { cutStock, type LineToSplit, splitLines } from '@eaveline/physics';
import type { ArrayPlan, Rail } from '../array/types.ts';
import type { SheetOf } from '../equipment.ts';
import type { KitPlan, RailCut } from './types.ts';

/** Width of a saw cut, shortest piece worth having, and how far apart splices of neighbouring rails sit. Common practice, no source. */
const KERF_MM = 3;
const LEAST_PIECE_MM = 300;
const STAGGER_MM = 600;
/** A splice keeps off the middle of a span: it may sit within this share of the span from a foot. */
const NEAR_FOOT = 0.25;

export interface RailCuts {
  readonly cuts: readonly RailCut[];
  readonly cutting: KitPlan['cutting'];
  readonly splices: KitPlan['splices'];
  /** Gaps for expansion on runs longer than the sheet allows. */
  readonly expansionGaps: number;
}

interface Piece {
  readonly rail: Rail;
  readonly lengthMm: number;
}

/**
 * Rails to pieces and pieces to bars.
 *
 * A rail longer than the stock is spliced near a foot, never at the same place as its neighbour; then all pieces are
 * cut from as few bars as first fit, best fit or tightest filling find, with the bound beside it.
 */
export function railCuts(array: ArrayPlan, rail: SheetOf<'rail'>): RailCuts {
  const lines = array.rails.map((line): LineToSplit => ({ lengthMm: line.lengthMm, zonesMm: spliceZones(line) }));
  const split =
    lines.length === 0
      ? []
      : splitLines(lines, { stockMm: rail.stockMm, minimumPieceMm: LEAST_PIECE_MM, staggerMm: STAGGER_MM });
  const pieces = array.rails.flatMap((line, k): Piece[] =>
    (split[k]?.piecesMm ?? []).map((lengthMm) => ({ rail: line, lengthMm: Math.ceil(lengthMm - 1e-6) })),
  );
  const splices = array.rails.flatMap((line, k) =>
    (split[k]?.splicesAtMm ?? []).map((atMm) => ({ railId: line.id, atMm: Math.round(atMm) })),
  );
  const expansionGaps = array.rails.reduce(
    (sum, line) => sum + Math.max(0, Math.ceil(line.lengthMm / rail.longestRunMm) - 1),
    0,
  );
  if (pieces.length === 0) {
    const none = { bars: 0, lowerBound: 0, proven: true, wasteShare: 0, kerfMm: KERF_MM, method: 'no rails' };
    return { cuts: [], cutting: none, splices, expansionGaps };
  }
  const found = cutStock({ binCapacity: rail.stockMm, sizes: pieces.map(({ lengthMm }) => lengthMm), kerf: KERF_MM });
  return {
    cuts: found.items.map((items, k) => barOf(k + 1, items, pieces, rail.stockMm)),
    cutting: {
      bars: found.count,
      lowerBound: found.lowerBound,
      proven: found.proven,
      wasteShare: found.waste / (found.count * rail.stockMm),
      kerfMm: KERF_MM,
      method: 'the best of first fit, best fit and tightest filling; bound of Martello and Toth 1990',
    },
    splices,
    expansionGaps,
  };
}

function barOf(bar: number, items: readonly number[], pieces: readonly Piece[], stockMm: number): RailCut {
  const mine = items.flatMap((item) => pieces[item] ?? []);
  const used = mine.reduce((sum, { lengthMm }) => sum + lengthMm, 0) + Math.max(0, mine.length - 1) * KERF_MM;
  return {
    bar,
    stockMm,
    pieces: mine.map(({ rail, lengthMm }) => ({ railId: rail.id, railName: rail.name, lengthMm })),
    offcutMm: Math.max(0, Math.round(stockMm - used)),
  };
}

/** Where a splice may sit: within a quarter span of a foot, on either side. */
function spliceZones({ feet, fromU, lengthMm }: Rail): readonly (readonly [number, number])[] {
  const at = feet.map(({ u }) => 1000 * (u - fromU));
  const zones = at.map((mm, k): readonly [number, number] => {
    const before = mm - (at[k - 1] ?? mm);
    const after = (at[k + 1] ?? mm) - mm;
    return [Math.max(0, mm - NEAR_FOOT * before), Math.min(lengthMm, mm + NEAR_FOOT * after)];
  });
  return zones.length === 0 ? [[0, lengthMm]] : zones;
}
