import { expect, test } from 'vitest';
import { spread } from './spread.ts';

test('labels that would lie on one another are moved apart, in their order, and none below the axis', () => {
  const at = spread(
    [
      { id: 'b', y: 100 },
      { id: 'a', y: 98 },
      { id: 'c', y: 190 },
    ],
    17,
    195,
  );
  expect(at.get('a')).toBe(98);
  expect(at.get('b')).toBe(115);
  expect(at.get('c')).toBe(190);
  const low = spread(
    [
      { id: 'a', y: 194 },
      { id: 'b', y: 195 },
    ],
    17,
    195,
  );
  expect([low.get('a'), low.get('b')]).toEqual([178, 195]);
});
