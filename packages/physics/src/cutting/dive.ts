import type { Effort } from './bestPattern.ts';
import { bestFit, tightFill } from './fitBars.ts';
import type { Cutting, Pattern } from './onGrid.ts';
import { fits, type PatternSolution, roundedUp, solvePatterns } from './patternProgramme.ts';

/**
 * A plan of at most `target` bars, if one is found.
 *
 * Diving: the pattern programme's whole bars are cut, its most used pattern once where none is whole, and the
 * programme is solved anew for the pieces left, with all patterns known so far. A dive ends when best-fit or
 * tight filling of the rest reaches the target, or the bound of the rest exceeds it. Then limited discrepancy: first
 * no departure from the most used pattern, then one, then two.
 *
 * @param first Solution of the programme for all pieces.
 * @param pool  Known patterns; new ones are added.
 * @returns The bars, or nothing: not found within the effort, or no departure left to try. Not a proof of absence.
 *
 * Source: Harvey and Ginsberg 1995 (limited discrepancy), from memory.
 */
export function dive(
  cutting: Cutting,
  first: PatternSolution,
  pool: Pattern[],
  target: number,
  effort: Effort,
): Pattern[] | undefined {
  let untried = true;

  function descend(demand: readonly number[], cut: readonly Pattern[], departures: number): Pattern[] | undefined {
    const room = target - cut.length;
    for (const fill of [bestFit, tightFill]) {
      if (effort.left <= 0) return undefined;
      const rest = fill(cutting, demand, effort);
      if (rest.length <= room) return [...cut, ...rest];
    }
    const { bound, uses } = cut.length === 0 ? first : solvePatterns(cutting, demand, pool, room, effort);
    if (roundedUp(bound) > room) return undefined;

    const whole = cutWhole(demand, uses);
    if (whole.bars.length > 0) return descend(whole.left, [...cut, ...whole.bars], departures);
    for (const [k, { pattern }] of uses.entries()) {
      if (k > departures) {
        untried = true;
        return undefined;
      }
      const found = descend(without(demand, pattern), [...cut, pattern], departures - k);
      if (found) return found;
    }
    return undefined;
  }

  for (let departures = 0; untried && effort.left > 0; departures++) {
    untried = false;
    const found = descend(cutting.demand, [], departures);
    if (found) return found;
  }
  return undefined;
}

/** The bars a fractional solution uses whole, as far as the pieces go. */
function cutWhole(demand: readonly number[], uses: readonly { readonly pattern: Pattern; readonly amount: number }[]) {
  const bars: Pattern[] = [];
  let left = demand;
  for (const { pattern, amount } of uses) {
    for (let bar = 1; bar <= amount + 1e-6 && fits(pattern, left); bar++) {
      bars.push(pattern);
      left = without(left, pattern);
    }
  }
  return { bars, left };
}

function without(demand: readonly number[], { classes, counts }: Pattern): number[] {
  const left = [...demand];
  classes.forEach((k, at) => {
    left[k] -= counts[at];
  });
  return left;
}
