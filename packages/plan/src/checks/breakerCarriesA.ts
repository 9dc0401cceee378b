import type { BreakerSheet } from '@eaveline/job';
import type { RulePack } from '../rules/pack.ts';

/**
 * Current a breaker may carry for hours, A.
 *
 * A breaker made for continuous duty carries its rating. Any other carries the smaller of what its sheet says and
 * what the region's factor leaves (1.25 leaves 0.8).
 */
export function breakerCarriesA(
  breaker: Pick<BreakerSheet, 'ratedA' | 'continuousShare'>,
  pack: Pick<RulePack, 'continuousFactor'>,
): number {
  if (breaker.continuousShare >= 1) return breaker.ratedA;
  return breaker.ratedA * Math.min(breaker.continuousShare, 1 / pack.continuousFactor.value);
}
