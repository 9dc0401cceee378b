import type { Plan } from '@eaveline/plan';
import { expect, test } from 'vitest';
import { headOfBackup } from './headOfBackup.ts';

const backup = { present: true, circuits: [], lines: ['L1'], leftDark: [], night: { fullH: 49.4 } };
const plan = (findings: object[], more: object = {}) =>
  ({ backup: { ...backup, ...more }, checks: { findings } }) as unknown as Plan;
const start = (name: string, state: string) => ({ rule: 'backup-start', about: { name }, state });

test('hours of the night stand in the sentence, the start that fails below it', () => {
  expect(headOfBackup(plan([start('Air-conditioner', 'fails'), start('Fridge', 'meets')]))).toEqual({
    sentence: 'Full, the battery carries the night\u2019s load for 49 hours.',
    quiet: 'Air-conditioner asks more than it gives to start. It stands on L1.',
  });
});

test('every motor starts only where every one was judged to', () => {
  expect(headOfBackup(plan([start('Fridge', 'meets')])).quiet).toContain('Every motor starts on it');
  expect(headOfBackup(plan([])).quiet).not.toContain('Every motor');
});

test('no backup is said plainly', () => {
  expect(headOfBackup(plan([], { present: false })).sentence).toBe(
    'No backup in this job. In an outage the house goes dark.',
  );
});
