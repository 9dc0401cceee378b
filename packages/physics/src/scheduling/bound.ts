import { tails } from './place.ts';
import type { Crew, Work } from './task.ts';

/** Time before which nothing of a task can start: the longest chain of waits to it. */
function heads(work: Work): Float64Array {
  const head = new Float64Array(work.ids.length);
  work.before.forEach((list, i) => {
    for (const b of list) head[i] = Math.max(head[i], head[b] + work.likely[b]);
  });
  return head;
}

/**
 * Hours no schedule of this crew can beat.
 *
 * The longest chain; and for every head r and tail q, r + work of the tasks that start no sooner than r and have at
 * least q behind them, over the hands, + q. Hands are electricians, people, and, since two tasks that each need more
 * than half the crew never run together, such tasks one after the other.
 */
export function leastHours(work: Work, crew: Crew): number {
  const n = work.ids.length;
  const head = heads(work);
  const tail = tails(work, work.likely);
  const behind = tail.map((t, i) => t - work.likely[i]);
  let bound = tail.reduce((a, b) => Math.max(a, b), 0);
  const hands: [(i: number) => number, number][] = [
    [(i) => work.electricians[i], crew.electricians],
    [(i) => work.people[i], crew.people],
    [(i) => (2 * work.people[i] > crew.people ? 1 : 0), 1],
    [(i) => (2 * work.electricians[i] > crew.electricians ? 1 : 0), 1],
  ];
  for (const [need, capacity] of hands) {
    if (capacity === 0) continue;
    const load = Float64Array.from(work.ids, (_, i) => (need(i) * work.likely[i]) / capacity);
    for (const r of new Set(head)) {
      for (const q of new Set(behind)) {
        let sum = 0;
        for (let i = 0; i < n; i++) if (head[i] >= r && behind[i] >= q) sum += load[i];
        if (sum > 0) bound = Math.max(bound, r + sum + q);
      }
    }
  }
  return bound;
}
