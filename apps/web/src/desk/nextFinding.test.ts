import type { Plan } from '@eaveline/plan';
import { expect, test } from 'vitest';
import { nextFinding } from './nextFinding.ts';

const plan = {
  checks: {
    findings: [
      { id: 'a', sheet: '04', state: 'fails' },
      { id: 'b', sheet: '06', state: 'ask' },
      { id: 'c', sheet: '05', state: 'meets' },
    ],
  },
  tests: { rows: [{ id: 't1' }, { id: 't2' }] },
} as unknown as Plan;

test('steps go round what does not meet, each on its own sheet; on sheet 08 they stay there', () => {
  expect(nextFinding(plan, '01', undefined, 1)).toEqual({ sheet: '04', id: 'a' });
  expect(nextFinding(plan, '04', 'a', 1)).toEqual({ sheet: '06', id: 'b' });
  expect(nextFinding(plan, '06', 'b', 1)).toEqual({ sheet: '04', id: 'a' });
  expect(nextFinding(plan, '08', 'a', -1)).toEqual({ sheet: '08', id: 'b' });
});

test('on sheet 11 they go from test to test', () => {
  expect(nextFinding(plan, '11', 't1', 1)).toEqual({ sheet: '11', id: 't2' });
});
