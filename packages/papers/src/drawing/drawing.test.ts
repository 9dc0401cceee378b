import { Refusal } from '@eaveline/physics';
import { expect, test } from 'vitest';
import {
  arc,
  box,
  circle,
  corners,
  type Drawing,
  dimension,
  group,
  hatched,
  type Item,
  leader,
  leavesOf,
  line,
  mark,
  northArrow,
  ruleGauge,
  running,
  scaleBar,
  scaleFor,
  segmentsOf,
  settle,
  text,
  textBoxesOf,
  tube,
} from './index.ts';

const sheet = (...items: Item[]): Drawing => ({ title: 'a sheet', widthMm: 100, heightMm: 100, items });
const leaves = (...items: Item[]) => leavesOf(settle(sheet(...items)).items);

test('a group is scaled, turned, then moved; a quarter turn runs counter-clockwise', () => {
  // (2, 1) doubled is (4, 2), turned is (−2, 4), moved by (10, 20) is (8, 24)
  const [drawn] = leaves(group('sign', [line([0, 0], [2, 1])], { at: [10, 20], quarterTurns: 1, scale: 2 }));
  expect(drawn).toMatchObject({ from: [10, 20], to: [8, 24] });
});

test('groups inside groups turn together, and their letters with them', () => {
  const inner = group('inner', [text('K1', [1, 0], { capMm: 2.5 })], { at: [5, 0], quarterTurns: 1 });
  const [drawn] = leaves(group('outer', [inner], { at: [10, 10], quarterTurns: 1 }));
  // (1, 0) turned twice is (−1, 0); (5, 0) turned once is (0, 5)
  expect(drawn).toMatchObject({ at: [9, 15], rotateDeg: 180 });
});

test('coordinates are rounded once, to 0.01 mm', () => {
  const third = group('third', [line([1, 1], [2, 2])], { scale: 1 / 3 });
  expect(leaves(third)[0]).toMatchObject({ from: [0.33, 0.33], to: [0.67, 0.67] });
});

test('an arc turns with its group', () => {
  expect(leaves(group('g', [arc([0, 0], 2, 0, 90)], { quarterTurns: 3 }))[0]).toMatchObject({
    startDeg: 270,
    endDeg: 360,
  });
});

test('hatching of a square by hand: level lines 2 mm apart', () => {
  // 10 mm square from (1, 1): level lines at y = 2, 4, 6, 8, 10, each from 1 to 11
  const lines = leaves(hatched(corners([1, 1], 10, 10), { angleDeg: 0, gapMm: 2 }));
  expect(lines.map((l) => l.kind === 'line' && [l.from, l.to])).toEqual(
    [2, 4, 6, 8, 10].map((y) => [
      [1, y],
      [11, y],
    ]),
  );
});

test('hatching leaves holes, and its length tells the area at any angle', () => {
  // length × gap → area: 20 · 20 − 10 · 10 = 300 mm²; the sum over lines 0.05 mm apart errs by less than 1 %
  const ring: Item = {
    ...hatched([], { angleDeg: 37, gapMm: 0.05 }),
    outlines: [corners([10, 10], 20, 20), corners([15, 15], 10, 10)],
  };
  const total = segmentsOf(sheet(ring), { hatching: true }).reduce(
    (sum, s) => sum + Math.hypot(s.to[0] - s.from[0], s.to[1] - s.from[1]),
    0,
  );
  expect(Math.abs(total * 0.05 - 300)).toBeLessThan(3);
});

test('a dimension by the rules of the office: 1 mm off the thing, 1.3 mm past, the figure above the line', () => {
  const parts = leaves(dimension([10, 10], [60, 10], -8, '16\u202f800'));
  expect(parts[0]).toMatchObject({ from: [10, 2], to: [60, 2] });
  expect(parts[1]).toMatchObject({ from: [10, 9], to: [10, 0.7] });
  // an oblique stroke at 45°, 3 mm long, in the 0.5 pen
  const stroke = parts[3];
  if (stroke?.kind !== 'line') throw new Error('no stroke');
  expect(stroke.pen).toBe(0.5);
  expect(stroke.to[0] - stroke.from[0]).toBeCloseTo(stroke.to[1] - stroke.from[1], 6);
  expect(Math.hypot(stroke.to[0] - stroke.from[0], stroke.to[1] - stroke.from[1])).toBeCloseTo(3, 1);
  expect(parts.at(-1)).toMatchObject({ text: '16\u202f800', at: [35, 2.9], rotateDeg: 0, anchor: 'middle' });
});

test('an upright dimension is read from the right, whichever end it starts from', () => {
  const up = leaves(dimension([10, 10], [10, 60], 5, '5\u202f750')).at(-1);
  const down = leaves(dimension([10, 60], [10, 10], -5, '5\u202f750')).at(-1);
  expect(up).toMatchObject({ rotateDeg: 90, at: [4.1, 35] });
  expect(down).toMatchObject({ rotateDeg: 90, at: [4.1, 35] });
});

test('running sizes stand at their distance from the one end', () => {
  const words = leaves(
    running([10, 50], 'right', -8, [
      { atMm: 14, text: '710' },
      { atMm: 40, text: '2\u202f000' },
    ]),
  )
    .filter((leaf) => leaf.kind === 'text')
    .map((leaf) => [leaf.text, leaf.at[0]]);
  expect(words).toEqual([
    ['0', 10],
    ['710', 24],
    ['2\u202f000', 50],
  ]);
});

