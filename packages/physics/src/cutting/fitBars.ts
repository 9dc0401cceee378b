import type { Effort } from './bestPattern.ts';
import type { Cutting, Pattern } from './onGrid.ts';

/** Pieces one bar's search for the tightest filling may look at: enough for a roof's, not for thirty in a bar. */
const LOOKS = 40_000;

/** First-fit decreasing: each piece, longest first, into the first bar with room. */
export function firstFit(cutting: Cutting, demand: readonly number[], effort: Effort): Pattern[] {
  return fit(cutting, demand, effort, (left, w) => left.findIndex((room) => room >= w));
}

/** Best-fit decreasing: each piece, longest first, into the bar with the least room that is enough. */
export function bestFit(cutting: Cutting, demand: readonly number[], effort: Effort): Pattern[] {
  return fit(cutting, demand, effort, (left, w) => {
    let best = -1;
    for (let bar = 0; bar < left.length; bar++) {
      if (left[bar] >= w && (best < 0 || left[bar] < left[best])) best = bar;
    }
    return best;
  });
}

function fit(
  { capacity, weights }: Cutting,
  demand: readonly number[],
  effort: Effort,
  choose: (left: readonly number[], weight: number) => number,
): Pattern[] {
  const bars: { classes: number[]; counts: number[] }[] = [];
  const left: number[] = [];
  demand.forEach((pieces, k) => {
    for (let piece = 0; piece < pieces; piece++) {
      let bar = choose(left, weights[k]);
      effort.left -= left.length;
      if (bar < 0) {
        bar = bars.push({ classes: [], counts: [] }) - 1;
        left.push(capacity);
      }
      const { classes, counts } = bars[bar];
      if (classes.at(-1) === k) counts[counts.length - 1]++;
      else {
        classes.push(k);
        counts.push(1);
      }
      left[bar] -= weights[k];
    }
  });
  return bars;
}

/**
 * One bar after the other: the longest piece left, and the set beside it that leaves the least.
 *
 * Source: Gupta and Ho 1999 (minimum bin slack), from memory.
 */
export function tightFill(cutting: Cutting, demand: readonly number[], effort: Effort): Pattern[] {
  const left = [...demand];
  const bars: Pattern[] = [];
  for (let longest = 0; longest < left.length; longest++) {
    while (left[longest] > 0) {
      const bar = tightest(cutting, left, longest, effort);
      bar.classes.forEach((k, at) => {
        left[k] -= bar.counts[at];
      });
      bars.push(bar);
    }
  }
  return bars;
}

/** The bar round one piece of class `longest` that leaves the least, within a number of steps. */
function tightest({ capacity, weights }: Cutting, left: readonly number[], longest: number, effort: Effort): Pattern {
  const counts = new Array<number>(left.length).fill(0);
  counts[longest] = 1;
  let best = [...counts];
  let bestRoom = capacity - weights[longest];
  let looks = 0;

  function search(from: number, room: number): boolean {
    if (room < bestRoom) {
      bestRoom = room;
      best = [...counts];
    }
    if (bestRoom === 0) return true;
    for (let k = from; k < weights.length; k++) {
      if (++looks > LOOKS) return true;
      if (weights[k] > room || counts[k] >= left[k]) continue;
      counts[k]++;
      if (search(k, room - weights[k])) return true;
      counts[k]--;
    }
    return false;
  }
  search(longest, bestRoom);
  effort.left -= looks;
  const classes = [...best.keys()].filter((k) => best[k] > 0);
  return { classes, counts: classes.map((k) => best[k]) };
}
