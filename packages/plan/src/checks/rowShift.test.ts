import { expect, test } from 'vitest';
import type { PlacedModule } from '../array/types.ts';
import type { RoofEdge, RoofObstruction, RoofPlane, UV } from '../roof/types.ts';
import { rulePacks } from '../rules/index.ts';
import type { RulePack } from '../rules/pack.ts';
import type { CheckContext } from './context.ts';
import { edgeLimit, roofShare } from './edgeLimit.ts';
import { shiftMend, shortestShift } from './rowShift.ts';

// a gable plane 10 m along the eave and 6 m up the slope, level so that plan and slope are one
const corners: readonly UV[] = [
  [0, 0],
  [10, 0],
  [10, 6],
  [0, 6],
];
const sides = ['eave', 'right', 'ridge', 'left'] as const;
const edges = sides.map((side, k): RoofEdge => {
  const from = corners[k] as UV;
  const to = corners[(k + 1) % 4] as UV;
  return { side, kind: side === 'eave' || side === 'ridge' ? side : 'verge', from, to, lengthM: 0, setbackM: 0 };
});

function module(id: string, rowId: string, left: number, low: number): PlacedModule {
  const [widthM, heightM] = [1, 1.7];
  return {
    id,
    rowId,
    planeId: 'p',
    at: [left, low],
    widthM,
    heightM,
    corners: [
      [left, low],
      [left + widthM, low],
      [left + widthM, low + heightM],
      [left, low + heightM],
    ],
  } as unknown as PlacedModule;
}

interface Case {
  readonly modules: readonly PlacedModule[];
  readonly obstructions?: readonly RoofObstruction[];
  readonly variant?: RulePack['variant'];
  readonly gapUnderMm?: number;
  readonly setbacks?: CheckContext['choices']['setbacks'];
  readonly edges?: readonly RoofEdge[];
}

function context({
  modules,
  obstructions = [],
  variant = 'au',
  gapUnderMm = 100,
  setbacks = {},
  ...shape
}: Case): CheckContext {
  const plane = {
    id: 'p',
    pitchDeg: 0,
    areaM2: 60,
    edges: shape.edges ?? edges,
    obstructions,
    outline: corners,
  } as unknown as RoofPlane;
  const rows = Object.fromEntries([...modules].reverse().map(({ rowId, at }) => [rowId, { uM: at[0], vM: at[1] }]));
  return {
    pack: rulePacks[variant],
    roof: { planes: [plane] },
    array: { modules },
    choices: { rows, setbacks, mounting: { gapUnderMm } },
  } as unknown as CheckContext;
}

// two gaps of 100 mm from every edge: 0.20 m
test('a row 50 mm from the verge moves 150 mm along the eave', () => {
  const beside = context({ modules: [module('a', 'r', 0.05, 1), module('b', 'r', 1.05, 1)] });
  expect(shortestShift(beside, 'r')).toEqual({ du: 0.15, dv: 0 });
  expect(shiftMend(beside, 'r')).toEqual([
    { words: 'Move the row 150 mm right.', changes: [{ path: ['choices', 'rows', 'r', 'uM'], value: 0.2 }] },
  ]);
});

test('a row over the ridge moves down the slope: 6 − 1.7 − 0.2 = 4.1', () => {
  const over = context({ modules: [module('a', 'r', 4, 4.5)] });
  expect(shiftMend(over, 'r')).toEqual([
    { words: 'Move the row 400 mm down the slope.', changes: [{ path: ['choices', 'rows', 'r', 'vM'], value: 4.1 }] },
  ]);
});

