import type { Plan } from '@eaveline/plan';
import { expect, test } from 'vitest';
import { headOfRoof } from './headOfRoof.ts';

const plane = (name: string, annualKwhM2: number, raftersU: number[] | undefined) => ({
  name,
  usableAreaM2: 40,
  raftersU,
  sun: { annualKwhM2 },
});

test('free roof, the sunniest plane, and where rafters are not measured', () => {
  const plan = { roof: { planes: [plane('North', 1799, [0.3]), plane('West', 1522, undefined)] } } as unknown as Plan;
  expect(headOfRoof(plan)).toEqual({
    sentence: 'Two planes, 80 m\u00b2 free for modules.',
    quiet:
      'North sees most sun, 1\u202f799 kWh/m\u00b2 a year. Rafters are not measured on West: feet there are nominal.',
  });
});
