import { type ExistingFacts, type Job, kestrelRise, quaysideTerrace } from '@eaveline/job';
import { expect, test } from 'vitest';
import { workOut } from '../workOut.ts';

const generator = (more: Partial<ExistingFacts> = {}): ExistingFacts => ({
  kind: 'generator inlet',
  name: 'Inlet',
  ratedA: 32,
  lines: ['L1'],
  ...more,
});
const solar = (ratedA: number): ExistingFacts => ({ kind: 'solar', name: 'Old array', ratedA, lines: ['L1'] });

/** The board of a job with these things already there, its bars rated. */
function boardWith(job: Job, existing: Job['facts']['existing']) {
  const changed = structuredClone(job);
  changed.facts.existing = existing;
  changed.facts.board.busA = 200;
  return workOut(changed).board;
}
const quayside = (existing: Job['facts']['existing']) => boardWith(quaysideTerrace, existing);
const alone = quayside({});
const comparedA = (board: ReturnType<typeof quayside>) => board.bus.comparedA as number;

test('16 A of old solar on the one line: 16 A more on the bars', () => {
  const both = quayside({ old: solar(16) });
  expect(both.bus.sourceA - alone.bus.sourceA).toBeCloseTo(16, 9);
  expect(comparedA(both) - comparedA(alone)).toBeCloseTo(16, 9);
  expect(both.lineA.L1 - alone.lineA.L1).toBeCloseTo(16, 9);
  expect(both.thereA).toEqual({ L1: 16, L2: 0, L3: 0 });
});

test('a generator that nothing keeps from the network counts on top of it, 32 A; so does one nobody looked at', () => {
  expect(comparedA(quayside({ inlet: generator({ changeover: false }) })) - comparedA(alone)).toBeCloseTo(32, 9);
  expect(comparedA(quayside({ inlet: generator() })) - comparedA(alone)).toBeCloseTo(32, 9);
});

test('a generator behind a changeover feeds in place of the network: the larger of the two counts', () => {
  const { board, supply } = quaysideTerrace.facts;
  const networkA = Math.min(board.mainSwitchA ?? supply.serviceA, supply.serviceA);
  const small = quayside({ inlet: generator({ changeover: true, ratedA: networkA - 1 }) });
  const large = quayside({ inlet: generator({ changeover: true, ratedA: networkA + 20 }) });
  expect(comparedA(small)).toBe(comparedA(alone));
  expect(comparedA(large) - comparedA(alone)).toBeCloseTo(20, 9);
});

test('a car charger and a second board are loads: no source grows by them', () => {
  const there = quayside({
    charger: { kind: 'car charger', name: 'Charger', ratedA: 32, lines: ['L1'] },
    shed: { kind: 'second board', name: 'Shed', ratedA: 40, lines: ['L1'] },
  });
  expect(there.bus).toEqual(alone.bus);
  expect(there.lineA).toEqual(alone.lineA);
});

test('three lines: old solar on L1 alone is as many VA more between the lines', () => {
  // Kestrel Rise stands even or not; L1 gains 16 A · 230 V = 3 680 VA, the others nothing
  const before = boardWith(kestrelRise, {});
  const after = boardWith(kestrelRise, { old: solar(16) });
  expect(after.lineVA.L1 - before.lineVA.L1).toBeCloseTo(3680, 6);
  expect(after.lineVA.L2).toBe(before.lineVA.L2);
});

test('the bars of the checks fail by what was there: 100 A of bars, and the old array on top', () => {
  const job = structuredClone(quaysideTerrace);
  job.facts.board.busA = Math.ceil(comparedA(alone)) + 1;
  const state = (of: Job) => workOut(of).checks.findings.find(({ rule }) => rule === 'bus')?.state;
  expect(state(job)).toBe('meets');
  job.facts.existing = { old: solar(16) };
  expect(state(job)).toBe('fails');
});

test('old solar pushes through the mains too: 16 A over 30 m of 25 mm² copper lift every trunk by 0.780 V', () => {
  // IEC 60228: 0.727 Ω/km at 20 °C, · (1 + 0.00393 · 30) = 0.8127 Ω/km at 50 °C; 2 · 0.0008127 · 30 · 16 = 0.7802 V
  const trunkOf = (existing: Job['facts']['existing']) => {
    const job = structuredClone(quaysideTerrace);
    job.facts.existing = existing;
    job.facts.supply.mains = { lengthM: 30, conductor: { material: 'copper', areaMm2: 25, strandClass: 2 } };
    const [trunk] = workOut(job).trunks.trunks;
    if (trunk === undefined) throw new Error('Quayside Terrace has no trunk');
    return trunk;
  };
  const before = trunkOf({});
  const after = trunkOf({ old: solar(16) });
  expect(after.rise.mainsV - before.rise.mainsV).toBeCloseTo(0.7802, 3);
  expect(after.rise.totalV - before.rise.totalV).toBeCloseTo(0.7802, 3);
  // the array's own current and its home run are as they were
  expect(after.currentA).toBe(before.currentA);
  expect(after.rise.homeRunV).toBe(before.rise.homeRunV);
  // loads draw, they do not lift; a generator does not feed beside the network along the mains
  const charger: ExistingFacts = { kind: 'car charger', name: 'Charger', ratedA: 32, lines: ['L1'] };
  expect(trunkOf({ charger, inlet: generator() }).rise).toEqual(before.rise);
});
