import { type Judged, stateOf } from './rule.ts';

/** Of many like things, those that fail or are open; where all meet, one finding that says so of all. */
export function eachOrAll(each: readonly Judged[], all: Judged): readonly Judged[] {
  const open = each.filter((judged) => stateOf(judged) !== 'meets');
  return open.length > 0 ? open : [all];
}
