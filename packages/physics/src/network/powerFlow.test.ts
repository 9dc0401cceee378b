import { expect, test } from 'vitest';
import fixture from '../../fixtures/elec-loadflow.json' with { type: 'json' };
import { compileFlow, type FlowCase, type FlowInjection, type FlowSegment } from './flowNetwork.ts';
import { powerFlow } from './powerFlow.ts';
import { coldState, runFlow } from './radialFlow.ts';

// 1e-6 V, 1e-6 A, 1e-4 W is what the reference asks of a tool; its own figures hold to 1e-10, so 1e-8 is asked here.
test.each(fixture.cases.map((c) => [c.id, c.title, c] as const))('%s: %s', (_id, _title, c) => {
  const { expected } = c;
  const got = powerFlow(c as unknown as FlowCase);

  expect(got.terminals).toHaveLength(expected.terminalV.length);
  got.terminals.forEach((t, i) => {
    expect(Math.abs(t.terminalV - (expected.terminalV[i] as number))).toBeLessThan(1e-8);
  });
  for (const [node, shiftV] of Object.entries(expected.neutralShiftV)) {
    expect(Math.abs((got.neutralShiftV[node] as number) - shiftV)).toBeLessThan(1e-8);
  }
  const first = got.segmentCurrentA[c.segments[0]?.id as string];
  for (const [wire, [re, im]] of Object.entries(expected.firstSegmentCurrentA) as [keyof typeof first, number[]][]) {
    expect(first?.[wire]?.[0]).toBeCloseTo(re as number, 8);
    expect(first?.[wire]?.[1]).toBeCloseTo(im as number, 8);
  }
  expect(got.lossesW).toBeCloseTo(expected.lossesW, 7);
  expect(got.reactiveLossesVar).toBeCloseTo(expected.reactiveLossesVar, 7);
  expect(got.sourcePW).toBeCloseTo(expected.sourcePW, 6);
  expect(got.sourceQVar).toBeCloseTo(expected.sourceQVar, 6);
  expect(got.highestModuleInverter?.node).toBe(expected.highestModuleInverter.node);
  expect(got.highestRiseFromPointOfSupply?.node).toBe(expected.highestRiseFromPointOfSupply.node);
  expect(got.highestRiseFromPointOfSupply?.percentOfNominal).toBeCloseTo(
    expected.highestRiseFromPointOfSupply.percentOfNominal,
    8,
  );
});

const wire = (id: string, from: string, to: string, lengthM: number, rOhmPerKm = 7.41): FlowSegment => ({
  id,
  from,
  to,
  conductors: ['A', 'N'],
  lengthM,
  rOhmPerKm,
});
const unit = (node: string, pW: number): FlowInjection => ({ node, between: ['A', 'N'], kind: 'module-inverter', pW });

test('law: what the source and the injections give is what the wires lose', () => {
  for (const c of fixture.cases) {
    const flow = c as unknown as FlowCase;
    const got = powerFlow(flow);
    const put = flow.injections.reduce((sum, j) => sum + j.pW, 0);
    expect(got.sourcePW + put).toBeCloseTo(got.lossesW, 6);
  }
});

test('law: equal injections on A, B and C leave the neutral at zero', () => {
  const segment = {
    id: 's',
    from: 'SRC',
    to: 'X',
    conductors: ['A', 'B', 'C', 'N'],
    lengthM: 40,
    rOhmPerKm: 3,
  } as const;
  const got = powerFlow({
    system: 'three-phase-4w',
    nominalV: 230,
    segments: [segment],
    injections: (['A', 'B', 'C'] as const).map((p) => ({ node: 'X', between: [p, 'N'], pW: 3000 })),
  });
  expect(got.neutralShiftV.X).toBeLessThan(1e-9);
});

test('law: a segment written from the unit to the board gives the same voltage and the opposite current', () => {
  const flow = (seg: FlowSegment): FlowCase => ({
    system: 'single-phase',
    nominalV: 230,
    segments: [seg],
    injections: [unit('X', 2000)],
  });
  const out = powerFlow(flow(wire('s', 'SRC', 'X', 30)));
  const back = powerFlow(flow(wire('s', 'X', 'SRC', 30)));
  expect(back.terminals[0]?.terminalV).toBe(out.terminals[0]?.terminalV);
  expect(back.segmentCurrentA.s?.A?.[0]).toBe(-(out.segmentCurrentA.s?.A?.[0] as number));
  // the unit exports, so current runs from it to the board
  expect(back.segmentCurrentA.s?.A?.[0]).toBeGreaterThan(8);
});

test('a warm start ends where a cold one does, in no more rounds', () => {
  const net = compileFlow({
    system: 'single-phase',
    nominalV: 230,
    segments: [wire('s', 'SRC', 'X', 30)],
    injections: [unit('X', 2000)],
  });
  const cold = runFlow(net, [2050], [0]);
  const warm = runFlow(net, [2050], [0], runFlow(net, [2000], [0], coldState(net)));
  expect(warm.vRe[4]).toBeCloseTo(cold.vRe[4] as number, 9);
  expect(warm.rounds).toBeLessThanOrEqual(cold.rounds);
});

test('refuses a loop, an island, a missing conductor, and a load no cable carries', () => {
  const flow = (segments: FlowSegment[], injections: FlowInjection[] = []): FlowCase => ({
    system: 'single-phase',
    nominalV: 230,
    segments,
    injections,
  });
  const a = wire('a', 'SRC', 'X', 10);
  expect(() => powerFlow(flow([a, wire('b', 'X', 'Y', 5), wire('c', 'Y', 'SRC', 5)]))).toThrow('Open the loop');
  expect(() => powerFlow(flow([a, wire('b', 'P', 'Q', 5)]))).toThrow(
    'segments[1] is b; it has to be a way back to SRC',
  );
  expect(() => powerFlow(flow([{ ...a, conductors: ['A', 'B', 'N'] }]))).toThrow('Carry B all the way from SRC');
  expect(() => powerFlow(flow([a], [{ node: 'Z', between: ['A', 'N'], pW: 1 }]))).toThrow('injections[0] is Z A-N');
  expect(() => powerFlow(flow([wire('a', 'SRC', 'X', 1000)], [unit('X', -5000)]))).toThrow('no steady voltage');
  expect(() => powerFlow(flow([a], [unit('X', Number.NaN)]))).toThrow('pW[0] is NaN');
});
