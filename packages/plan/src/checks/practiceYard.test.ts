import { practiceYard, practiceYardFaults } from '@eaveline/job';
import { expect, test } from 'vitest';
import type { RuleId } from '../rules/ruleLimits.ts';
import { checksOf } from './testing/checksOf.ts';

const yard = checksOf(practiceYard);
const found = (id: string) => yard.findings.find((finding) => finding.id === id);

/** Which rule sees which fault of the practice yard, and whether it fails or is asked. */
const SEEN_BY: Readonly<Record<string, readonly [RuleId, 'fails' | 'ask']>> = {
  rise: ['trunk-rise', 'fails'],
  'trunk-current': ['units-per-trunk', 'fails'],
  capacity: ['cable-capacity', 'fails'],
  'cold-voltage': ['cold-voltage', 'fails'],
  'short-current': ['short-circuit-current', 'fails'],
  breaking: ['breaking-capacity', 'fails'],
  'two-way': ['breaker-both-ways', 'fails'],
  fixing: ['fixing-covering', 'fails'],
  'clamp-zone': ['clamp-zone', 'fails'],
  setback: ['setbacks', 'fails'],
  flue: ['obstruction-clear', 'fails'],
  'drop-reach': ['drop-reach', 'fails'],
  'foot-uplift': ['foot-uplift', 'fails'],
  'battery-window': ['battery-clearance', 'fails'],
  'battery-room': ['battery-place', 'fails'],
  'battery-wall': ['battery-barrier', 'fails'],
  'battery-bollard': ['battery-vehicles', 'fails'],
  start: ['backup-start', 'fails'],
  'three-phase': ['backup-lines', 'fails'],
  'backup-run': ['backup-running', 'fails'],
  'backup-rcd': ['backup-residual-device', 'fails'],
  neutral: ['backup-neutral', 'ask'],
  // the 2024 edition's own limit was not found, so the older one is asked about
  balance: ['line-difference', 'ask'],
  export: ['export-limit', 'fails'],
  approved: ['network-approval', 'fails'],
  'free-ways': ['free-ways', 'fails'],
  'mixed-wiring': ['wiring-colours', 'ask'],
  backing: ['board-backing', 'ask'],
  'roof-asbestos': ['asbestos', 'ask'],
  'slope-measures': ['roof-measures', 'fails'],
};

const forChecks = practiceYardFaults.filter(({ foundBy }) => foundBy === 'checks');

test('the practice yard’s thirty faults of design each have a rule that is meant to see it', () => {
  expect(Object.keys(SEEN_BY).sort()).toEqual(forChecks.map(({ id }) => id).sort());
});

test.each(forChecks)('practice yard, $id: $what', ({ id }) => {
  const [rule, state] = SEEN_BY[id] as readonly [RuleId, 'fails' | 'ask'];
  const states = yard.findings.filter((finding) => finding.rule === rule).map((finding) => finding.state);
  expect(states).toContain(state);
});

test('the figures of the yard, by hand', () => {
  // 38.9 · (1 + 0.0025 · 33) = 42.11 V of 42; 13.9 · (1 + 0.00046 · 50) · 1.25 = 17.77 A of 13
  expect(found('cold-voltage:pellucid-430-alder-250')?.value).toBeCloseTo(42.109, 3);
  // 4.6 ÷ cos 20° = 4.8952 m; 5.1 is 4.18 % more
  expect(found('roof-measures:north')?.value).toBeCloseTo(4.184, 2);
  // 12 · 400 + 4 · 250 + 4600 + 6000 = 16 400 VA
  expect(found('network-approval:letter')?.value).toBeCloseTo(16.4, 6);
  // 0.1 m from the verge
  expect(found('setbacks:north-1-1-left')?.value).toBeCloseTo(100, 6);
});
