import type { Working } from '@eaveline/plan';

/** Symbols of a figure and of what it was made of. */
export function symbolsOf({ symbol, inputs = [] }: Working): string[] {
  return [symbol, ...inputs.map((input) => input.symbol)].filter((each) => each !== undefined);
}
