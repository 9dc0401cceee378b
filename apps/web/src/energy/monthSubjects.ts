import type { Plan } from '@eaveline/plan';
import { sheetWorking } from '../pad/sheetWorking.ts';
import type { Subject } from '../pad/subject.ts';
import { dayKwh, meanDay } from './meanDay.ts';
import { MONTH_NAMES } from './monthNames.ts';
import { planeYears } from './planeYears.ts';
import { summerHours } from './summerHours.ts';

/** Every month as the sum of its planes, and its mean day beside what the house uses. */
export function monthSubjects(plan: Plan): Subject[] {
  const { energy, site } = plan;
  const planes = planeYears(plan);
  const ahead = summerHours(site.zone);
  return MONTH_NAMES.flatMap((name, m): Subject[] => {
    const inputs = planes.map((plane) =>
      sheetWorking(`${plane.name} plane`, plane.monthlyKwh[m] ?? 0, 'kWh', 'Σ of its modules', 'hour by hour', [], {
        decimals: 0,
      }),
    );
    const month = sheetWorking(
      `${name}, at the board`,
      energy.monthlyKwh[m] ?? 0,
      'kWh',
      'sum of the planes',
      'sheet 07',
      inputs,
      {
        decimals: 0,
      },
    );
    return [{ id: `month:${m + 1}`, name, working: month }, ...daySubject(plan, name, m, ahead[m] ?? 0)];
  });
}

function daySubject({ energy }: Plan, name: string, m: number, aheadH: number): Subject[] {
  const { made, used, atOnce } = dayKwh(meanDay(energy, m, aheadH));
  const title = `A mean day in ${name}`;
  const sun = sheetWorking('made by the sun', made, 'kWh', 'mean of its days, hour by hour', 'sheet 07', [], {
    decimals: 1,
  });
  if (used === undefined || atOnce === undefined) return [{ id: `day:${m + 1}`, name: title, working: sun }];
  const house = sheetWorking(
    'used by the house',
    used,
    'kWh',
    'the year ÷ 365, by the shape of its day',
    'the job',
    [],
    {
      decimals: 1,
    },
  );
  const working = sheetWorking(
    'Used as it is made, at most',
    atOnce,
    'kWh',
    'Σ over the hours of the lesser of the two',
    'means of hours',
    [sun, house],
    { decimals: 1, note: 'Cloud and use come and go within the hour and from day to day: the true figure lies below.' },
  );
  return [{ id: `day:${m + 1}`, name: title, working }];
}
