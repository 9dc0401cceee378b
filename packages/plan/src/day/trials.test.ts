import { expect, test } from 'vitest';
import { trialsFor } from './trials.ts';

test('a house has all its trials, a hall of thousands of modules so many that it can be waited for', () => {
  // Kestrel Rise has 38 tasks
  expect(trialsFor(38, 400)).toBe(400);
  expect(trialsFor(300, 400)).toBe(400);
  // twice the tasks take four times as long each: a quarter of the trials
  expect(trialsFor(600, 400)).toBe(100);
  expect(trialsFor(1700, 400)).toBe(40);
});

test('what is tried less than forty times is tried so often in a hall too', () => {
  expect(trialsFor(1700, 12)).toBe(12);
});
