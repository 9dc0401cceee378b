import { describe, expect, test } from 'vitest';
import { typedQuantity } from './typedQuantity.ts';

describe('what a text says while it is typed', () => {
  test('figures in the unit of the field need no words beside them', () => {
    for (const [text, value] of [
      ['24', 24],
      ['24 m', 24],
      ['20,5 m', 20.5],
      ['1 200', 1200],
    ] as const)
      expect(typedQuantity(text, 'm', false)).toEqual({ kind: 'reads', value, words: undefined });
    expect(typedQuantity('\u22124', '°C', true)).toEqual({ kind: 'reads', value: -4, words: undefined });
  });

  // a foot is 0.3048 m, exact: NIST SP 811
  test('another unit is said as what it comes to', () => {
    expect(typedQuantity(' 12  ft', 'm', false)).toEqual({
      kind: 'reads',
      value: 3.6576,
      words: '12 ft = 3.6576\u00a0m.',
    });
    expect(typedQuantity('6\' 4"', 'mm', false)).toMatchObject({ kind: 'reads', value: 1930.4 });
    expect(typedQuantity('23 °F', '°C', true)).toMatchObject({ kind: 'reads', value: -5 });
  });

  test('what is none is refused, with the way out', () => {
    expect(typedQuantity('12 furlongs', 'm', false)).toEqual({
      kind: 'refused',
      words: expect.stringContaining('Type it in m, or with its unit: 1.2 m'),
    });
  });

  test('an empty field is a value where it may be, else none', () => {
    expect(typedQuantity('', 'm', true)).toEqual({ kind: 'reads', value: undefined, words: undefined });
    expect(typedQuantity(' ', 'm', false)).toEqual({ kind: 'refused', words: 'It cannot be left empty.' });
  });
});
