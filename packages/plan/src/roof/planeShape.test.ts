import { type PlaneFacts, planeFactsSchema } from '@eaveline/job';
import { Refusal } from '@eaveline/physics';
import { expect, test } from 'vitest';
import { areaM2, clipConvex } from './clipConvex.ts';
import { planeLetters } from './planeLetters.ts';
import { planeFrame, planeShape } from './planeShape.ts';
import { raftersU } from './raftersU.ts';
import { takenAreaM2 } from './takenArea.ts';
import type { RoofObstruction } from './types.ts';

const NO_SETBACK = { eaveM: 0, ridgeM: 0, sideM: 0 };

function plane(facts: Partial<PlaneFacts>): PlaneFacts {
  return planeFactsSchema.parse({
    name: 'South',
    facingDeg: 180,
    pitchDeg: 26.6,
    eaveLengthM: 10,
    slopeLengthM: 3.9143,
    ridgeFromM: 0,
    ridgeToM: 10,
    eaveLeft: { eastM: 0, northM: 0, heightM: 2.5 },
    edges: { left: 'verge', right: 'verge' },
    covering: 'slate',
    ...facts,
  });
}

const shapeOf = (facts: Partial<PlaneFacts>, setbacks = NO_SETBACK) => planeShape(plane(facts), setbacks, 'plane');

test('26.6° facing south: the normal leans 0.4478 south and 0.8942 up, and right is east seen from in front', () => {
  // sin 26.6° = 0.44776, cos 26.6° = 0.89415
  const { along, upSlope, normal } = planeFrame(180, 26.6);
  expect(normal.map((x) => Math.round(x * 1e4) / 1e4 + 0)).toEqual([0, -0.4478, 0.8942]);
  expect(along[0]).toBeCloseTo(1, 12);
  expect(upSlope[1]).toBeCloseTo(0.89415, 5);
  // right-handed: along × up the slope = normal
  expect(along[1] * upSlope[2] - along[2] * upSlope[1]).toBeCloseTo(normal[0], 12);
  expect(along[0] * upSlope[1] - along[1] * upSlope[0]).toBeCloseTo(normal[2], 12);
});

test('gable 10 m long, span 7 m, 26.6°: slope 3.9143 m, 39.143 m² a side, the ridge 1.7527 m above the eave', () => {
  // 3.5 ÷ cos 26.6° = 3.9143; 3.5 · tan 26.6° = 1.7527
  const { areaM2: area, outline3d, edges } = shapeOf({});
  expect(area).toBeCloseTo(39.143, 3);
  expect((outline3d[2]?.[2] ?? 0) - 2.5).toBeCloseTo(1.7527, 4);
  expect(edges.map(({ side, kind }) => `${side} ${kind}`)).toEqual([
    'eave eave',
    'right verge',
    'ridge ridge',
    'left verge',
  ]);
});

test('hip roof 12 × 8 m at 25°: 35.308 and 17.654 m², hips of 5.9564 m, and the horizontal parts of A·n vanish', () => {
  // slope 4 ÷ cos 25° = 4.4135; long plane (12 + 4)/2 · 4.4135, short plane 8/2 · 4.4135; hip √(4² + 4.4135²) = 5.9564
  const hip = {
    pitchDeg: 25,
    slopeLengthM: 4 / Math.cos((25 * Math.PI) / 180),
    edges: { eave: 'eave', ridge: 'ridge', left: 'hip', right: 'hip' },
  } as const;
  const long = { ...hip, eaveLengthM: 12, ridgeFromM: 4, ridgeToM: 8 };
  const short = { ...hip, eaveLengthM: 8, ridgeFromM: 4, ridgeToM: 4 };
  const [south, north, east, west] = [
    shapeOf({ ...long, facingDeg: 180 }),
    shapeOf({ ...long, facingDeg: 0 }),
    shapeOf({ ...short, facingDeg: 90 }),
    shapeOf({ ...short, facingDeg: 270 }),
  ];
  expect(south.areaM2).toBeCloseTo(35.308, 3);
  expect(east.areaM2).toBeCloseTo(17.654, 3);
  expect(south.edges[1]?.lengthM).toBeCloseTo(5.9564, 4);
  expect(east.edges.map((edge) => edge.side)).toEqual(['eave', 'right', 'left']);
  for (const axis of [0, 1] as const) {
    const sum = [south, north, east, west].reduce((all, { areaM2: a, normal }) => all + a * normal[axis], 0);
    expect(sum).toBeCloseTo(0, 12);
  }
});

