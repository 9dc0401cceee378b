import { expect, test } from 'vitest';
import { givenAngle } from './working.ts';

test('an angle keeps the decimals it was entered with, a hundredth of a degree at most', () => {
  const shown = (deg: number) => {
    const { value, decimals } = givenAngle('facing', deg, 'facts.roof.planes.north.facingDeg', 'survey');
    return (value as number).toFixed(decimals);
  };
  expect([352.5, 90, 143.9, 22.55, 7.125].map(shown)).toEqual(['352.5', '90', '143.9', '22.55', '7.13']);
});
