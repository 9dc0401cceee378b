import { expect, test } from 'vitest';
import { type Drawing, flawsOf, type Item, line, text } from './index.ts';

const area = { leftMm: 10, bottomMm: 10, rightMm: 90, topMm: 90 };
const flaws = (...items: Item[]) =>
  flawsOf({ title: 'planted', widthMm: 100, heightMm: 100, items } satisfies Drawing, area);

test('a clean sheet has no flaws, and the check says what it looked at', () => {
  expect(flaws(text('A1', [20, 20]), text('A2', [20, 26]), line([20, 40], [80, 40]))).toEqual({
    texts: 2,
    segments: 1,
    textOnText: [],
    lineThroughText: [],
    outside: [],
  });
});

test('planted: a label on a label', () => {
  expect(flaws(text('trunk A', [20, 20]), text('drop 5', [25, 21])).textOnText).toEqual([['trunk A', 'drop 5']]);
});

test('planted: labels 0.2 mm apart, which print as one', () => {
  expect(flaws(text('A1', [20, 20]), text('A2', [20, 22.7])).textOnText.length).toBe(1);
  expect(flaws(text('A1', [20, 20]), text('A2', [20, 22.81])).textOnText.length).toBe(0);
});

test('planted: a slanting label on a level one; boxes round them would meet even where they do not', () => {
  const slanting = (y: number) => text('north plane, row 1', [20, y], { rotateDeg: 45 });
  expect(flaws(text('A', [30, 31]), slanting(20)).textOnText.length).toBe(1);
  expect(flaws(text('A', [40, 22]), slanting(20)).textOnText.length).toBe(0);
});

test('planted: a line through a label; with a halo it may', () => {
  const through = line([10, 21], [90, 21]);
  expect(flaws(text('1 864', [20, 20]), through).lineThroughText).toEqual(['1 864']);
  expect(flaws(text('1 864', [20, 20], { halo: true }), through).lineThroughText).toEqual([]);
  expect(flaws(text('1 864', [20, 20]), line([10, 19.5], [90, 19.5])).lineThroughText).toEqual([]);
});

test('planted: a short line inside a letter', () => {
  expect(flaws(text('WWWW', [20, 20]), line([23, 21], [23.5, 21.5])).lineThroughText).toEqual(['WWWW']);
});

test('planted: lettering and lines that leave the frame', () => {
  expect(flaws(text('runs out', [85, 20])).outside).toEqual(['runs out']);
  expect(flaws(text('page', [20, 10.2])).outside).toEqual(['page']); // its g hangs out
  expect(flaws(line([20, 20], [20, 90.5], { layer: 'ROOF-OUT' })).outside).toEqual(['ROOF-OUT 20 20 to 20 90.5']);
});
