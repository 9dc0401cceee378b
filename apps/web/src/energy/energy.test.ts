import type { Plan } from '@eaveline/plan';
import { expect, test } from 'vitest';
import { bestMonth, dayKwh, meanDay } from './meanDay.ts';
import { planeYears } from './planeYears.ts';
import { summerHours } from './summerHours.ts';

test('the clock stands an hour ahead in the summer of the place, wherever its summer lies', () => {
  // Victoria keeps summer time from October to April, Great Britain from March to October; Queensland never does
  expect(summerHours('Australia/Melbourne')).toEqual([1, 1, 1, 0, 0, 0, 0, 0, 0, 1, 1, 1]);
  expect(summerHours('Europe/London')).toEqual([0, 0, 0, 1, 1, 1, 1, 1, 1, 1, 0, 0]);
  expect(summerHours('Australia/Brisbane')).toEqual(Array(12).fill(0));
});

const at = (...hours: [hour: number, w: number][]) => {
  const day = Array<number>(24).fill(0);
  for (const [hour, w] of hours) day[hour] = w;
  return day;
};

test('noon by standard time is one by the summer clock, and there it meets what the house uses', () => {
  const energy = { meanDayW: [at([12, 3000], [18, 500])], loads: { hourlyW: at([13, 800], [19, 900]) } };
  const summer = meanDay(energy, 0, 1);
  expect(summer.sunW[13]).toBe(3000);
  // 3.0 and 0.5 kWh made; 0.8 and 0.9 used; at once the lesser of each pair: 0.8 + 0.5
  expect(dayKwh(summer)).toEqual({ made: 3.5, used: 1.7, atOnce: 1.3 });
  expect(dayKwh(meanDay(energy, 0, 0)).atOnce).toBe(0);
});

test('where the house is not known only what is made is said', () => {
  expect(dayKwh(meanDay({ meanDayW: [at([12, 3000])], loads: {} }, 0, 0))).toEqual({ made: 3 });
});

test('the best month is the one that makes most', () => {
  expect(bestMonth([3, 9, 4])).toBe(1);
});

test('a plane sums its modules; shade counts by what each makes; a bare plane is left out', () => {
  const working = { name: '', value: 0, unit: 'kWh', source: '' };
  const month = (kwh: number) => Array<number>(12).fill(kwh / 12);
  const plan = {
    roof: {
      planes: [
        { id: 'n', name: 'North' },
        { id: 's', name: 'South' },
      ],
    },
    array: {
      modules: [
        { id: 'a', planeId: 'n', pmpW: 400 },
        { id: 'b', planeId: 'n', pmpW: 400 },
      ],
    },
    energy: {
      modules: [
        { moduleId: 'a', annualKwh: 600, shadeLoss: 0.1, clippedKwh: 2, monthlyKwh: month(600), working },
        { moduleId: 'b', annualKwh: 400, shadeLoss: 0, clippedKwh: 1, monthlyKwh: month(400), working },
      ],
    },
  } as unknown as Plan;
  const [north, ...others] = planeYears(plan);
  expect(others).toEqual([]);
  expect(north).toMatchObject({ name: 'North', modules: 2, kw: 0.8, kwh: 1000, clippedKwh: 3 });
  expect(north?.shadeLoss).toBeCloseTo(0.06, 12); // 0.1 · 600 ÷ 1000
  expect(north?.monthlyKwh[6]).toBeCloseTo(1000 / 12, 9);
});
