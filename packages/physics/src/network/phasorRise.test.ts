import { expect, test } from 'vitest';
import { fourWireChange } from './fourWire.ts';
import {
  exportPhasors,
  liftOver,
  magnitudes,
  type PhasorSource,
  riseBetween,
  sourcePhasors,
  type Terminal,
} from './phasorRise.ts';

const R = 0.003564; // 6 mm² copper at 60 °C: 3.08 mΩ/m · (1 + 0.00393 · 40), IEC 60228

function rise(
  kind: 'single-phase' | 'split-phase' | 'three-phase',
  sources: readonly PhasorSource[],
  at: [Terminal, Terminal],
  v = 230,
) {
  const voltage = sourcePhasors(kind, v);
  return riseBetween(at[0], at[1], liftOver({ lengthM: 31, lineOhmPerM: R }, exportPhasors(sources, voltage)), voltage);
}

test('line and neutral, by hand: ΔU = 2 · 31 m · 3.564 mΩ/m · 15.652 A = 3.459 V', () => {
  expect(rise('single-phase', [{ from: 0, to: 'N', powerW: 9 * 400 }], [0, 'N'])).toBeCloseTo(3.4586, 3);
});

test('line to line on split-phase: the neutral carries nothing and both legs rise, 2 R I across 240 V', () => {
  const powerW = 9 * 290;
  const sources: PhasorSource[] = [{ from: 0, to: 1, powerW }];
  expect(magnitudes(exportPhasors(sources, sourcePhasors('split-phase', 120)))[3]).toBeCloseTo(0, 12);
  expect(rise('split-phase', sources, [0, 1], 120)).toBeCloseTo((2 * 31 * R * powerW) / 240, 9);
});

test('balanced three-phase: one conductor counts, R I', () => {
  const sources = ([0, 1, 2] as const).map((from) => ({ from, to: 'N' as const, powerW: 2000 }));
  expect(rise('three-phase', sources, [1, 'N'])).toBeCloseTo((31 * R * 2000) / 230, 9);
});

test('unlike lines: as the four-wire closed form, to the second order it leaves out', () => {
  // 9, 9 and 8 units of 400 VA: the form for drops gives the same run from the source end, with signs turned
  const amps = [9, 9, 8].map((n) => (n * 400) / 230);
  const closed = fourWireChange({
    phaseCurrentA: amps.map((a) => -a),
    lengthM: 31,
    rOhmPerKm: R * 1000,
    neutralROhmPerKm: R * 1000,
    sourcePhaseV: 230,
  });
  const sources = [9, 9, 8].map((n, line) => ({ from: line as 0 | 1 | 2, to: 'N' as const, powerW: n * 400 }));
  // magnitude of a turned phasor against its projection: (ΔV⊥)²/2V, here below 0.1 mV
  expect(rise('three-phase', sources, [0, 'N'])).toBeCloseTo(-closed.phases.A.dropV, 3);
  expect(rise('three-phase', sources, [2, 'N'])).toBeCloseTo(-closed.phases.C.dropV, 3);
});

test('refuses a source between a line and itself', () => {
  expect(() => exportPhasors([{ from: 0, to: 0, powerW: 1 }], sourcePhasors('three-phase', 230))).toThrow(
    'Name two different lines',
  );
});
