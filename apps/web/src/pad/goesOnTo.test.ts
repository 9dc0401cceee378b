import { given, worked } from '@eaveline/plan';
import { expect, test } from 'vitest';
import { goesOnTo } from './goesOnTo.ts';
import { paged } from './subject.ts';

const length = given('Home run', 31, 'm', 'choices.trunks.a.homeRun.lengthM');
const rise = worked('Home run', 3.46, 'V', 'ΔU = 2 · L · r · I', 'by hand', [length]);
const total = worked('Far unit above the street', 5.32, 'V', 'sum', 'by hand', [rise]);
const all = [
  ...paged('04', [
    { id: 'length', name: 'Home run', working: length },
    { id: 'rise', name: 'Rise', working: rise },
    { id: 'total', name: 'Total', working: total },
  ]),
  ...paged('08', [{ id: 'other', name: 'Other', working: given('Home run', 30, 'm', 'elsewhere') }]),
];
const [lengthPlaced, , totalPlaced] = all;

test('a length goes on to what was made of it, at any depth, and not to a like-named one of another value', () => {
  if (lengthPlaced === undefined || totalPlaced === undefined) throw new Error('three subjects were placed');
  expect(goesOnTo(lengthPlaced, all).map(({ page }) => page)).toEqual(['04.2', '04.3']);
  expect(goesOnTo(totalPlaced, all)).toEqual([]);
});
