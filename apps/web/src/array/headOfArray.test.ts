import type { Plan } from '@eaveline/plan';
import { expect, test } from 'vitest';
import { headOfArray } from './headOfArray.ts';

const module = (planeId: string, side = 1) => ({ planeId, clear: { eave: 1, ridge: 1, side } });
const planes = ['n', 'e'].map((id) => ({ id, edges: [{ side: 'left', setbackM: 0.25 }] }));
const plan = (modules: object[]) =>
  ({ array: { modules }, roof: { planes }, energy: { annualKwh: 15800, rangeKwh: [14600, 17000] } }) as unknown as Plan;

test('modules, planes, the year and its range', () => {
  expect(headOfArray(plan([module('n'), module('n'), module('e')]))).toEqual({
    sentence: 'Three modules on two planes make 15.8 MWh a year.',
    quiet: 'Nine years in ten: 14.6 to 17.0. All keep their setbacks and clear rings.',
  });
});

test('one 240 mm from a side that wants 250 is said', () => {
  expect(headOfArray(plan([module('n', 0.24)])).quiet).toContain('One lies where none may.');
});
