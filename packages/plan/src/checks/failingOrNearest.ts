import { type Judged, stateOf } from './rule.ts';

/**
 * Of many like things, those that fail or are open, and of those that meet only the one nearest to its limit: a
 * roof has fifty feet, and forty-nine of them say nothing new.
 */
export function failingOrNearest(all: readonly Judged[]): readonly Judged[] {
  const open = all.filter((judged) => stateOf(judged) !== 'meets');
  if (open.length > 0) return open;
  const nearest = [...all].sort((a, b) => nearness(b) - nearness(a))[0];
  return nearest === undefined ? [] : [nearest];
}

/** How much of its limit a figure takes: 1 is at the limit, less is inside; 0 where there is no figure. */
export function nearness(judged: Judged): number {
  if (!('value' in judged)) return 0;
  const { value, limit, sense } = judged;
  if (sense === 'at least') return value <= 0 ? (limit <= 0 ? 1 : Number.POSITIVE_INFINITY) : limit / value;
  return limit <= 0 ? (value <= 0 ? 1 : Number.POSITIVE_INFINITY) : value / limit;
}
