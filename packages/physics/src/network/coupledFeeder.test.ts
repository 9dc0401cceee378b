import { expect, test } from 'vitest';
import { type CoupledLine, coupledFeeder } from './coupledFeeder.ts';
import type { Complex } from './powerFlow.ts';

// IEEE PES 4-node test feeder, step-down, grounded star – grounded star (Kersting 2001): Ω per mile, [r, x].
const OHM_PER_MILE: Complex[][] = [
  [
    [0.4576, 1.078],
    [0.1559, 0.5017],
    [0.1535, 0.3849],
  ],
  [
    [0.1559, 0.5017],
    [0.4666, 1.0482],
    [0.158, 0.4236],
  ],
  [
    [0.1535, 0.3849],
    [0.158, 0.4236],
    [0.4615, 1.0651],
  ],
];
const line = (ft: number): CoupledLine => ({
  kind: 'line',
  zOhm: OHM_PER_MILE.map((row) => row.map(([r, x]): Complex => [(r * ft) / 5280, (x * ft) / 5280])),
});
const polar = (v: number, deg: number): Complex => [
  v * Math.cos((deg * Math.PI) / 180),
  v * Math.sin((deg * Math.PI) / 180),
];
const baseOhm = 4160 ** 2 / 6e6;

test.each([
  [
    'balanced',
    [
      [1800, 0.9],
      [1800, 0.9],
      [1800, 0.9],
    ],
    [
      [1918, -9.1],
      [2061, -128.3],
      [1981, 110.9],
    ],
  ],
  [
    'unbalanced',
    [
      [1275, 0.85],
      [1800, 0.9],
      [2375, 0.95],
    ],
    [
      [2175, -4.1],
      [1930, -126.8],
      [1833, 102.8],
    ],
  ],
])('published voltages at node 4, %s load: 1 V and 0.1 degree, the rounding they are printed with', (_, load, want) => {
  const got = coupledFeeder({
    sourceV: [0, -120, 120].map((deg) => polar(12470 / Math.sqrt(3), deg)),
    stages: [
      line(2000),
      { kind: 'transformer', ratio: 12470 / 4160, zLowOhm: [0.01 * baseOhm, 0.06 * baseOhm] },
      line(2500),
    ],
    loadVa: load.map(
      ([kw, pf]): Complex => [(kw as number) * 1e3, (kw as number) * 1e3 * Math.tan(Math.acos(pf as number))],
    ),
  });
  got.nodeV[3]?.forEach(([re, im], k) => {
    expect(Math.abs(Math.hypot(re, im) - (want[k]?.[0] as number))).toBeLessThan(1);
    expect(Math.abs((Math.atan2(im, re) * 180) / Math.PI - (want[k]?.[1] as number))).toBeLessThan(0.1);
  });
});

test('refuses a load past collapse', () => {
  const source = [0, -120, 120].map((deg) => polar(240, deg));
  const heavy: Complex[] = [
    [1e6, 0],
    [1e6, 0],
    [1e6, 0],
  ];
  expect(() => coupledFeeder({ sourceV: source, stages: [line(5000)], loadVa: heavy })).toThrow('no steady voltage');
});
