import { expect, test } from 'vitest';
import fixture from '../../fixtures/elec-voltage.json' with { type: 'json' };
import { longestRoute, millivoltChange, oneSourceTerminalV, threePhaseChange, twoWireChange } from './closedForms.ts';
import { type DistributedInput, distributedRise } from './distributedRise.ts';
import { fourWireChange, neutralCurrentA } from './fourWire.ts';
import { powerFlow } from './powerFlow.ts';
import { fedTrunkRise, type Span, trunkRiseV } from './trunkRise.ts';

const RHO = 0.0225; // copper in service, Ω·mm²/m: IEC 60364-5-52:2009, Annex G (from memory)
const cable = (lengthM: number, areaMm2: number): Span => ({ lengthM, ohmPerM: RHO / areaMm2 });

test('nine units of 400 VA on a 2.5 mm² trunk behind 12 m of 4 mm², worked by hand', () => {
  // i     = 400 VA / 230 V                                = 1.7391 A
  // feed  = 2 · 12.00 m · 0.0225/4.0 · 9 i                = 2.113 V
  // trunk = 2 ·  1.20 m · 0.0225/2.5 · (8 + 7 + … + 1) i  = 1.352 V
  const spans = [cable(12, 4), ...Array.from({ length: 8 }, () => cable(1.2, 2.5))];
  const riseV = trunkRiseV(spans, new Float64Array(9).fill(400 / 230));
  expect(riseV[0]).toBeCloseTo(2.113, 3);
  expect(riseV[8]).toBeCloseTo(3.465, 3);
});

test('the same trunk fed at its fifth drop: two arms of four, 10 i instead of 36 i', () => {
  // arm = 2 · 1.20 m · 0.0225/2.5 · (4 + 3 + 2 + 1) i = 0.3757 V, feed as before
  const got = fedTrunkRise({
    dropAtM: Array.from({ length: 9 }, (_, k) => k * 1.2),
    feedAtM: 4.8,
    exportA: new Float64Array(9).fill(400 / 230),
    trunkOhmPerM: RHO / 2.5,
    feed: [cable(12, 4)],
  });
  expect(got.feedV).toBeCloseTo(2.113, 3);
  expect(got.highestV - got.feedV).toBeCloseTo(0.3757, 4);
  expect(got.riseV[0]).toBeCloseTo(got.riseV[8] as number, 12);
  expect(got.riseV[4]).toBe(got.feedV);
  expect(got.armA[0] / (400 / 230)).toBeCloseTo(4, 12);
  expect(got.armA[1] / (400 / 230)).toBeCloseTo(5, 12);
});

test('law: a trunk fed at its end by fedTrunkRise is trunkRiseV', () => {
  const exportA = [1.7, 0.9, 1.2, 0];
  const fed = fedTrunkRise({ dropAtM: [1, 2.2, 3.4, 4.6], feedAtM: 0, exportA, trunkOhmPerM: 0.009 });
  const plain = trunkRiseV(
    [1, 1.2, 1.2, 1.2].map((lengthM) => ({ lengthM, ohmPerM: 0.009 })),
    exportA,
  );
  plain.forEach((v, k) => {
    expect(fed.riseV[k]).toBeCloseTo(v, 12);
  });
});

const example = (id: string) => {
  const found = fixture.examples.find((e) => e.id === id);
  if (!found) throw new Error(`no example ${id} in the fixture`);
  return found as unknown as {
    inputs: never;
    expected: Record<string, number | number[] | object>;
    exactConstantPowerV?: number;
  };
};
const near = (got: number, want: unknown) => expect(Math.abs(got / (want as number) - 1)).toBeLessThan(1e-5);

test('two wires with reactance, and a three-phase sub-main (worked elsewhere, relative 1e-5)', () => {
  const two = example('VD-S04');
  near(twoWireChange(two.inputs).volts, two.expected.volts);
  near(twoWireChange(two.inputs).percent, two.expected.percent);
  const three = example('VD-S06');
  near(threePhaseChange(three.inputs).voltsLineToLine, three.expected.voltsLineToLine);
});

test.each(['VD-S07', 'VD-S08', 'VD-S09'])('equal units spread along a trunk, %s', (id) => {
  const { inputs, expected, exactConstantPowerV } = example(id);
  const got = distributedRise(inputs);
  near(got.homeRunV, expected.homeRunV);
  near(got.trunkV, expected.trunkV);
  near(got.totalRisePercent, expected.totalRisePercent);
  const profile = expected.profileAlongLongestArmV as number[];
  expect(got.profileAlongLongestArmV).toHaveLength(profile.length);
  got.profileAlongLongestArmV.forEach((v, k) => {
    near(v, profile[k]);
  });
  near(constantPowerHighestV(inputs), exactConstantPowerV);
});

