import { quantityRefusalWords, readQuantity, showQuantity } from '@eaveline/job';

/** What a text that is being typed says so far; nothing of it is in the job. */
export type TypedQuantity =
  | {
      readonly kind: 'reads';
      /** In the unit of the field; undefined where it is left empty and may be. */
      readonly value: number | undefined;
      /** `12 ft = 3.6576 m.`, where another unit was typed than the field's own. */
      readonly words: string | undefined;
    }
  | { readonly kind: 'refused'; readonly words: string };

/**
 * Reads a field's text as a quantity.
 *
 * @param unit      of the field; taken where none is typed.
 * @param optional  true where the field may be left empty.
 */
export function typedQuantity(text: string, unit: string, optional: boolean): TypedQuantity {
  const read = readQuantity(text, unit);
  if (read.kind === 'refused') return { kind: 'refused', words: quantityRefusalWords(read) };
  if (read.kind === 'empty')
    return optional
      ? { kind: 'reads', value: undefined, words: undefined }
      : { kind: 'refused', words: 'It cannot be left empty.' };
  const own = readsAlike(text, read.value);
  return {
    kind: 'reads',
    value: read.value,
    words: own ? undefined : `${text.trim().replace(/\s+/g, ' ')} = ${showQuantity(read.value, unit)}.`,
  };
}

/** True where the figures typed are those of the value: `24`, `24 m`, `20,5 m`; not `12 ft`. */
function readsAlike(text: string, value: number): boolean {
  const figures = /^\s*[+\-\u2212]?[\d\s.,\u00a0\u2009\u202f]+/.exec(text)?.[0] ?? '';
  return readsAs(figures) === value;
}

function readsAs(figures: string): number | undefined {
  const read = readQuantity(figures, '');
  return read.kind === 'value' ? read.value : undefined;
}
