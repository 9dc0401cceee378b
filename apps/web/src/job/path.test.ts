import { expect, test } from 'vitest';
import { stepsOf, valueAt, withValueAt } from './path.ts';

const job = { facts: { supply: { mains: { lengthM: 18 } }, loads: { dayShape: [1, 2] } }, name: 'x' };

test('a value is read and written by its path, and what is not on the way stays the same object', () => {
  const longer = withValueAt(job, stepsOf('facts.supply.mains.lengthM'), 20);
  expect(valueAt(longer, ['facts', 'supply', 'mains', 'lengthM'])).toBe(20);
  expect(job.facts.supply.mains.lengthM).toBe(18);
  expect(longer.facts.loads).toBe(job.facts.loads);
});

test('undefined takes a field away; missing groups are made; a list stays a list', () => {
  expect(withValueAt(job, ['facts', 'supply', 'mains', 'lengthM'], undefined).facts.supply.mains).toEqual({});
  expect(valueAt(withValueAt(job, ['facts', 'network', 'name'], 'N'), ['facts', 'network'])).toEqual({ name: 'N' });
  expect(withValueAt(job, ['facts', 'loads', 'dayShape', '1'], 5).facts.loads.dayShape).toEqual([1, 5]);
  expect(valueAt(job, ['facts', 'nowhere', 'deep'])).toBeUndefined();
});