test('a south plane and a north plane of one hip roof meet along their hips and ridge', () => {
  const hip = { pitchDeg: 25, slopeLengthM: 4 / Math.cos((25 * Math.PI) / 180) };
  const long = { ...hip, eaveLengthM: 12, ridgeFromM: 4, ridgeToM: 8 };
  const south = shapeOf({ ...long, facingDeg: 180 });
  const north = shapeOf({ ...long, facingDeg: 0, eaveLeft: { eastM: 12, northM: 8, heightM: 2.5 } });
  const east = shapeOf({
    ...hip,
    eaveLengthM: 8,
    ridgeFromM: 4,
    ridgeToM: 4,
    facingDeg: 90,
    eaveLeft: { eastM: 12, northM: 0, heightM: 2.5 },
  });
  const near = (a: readonly number[] | undefined, b: readonly number[] | undefined) =>
    a?.forEach((x, k) => {
      expect(x).toBeCloseTo(b?.[k] ?? Number.NaN, 9);
    });
  near(south.outline3d[2], north.outline3d[3]); // east end of the ridge
  near(south.outline3d[1], east.outline3d[0]); // south-east eave corner
  near(east.outline3d[2], south.outline3d[2]); // the east plane's peak
});

test('12 × 5 m with 0.2 at the eave, 0.457 at the ridge, 0.914 at the verges leaves 10.172 × 4.343 = 44.176996 m²', () => {
  const { usable } = shapeOf(
    { eaveLengthM: 12, slopeLengthM: 5, ridgeToM: 12 },
    { eaveM: 0.2, ridgeM: 0.457, sideM: 0.914 },
  );
  expect(areaM2(usable)).toBeCloseTo(44.176996, 9);
});

test('hip plane 12 / 4 m, slope 4.4135, with 0.2 / 0.457 / 0.3 leaves 27.885125 m²', () => {
  // between v = 0.2 and 3.9565; the hip stands at u = v·4/4.4135, its setback moves it 0.3·5.9564/4.4135 = 0.404878 along u:
  // width at v: 12 − 2·(0.906310·v + 0.404875); mean width at v = 2.07825: 7.423175, × 3.7565 = 27.8852
  const { usable } = shapeOf(
    { eaveLengthM: 12, slopeLengthM: 4.4135, ridgeFromM: 4, ridgeToM: 8 },
    { eaveM: 0.2, ridgeM: 0.457, sideM: 0.3 },
  );
  expect(areaM2(usable)).toBeCloseTo(27.885125, 6);
});

test('setbacks wider than the plane leave nothing', () => {
  expect(shapeOf({}, { eaveM: 2, ridgeM: 2, sideM: 0 }).usable).toEqual([]);
});

test('a ridge that ends before it begins is refused by its path', () => {
  const bad = () => shapeOf({ ridgeFromM: 6, ridgeToM: 4 });
  expect(bad).toThrow(Refusal);
  expect(bad).toThrow('plane.ridgeFromM');
});

const vent = (u: number, v: number): RoofObstruction => ({
  id: 'vent',
  kind: 'vent',
  name: 'vent',
  centre: [u, v],
  widthM: 0.3,
  depthM: 0.3,
  heightM: 0.3,
  clearM: 0.2,
});

test('a vent of 0.3 m square kept clear by 0.2 m takes 0.49 m²; two that overlap by half take 0.735', () => {
  // 0.7² = 0.49; shifted by 0.35 the two cover 1.05 × 0.7 = 0.735
  const square = clipConvex(
    [
      [0, 0],
      [10, 0],
      [10, 4],
      [0, 4],
    ],
    [],
  );
  expect(takenAreaM2(square, [vent(5, 2)])).toBeCloseTo(0.49, 12);
  expect(takenAreaM2(square, [vent(5, 2), vent(5.35, 2)])).toBeCloseTo(0.735, 12);
  // half of it over the eave: only the half on the plane counts
  expect(takenAreaM2(square, [vent(5, 0)])).toBeCloseTo(0.245, 12);
  expect(takenAreaM2(square, [])).toBe(0);
});

test('rafters stand at their first and every spacing; without the spacing nothing is guessed', () => {
  // 10.8 m eave, first at 0.3, every 0.6: 0.3 … 10.5, 18 of them
  const known = raftersU(plane({ eaveLengthM: 10.8, rafters: { firstMm: 300, spacingMm: 600 } }));
  expect(known).toHaveLength(18);
  expect(known?.at(-1)).toBeCloseTo(10.5, 9);
  expect(raftersU(plane({ rafters: { firstMm: 300 } }))).toBeUndefined();
});

test('planes get their own letters', () => {
  expect(planeLetters(['North', 'East', 'South', 'West'])).toEqual(['N', 'E', 'S', 'W']);
  expect(planeLetters(['North front', 'North back', 'East'])).toEqual(['NF', 'NB', 'E']);
  expect(planeLetters(['Shed', 'South'])).toEqual(['Sh', 'So']);
  expect(new Set(planeLetters(['Roof', 'Roof', 'Roof'])).size).toBe(3);
});
