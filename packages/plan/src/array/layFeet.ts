/** Overhang of a rail beyond its end foot, at most this share of the span beside it: common practice, no source. */
export const OVERHANG_SHARE = 1 / 3;

/** Lengths that differ by less than this are the same, m. */
const SAME_M = 1e-9;

/** A foot's place and the rafter under it, counted from 1. */
export interface FootPlace {
  readonly u: number;
  readonly rafter?: number;
}

/** Feet of one rail and whether they keep spacing and overhang. */
export interface LaidFeet {
  readonly feet: readonly FootPlace[];
  readonly onRafters: boolean;
  /**
   * False where the rafters leave no places that keep both: then the overhang is as short as rafters allow and the
   * spacing kept, and where not even that can be, every rafter has a foot.
   */
  readonly keepsLimits: boolean;
}

/**
 * The fewest feet on rafters that keep the spacing and the overhang; among those, the one with the shortest
 * overhangs, then the leftmost.
 *
 * From each rafter on to every later one inside the spacing, keeping for each the best way there: exact, for a way's
 * cost is the sum of its feet. First and last span alone know the overhangs.
 *
 * @param fromU, toU  Ends of the rail, m along the eave.
 * @param raftersU    Middles of the rafters in order; nominal places where left out.
 */
export function layFeet(fromU: number, toU: number, spacingM: number, raftersU?: readonly number[]): LaidFeet {
  if (raftersU === undefined) return { feet: nominalFeet(fromU, toU, spacingM), onRafters: false, keepsLimits: true };
  const under = raftersU
    .map((u, k) => ({ u, rafter: k + 1 }))
    .filter(({ u }) => u >= fromU - SAME_M && u <= toU + SAME_M);
  const best = fewestFeet(under, fromU, toU, spacingM);
  if (best) return { feet: best, onRafters: true, keepsLimits: true };
  // no rafter near enough to an end: take the outermost two as if the rail ended there, and say so
  const spaced = fewestFeet(under, under[0]?.u ?? fromU, under.at(-1)?.u ?? toU, spacingM);
  return { feet: spaced ?? under, onRafters: true, keepsLimits: false };
}

interface Way {
  readonly feet: readonly FootPlace[];
  readonly overhangM: number;
}

function fewestFeet(
  under: readonly FootPlace[],
  fromU: number,
  toU: number,
  spacingM: number,
): readonly FootPlace[] | undefined {
  const best: (Way | undefined)[] = under.map(() => undefined);
  let whole: Way | undefined;
  under.forEach((foot, j) => {
    for (let i = j - 1; i >= 0; i--) {
      const back = under[i] as FootPlace;
      const spanM = foot.u - back.u;
      if (spanM > spacingM + SAME_M) break;
      const way = longer(best[i], back, foot, spanM, fromU);
      if (way && better(way, best[j])) best[j] = way;
      const overM = toU - foot.u;
      if (way && overM <= OVERHANG_SHARE * spanM + SAME_M) {
        const done = { feet: way.feet, overhangM: way.overhangM + overM };
        if (better(done, whole)) whole = done;
      }
    }
  });
  return whole?.feet;
}

/** The way to `back` gone on to `foot`, or begun there where `back` may be the first. */
function longer(way: Way | undefined, back: FootPlace, foot: FootPlace, spanM: number, fromU: number): Way | undefined {
  const overM = back.u - fromU;
  const begun = overM <= OVERHANG_SHARE * spanM + SAME_M ? { feet: [back, foot], overhangM: overM } : undefined;
  const gone = way && { feet: [...way.feet, foot], overhangM: way.overhangM };
  return begun && better(begun, gone) ? begun : gone;
}

function better(a: Way, b: Way | undefined): boolean {
  if (b === undefined) return true;
  if (a.feet.length !== b.feet.length) return a.feet.length < b.feet.length;
  return a.overhangM < b.overhangM - SAME_M;
}

/**
 * Even feet where no rafter is known: the least number n with (n − 1 + ⅔) spans of the spacing over the rail, then
 * overhangs of a quarter span, or spans at the full spacing where a quarter would pass it.
 */
function nominalFeet(fromU: number, toU: number, spacingM: number): FootPlace[] {
  const lengthM = toU - fromU;
  const spans = Math.max(1, Math.ceil(lengthM / spacingM - 2 * OVERHANG_SHARE - SAME_M));
  const spanM = Math.min(spacingM, lengthM / (spans + 0.5));
  const overM = (lengthM - spans * spanM) / 2;
  return Array.from({ length: spans + 1 }, (_, k) => ({ u: fromU + overM + k * spanM }));
}
