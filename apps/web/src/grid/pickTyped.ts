import { readConductorSize } from '@eaveline/job';
import { folded } from '../book/folded.ts';
import { countWord } from '../words/count.ts';
import type { CellRefusal } from './cellRefusal.ts';
import type { Option, PickColumn } from './column.ts';

export type PickTyped = { readonly option: Option } | { readonly why: CellRefusal };

/**
 * The one option a typed text means: by its whole words or what the job keeps; by the size of its conductor, area and
 * gauge never taken for each other; else by how its words begin, where they begin so in one option alone.
 */
export function pickTyped({ options }: Pick<PickColumn, 'options'>, typed: string): PickTyped {
  const text = folded(typed);
  const named =
    options.find(({ words }) => folded(words) === text) ??
    options.find(({ value }) => typeof value === 'string' && folded(value) === text);
  if (named !== undefined) return { option: named };
  const sized = options.some(({ size }) => size !== undefined);
  const size = sized ? readConductorSize(typed) : undefined;
  if (size !== undefined && (size.kind === 'area' || size.kind === 'gauge')) {
    const fits = options.filter((option) =>
      size.kind === 'gauge' ? option.size?.awg === size.awg : option.size?.areaMm2 === size.areaMm2,
    );
    return oneOf(fits, options, typed);
  }
  const begun = text === '' ? [] : options.filter(({ words }) => folded(words).startsWith(text));
  return oneOf(begun, options, typed);
}

function oneOf(fits: readonly Option[], options: readonly Option[], typed: string): PickTyped {
  const [first, ...others] = fits;
  if (first !== undefined && others.length === 0) return { option: first };
  const some = first === undefined ? options : fits;
  const words = some.map((option) => option.words).join(', ');
  return {
    why: {
      found:
        first === undefined
          ? `${typed.trim()} is not offered here`
          : `${typed.trim()} could be ${countWord(fits.length)} here`,
      wanted: `one of ${words}`,
      mend: `Type one of ${words}.`,
    },
  };
}
