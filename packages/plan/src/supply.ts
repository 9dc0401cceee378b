import type { LineName, SupplyFacts } from '@eaveline/job';

/** Lines a supply has. */
export function linesOf(system: SupplyFacts['system']): readonly LineName[] {
  if (system === 'three-phase') return ['L1', 'L2', 'L3'];
  if (system === 'split-phase') return ['L1', 'L2'];
  return ['L1'];
}

/**
 * Volts between the two ends of a source: line to neutral, line to line on a split-phase board (twice that), or
 * between two lines of a three-phase board (√3 times that).
 */
export function sourceV(
  system: SupplyFacts['system'],
  nominalV: number,
  connection: 'line-neutral' | 'line-line' | 'three-phase',
): number {
  if (connection !== 'line-line') return nominalV;
  return system === 'split-phase' ? 2 * nominalV : Math.sqrt(3) * nominalV;
}
