import type { Working } from '@eaveline/plan';

/**
 * A figure that a sheet puts together from figures of the plan, as a working: the sum of a plane, a share of a sum.
 * Written here, so that the page carries none of the stages: those run in the worker.
 */
export function sheetWorking(
  name: string,
  value: number,
  unit: string,
  formula: string,
  source: string,
  inputs: readonly Working[],
  more: Pick<Working, 'decimals' | 'note'> = {},
): Working {
  return { name, value, unit, formula, source, inputs, ...more };
}
