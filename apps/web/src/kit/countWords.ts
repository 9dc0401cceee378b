import type { KitLine } from '@eaveline/plan';
import { figure } from '../words/figure.ts';

/** A count as an order says it: pieces whole, metres with a decimal where they have one. */
export function countWords(count: number, unit: KitLine['unit']): string {
  return figure(count, unit === 'm' && !Number.isInteger(count) ? 1 : 0);
}