test('of two ways round a flue the shorter is taken, and none that runs into another row', () => {
  // ring from u 4.2 to 4.8: the module from 4.1 to 5.1 leaves it 0.7 m to the right or 0.9 m to the left
  const flue = { centre: [4.5, 1.5], widthM: 0.2, depthM: 0.2, clearM: 0.2 } as unknown as RoofObstruction;
  const alone = context({ modules: [module('a', 'r', 4.1, 1)], obstructions: [flue] });
  expect(shortestShift(alone, 'r')?.du).toBeCloseTo(0.7, 9);

  // a row of its own stands from 5.5 to 6.5: 4.8 to 5.8 would lie on it, so it goes up, 1.8 − 1 = 0.8, shorter than 0.9 to the left
  const besideOther = context({ modules: [module('a', 'r', 4.1, 1), module('b', 's', 5.5, 1)], obstructions: [flue] });
  const up = shortestShift(besideOther, 'r');
  expect(up?.du).toBe(0);
  expect(up?.dv).toBeCloseTo(0.8, 9);
});

test('along the eave a hip gives way by less than the move: 59 mm wanting at 45° is 83 mm', () => {
  // hip from (6, 6) to (0, 0); the upper left corner (2.4, 2.2) stands 0.2 · sin 45° = 0.1414 m from it, 0.20 asked:
  // 0.0586 ÷ sin 45° = 0.0828 m
  const hip = edges.map(
    (edge): RoofEdge => (edge.side === 'left' ? { ...edge, kind: 'hip', from: [6, 6], to: [0, 0] } : edge),
  );
  const under = context({ modules: [module('a', 'r', 2.4, 0.5)], edges: hip });
  expect(shortestShift(under, 'r')?.du).toBeCloseTo(0.083, 9);
});

test('a row longer than the plane between its strips has no straight move', () => {
  const full = Array.from({ length: 10 }, (_, k) => module(`m${k}`, 'r', 0.1 + k, 1));
  expect(shortestShift(context({ modules: full }), 'r')).toBeUndefined();
  expect(shiftMend(context({ modules: full }), 'r')[0]?.changes).toBeUndefined();
});

test('the strip is the larger of the region’s and the one chosen', () => {
  const one = [module('a', 'r', 1, 1)];
  expect(edgeLimit(context({ modules: one }), 'eave').limitM).toBeCloseTo(0.2, 12);
  // two gaps of 150 mm
  expect(edgeLimit(context({ modules: one, gapUnderMm: 150 }), 'eave').limitM).toBeCloseTo(0.3, 12);
  const chosen = edgeLimit(context({ modules: one, setbacks: { eaveM: 0.4 } }), 'eave');
  expect(chosen).toMatchObject({ limitM: 0.4, from: { seen: 'job' } });
  // a smaller choice does not loosen the region's
  expect(edgeLimit(context({ modules: one, setbacks: { eaveM: 0.1 } }), 'eave').limitM).toBeCloseTo(0.2, 12);
});

test('us: 18 in at the ridge, 36 in once the array takes more than a third of the roof', () => {
  const rows = (n: number) =>
    Array.from({ length: n }, (_, k) => module(`m${k}`, `r${k}`, k % 9, 1.7 * Math.floor(k / 9)));
  // 11 · 1.7 m² of 60 m² is 31 %; 12 · 1.7 is 34 %
  expect(roofShare(context({ modules: rows(11) }))).toBeCloseTo(18.7 / 60, 12);
  expect(edgeLimit(context({ modules: rows(11), variant: 'us' }), 'ridge').limitM).toBe(0.457);
  expect(edgeLimit(context({ modules: rows(12), variant: 'us' }), 'ridge').limitM).toBe(0.914);
  expect(edgeLimit(context({ modules: rows(12), variant: 'us' }), 'eave').limitM).toBe(0.2);
});

test('modules a clamp apart are one thing in the way: a row of a hundred moves past a row of a hundred', () => {
  const row = (rowId: string, low: number) =>
    Array.from({ length: 100 }, (_, k) => module(`${rowId}-${k}`, rowId, 2 + 0.05 * k, low));
  // 100 mm over each other, and the second row has all the room above: the height of a module is 1.7
  const shift = shortestShift(context({ modules: [...row('one', 0.8), ...row('two', 2.4)], setbacks: {} }), 'two');
  expect(shift).toEqual({ du: 0, dv: 0.1 });
});