test('a conductor bears its letters at both ends, on its own layer', () => {
  const items = tube(
    [
      [10, 10],
      [50, 10],
    ],
    'L2',
    'black',
  );
  expect(items.map((i) => (i.kind === 'text' ? i.text : i.kind))).toEqual(['tube', 'L2', 'L2']);
  expect(segmentsOf(sheet(...items))[0]).toMatchObject({ layer: 'WIRE-L2', from: [10, 10], to: [50, 10] });
});

test('a bent conductor keeps its ends and cuts its corner', () => {
  const points = segmentsOf(
    sheet(
      ...tube(
        [
          [0, 0],
          [20, 0],
          [20, 20],
        ],
        'PE',
        'green-yellow',
        { bendMm: 5 },
      ),
    ),
  );
  expect(points[0]?.from).toEqual([0, 0]);
  expect(points.at(-1)?.to).toEqual([20, 20]);
  expect(points.some(({ to }) => to[0] === 20 && to[1] === 0)).toBe(false);
});

test('a circle becomes chords that close', () => {
  const chords = segmentsOf(sheet(circle([50, 50], 10)));
  expect(chords.length).toBe(180);
  expect(chords.at(-1)?.to[0]).toBeCloseTo(60, 9);
  // circumference by chords of 2°: 20π within 0.01 %
  const round = chords.reduce((sum, { from, to }) => sum + Math.hypot(to[0] - from[0], to[1] - from[1]), 0);
  expect(Math.abs(round - 20 * Math.PI)).toBeLessThan(0.005);
});

test('the box of a turned text turns with it', () => {
  const [level, upright] = textBoxesOf(sheet(text('1 722', [50, 50]), text('1 722', [50, 50], { rotateDeg: 90 })));
  const wide = (level?.corners[1][0] ?? 0) - 50;
  expect(upright?.corners[1][0]).toBeCloseTo(50, 9);
  expect(upright?.corners[1][1]).toBeCloseTo(50 + wide, 9);
  expect(upright?.corners[2][0]).toBeCloseTo(47.5, 9);
});

test('the rule: a reading past the limit is red, one inside is ink; needles stay on the line', () => {
  const gauge = { at: [10, 30], widthMm: 60, from: 0, to: 6, unit: 'V', label: 'rise' } as const;
  const limit = { value: 4.6, forbidden: 'above', text: 'limit 4.60' } as const;
  const inkOf = (value: number) =>
    leaves(ruleGauge({ ...gauge, limit, reading: { value, text: 'reading' } })).find(
      (leaf) => leaf.kind === 'text' && leaf.text === 'reading',
    );
  expect(inkOf(5.32)).toMatchObject({ ink: 'fails', at: [63.2, 34.65] }); // 10 + 60 · 5.32/6
  expect(inkOf(4.25)).toMatchObject({ ink: 'ink' });
  expect(inkOf(4.6)).toMatchObject({ ink: 'ink' }); // at the limit is not past it
  expect(inkOf(9)).toMatchObject({ ink: 'fails', at: [70, 34.65] });
  expect(() => ruleGauge({ ...gauge, to: 0 })).toThrow(Refusal);
});

test('the unit stands once, at the last figure of the rule', () => {
  const gauge = ruleGauge({ at: [10, 30], widthMm: 72, from: 0, to: 6, unit: 'V', label: 'rise' });
  const figures = leaves(gauge).flatMap((leaf) => (leaf.kind === 'text' ? [leaf.text] : []));
  expect(figures).toEqual(['0', '1', '2', '3', '4', '5', '6 V']);
});

test('north points where it is said to', () => {
  const arrow = segmentsOf(sheet(...northArrow([50, 50], 90)))[0];
  expect(arrow).toMatchObject({ from: [50, 43], to: [50, 55] });
});

test('the scale bar is true: five metres at 1:100 are 50 mm', () => {
  const figures = leaves(...scaleBar([10, 10], 100)).flatMap((leaf) =>
    leaf.kind === 'text' ? [[leaf.text, leaf.at[0]]] : [],
  );
  expect(figures.at(-1)).toEqual(['5 m', 60]);
});

test('a roof of 16.8 by 10.8 m goes on a body of 170 by 200 mm at 1:100; nothing fits a stamp', () => {
  expect(scaleFor({ widthMm: 16_800, heightMm: 10_800 }, { widthMm: 170, heightMm: 200 })).toBe(100);
  expect(scaleFor({ widthMm: 16_800, heightMm: 10_800 }, { widthMm: 20, heightMm: 20 })).toBeUndefined();
});

test('marks differ in form, not only in colour, and say their word', () => {
  const forms = (['meets', 'fails', 'ask'] as const).map((state) =>
    leaves(mark(state, [50, 50]))
      .map((l) => l.kind)
      .join(' '),
  );
  expect(new Set(forms).size).toBe(3);
  expect(mark('fails', [0, 0]).label).toBe('fails');
});

test('a leader ends on its thing', () => {
  expect(segmentsOf(sheet(...leader([20, 20], [30, 30], 'flue')))[0]).toMatchObject({ from: [20, 20], to: [30, 30] });
});

test('ids reach the flattened segments, from the thing itself or from its group', () => {
  expect(segmentsOf(sheet(group('unit', [line([0, 0], [1, 1])], { of: 'A5' })))[0]?.of).toBe('A5');
  expect(segmentsOf(sheet(box([1, 1], 5, 5, { of: 'N1·7' }))).every((s) => s.of === 'N1·7')).toBe(true);
});
