import type { BreakerSheet } from '../schema/sheets.ts';

type Residual = Pick<BreakerSheet, 'residualMA' | 'residualType' | 'bothWays'>;

function iec(ratedA: number, curve: 'B' | 'C', poles: number, residual?: Residual): BreakerSheet {
  const kind = residual ? `residual breaker ${residual.residualMA} mA type ${residual.residualType}` : 'breaker';
  return {
    kind: 'breaker',
    invented: true,
    name: `${curve}${ratedA} ${kind}, ${poles} ${poles === 1 ? 'pole' : 'poles'}`,
    ratedA,
    curve,
    poles,
    breakingKA: 6,
    continuousShare: 1,
    bothWays: true,
    terminalTorqueNm: 2.5,
    ...residual,
  };
}

function american(ratedA: number): BreakerSheet {
  return {
    kind: 'breaker',
    invented: true,
    name: `${ratedA} A breaker, 2 poles`,
    ratedA,
    curve: 'US',
    poles: 2,
    breakingKA: 10,
    continuousShare: 0.8,
    bothWays: true,
    terminalTorqueNm: 2.3,
  };
}

const typeA = { residualMA: 30, residualType: 'A', bothWays: true } as const;
const typeB = { residualMA: 30, residualType: 'B', bothWays: true } as const;
/** Made to be fed from the supply side only: the fault of the older stock. */
const oneWay = { residualMA: 30, residualType: 'AC', bothWays: false } as const;

/** Invented breakers, by sheet id. */
export const breakerSheets = {
  'breaker-b16': iec(16, 'B', 1),
  'breaker-c16': iec(16, 'C', 1),
  'breaker-b20': iec(20, 'B', 1),
  'breaker-c20': iec(20, 'C', 1),
  'breaker-b25': iec(25, 'B', 1),
  'breaker-c25': iec(25, 'C', 1),
  'breaker-b32': iec(32, 'B', 1),
  'breaker-c32': iec(32, 'C', 1),
  'breaker-c40': iec(40, 'C', 1),
  'breaker-c20-3': iec(20, 'C', 3),
  'breaker-c25-3': iec(25, 'C', 3),
  'breaker-c63-3': iec(63, 'C', 3),
  'residual-b16-a': iec(16, 'B', 2, typeA),
  'residual-c20-a': iec(20, 'C', 2, typeA),
  'residual-b25-a': iec(25, 'B', 2, typeA),
  'residual-b32-a': iec(32, 'B', 2, typeA),
  'residual-b16-b': iec(16, 'B', 2, typeB),
  'residual-b16-one-way': iec(16, 'B', 2, oneWay),
  'breaker-us-15': american(15),
  'breaker-us-20': american(20),
  'breaker-us-30': american(30),
  'breaker-us-40': american(40),
  'breaker-us-60': american(60),
} as const satisfies Record<string, BreakerSheet>;
