import type { Plan } from '@eaveline/plan';
import { expect, test } from 'vitest';
import { headOfArray } from './headOfArray.ts';

const module = (planeId: string, side = 1) => ({ planeId, clear: { eave: 1, ridge: 1, side } });
const plan = (modules: object[]) =>
  ({ array: { modules }, energy: { annualKwh: 15800, rangeKwh: [14600, 17000] } }) as unknown as Plan;

test('modules, planes, the year and its range', () => {
  expect(headOfArray(plan([module('n'), module('n'), module('e')]))).toEqual({
    sentence: 'Three modules on two planes make 15.8 MWh a year.',
    quiet: 'Nine years in ten: 14.6 to 17.0. None lies over an edge or in a clear ring.',
  });
});

test('one over an edge is said', () => {
  expect(headOfArray(plan([module('n', -0.02)])).quiet).toContain('One lies where none may.');
});
