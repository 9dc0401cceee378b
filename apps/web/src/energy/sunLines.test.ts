import { expect, test } from 'vitest';
import { hourLine, sunAt, sunWay } from './sunLines.ts';

test('at noon the sun stands 90° − latitude + declination over the equator’s side', () => {
  // 37.6° south, longest day there: 90 − 37.6 + 23.44 = 75.84° in the north
  expect(sunAt(-37.6, -23.44, 0)[1]).toBeCloseTo(75.84, 6);
  expect(Math.cos((sunAt(-37.6, -23.44, 0)[0] * Math.PI) / 180)).toBeCloseTo(1, 9);
  expect(sunAt(51.5, 0, 0)[0]).toBeCloseTo(180, 6);
});

test('at the equinox it rises due east and sets due west, everywhere', () => {
  for (const latitude of [-37.6, 12, 51.5]) {
    expect(sunAt(latitude, 0, -90)[0]).toBeCloseTo(90, 6);
    expect(sunAt(latitude, 0, 90)[0]).toBeCloseTo(270, 6);
  }
});

test('beyond the circle the shortest day has no way, and no hour stands on it', () => {
  expect(sunWay(69, -23.44)).toEqual([]);
  expect(sunWay(69, 23.44)).toHaveLength(145);
  expect(hourLine(69, 12).every(([, height]) => height >= 0)).toBe(true);
});