/** The same trunk solved at constant power by the general method. */
function constantPowerHighestV(d: DistributedInput): number {
  const arms = typeof d.moduleInverters === 'number' ? [d.moduleInverters] : d.moduleInverters;
  const wires = { conductors: ['A', 'N'] } as const;
  const segments = [{ ...wires, id: 'h', from: 'SRC', to: 'J', lengthM: d.homeRunM, rOhmPerKm: d.homeRunROhmPerKm }];
  const injections: { node: string; between: ['A', 'N']; kind: string; pW: number }[] = [];
  arms.forEach((n, a) => {
    for (let k = 0; k < n; k++) {
      const id = `${a}-${k}`;
      const from = k === 0 ? 'J' : `${a}-${k - 1}`;
      segments.push({ ...wires, id, from, to: id, lengthM: k ? d.pitchM : d.firstDropM, rOhmPerKm: d.trunkROhmPerKm });
      injections.push({ node: id, between: ['A', 'N'], kind: 'module-inverter', pW: d.powerEachW });
    }
  });
  const got = powerFlow({ system: 'single-phase', nominalV: d.nominalV, segments, injections });
  return got.highestModuleInverter?.terminalV as number;
}

test.each(['VD-S10', 'VD-S11'])('four wires, unequal currents, %s', (id) => {
  const { inputs, expected } = example(id);
  const got = fourWireChange(inputs);
  near(got.neutralCurrentA, expected.neutralCurrentA);
  near(got.neutralEndVoltageV, expected.neutralEndVoltageV);
  const phases = expected.phases as Record<'A' | 'B' | 'C', { loadEndPhaseToNeutralV: number; dropV: number }>;
  for (const p of ['A', 'B', 'C'] as const) near(got.phases[p].dropV, phases[p].dropV);
});

test('20 A of sun on A and 20 A of load on B put 34.6 A in the neutral, not 0 and not 20', () => {
  // √(20² + 20² + 20·20) = 20·√3
  expect(neutralCurrentA(-20, 20, 0)).toBeCloseTo(34.64, 2);
  expect(neutralCurrentA(7, 7, 7)).toBe(0);
});

test('City & Guilds 2391 lesson: 18 mV/A/m, 16 A, 18 m, published as 5.18 V', () => {
  const got = millivoltChange({ mvPerAM: 18, currentA: 16, lengthM: 18, nominalV: 230 });
  expect(got.volts).toBeCloseTo(5.18, 2);
  expect(got.percent).toBeCloseTo(2.2539, 4);
});

test('EC&M magazine: 480 V three-phase, 10 AWG at 1.1 Ω per 1000 ft, 200 ft, 20 A: 7.62 V (printed as 7.7)', () => {
  const got = threePhaseChange({ lineCurrentA: 20, lengthM: 60.96, rOhmPerKm: 1.1 / 0.3048, nominalLineV: 480 });
  expect(got.voltsLineToLine).toBeCloseTo(7.621, 3);
});

test('3000 VA on 2.5 mm² at 70 °C reaches 19.9 m at 2 %', () => {
  // I = 13.0435 A, 2·8.866 mΩ/m = 17.732 mV/A/m, 4.6 V / (17.732e-3·13.0435) = 19.889 m
  const got = longestRoute({ ratedVa: 3000, nominalV: 230, rOhmPerKm: 8.866065, limitPercent: 2 });
  expect(got.longestRouteM).toBeCloseTo(19.8886, 4);
});

test('one source through an impedance: the closed form and the sweeps agree to 1e-9 V', () => {
  const exact = oneSourceTerminalV({ sourceV: 230, pW: 5000, qVar: -900, loopROhm: 0.6, loopXOhm: 0.1 });
  const swept = powerFlow({
    system: 'single-phase',
    nominalV: 230,
    segments: [{ id: 's', from: 'SRC', to: 'X', conductors: ['A', 'N'], zPhaseOhm: [0.4, 0.1], zNeutralOhm: [0.2, 0] }],
    injections: [{ node: 'X', between: ['A', 'N'], pW: 5000, qVar: -900 }],
  });
  expect(swept.terminals[0]?.terminalV).toBeCloseTo(exact, 9);
});

test('refuses lengths and lists without meaning, and says how to mend them', () => {
  expect(() => trunkRiseV([cable(-1, 2.5)], [1.74])).toThrow('spans[0].lengthM is -1');
  expect(() => trunkRiseV([cable(1, 2.5)], [])).toThrow('exportA.length is 0; it has to be 1, one per span');
  expect(() => twoWireChange({ currentA: 1, lengthM: 0, rOhmPerKm: 1, nominalV: 230 })).toThrow(
    'lengthM is 0; it has to be greater than 0. Measure along the cable.',
  );
  expect(() => oneSourceTerminalV({ sourceV: 230, pW: -50000, loopROhm: 1 })).toThrow('no steady voltage exists');
  const drops = { dropAtM: [2, 1], feedAtM: 0, exportA: [1, 1], trunkOhmPerM: 0.01 };
  expect(() => fedTrunkRise(drops)).toThrow('List the drops in their order');
});
