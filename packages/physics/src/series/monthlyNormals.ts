import { Refusal } from '../refusal.ts';

/** Monthly climate of a place, January first. What a year of weather can be made from. */
export interface MonthlyNormals {
  /** Mean daily global horizontal irradiation, kWh/m² a day. */
  readonly ghiKwhM2Day: readonly number[];
  /** Mean air temperature, °C. */
  readonly meanC: readonly number[];
  /** Mean of the daily maxima, °C. */
  readonly dayMaxC: readonly number[];
  /** Mean of the daily minima, °C. Far above a record low: no limit of a cold morning may rest on it. */
  readonly dayMinC: readonly number[];
  /** Mean wind speed, m/s, normally at 10 m; undefined where nobody measured it. */
  readonly windMS: readonly number[] | undefined;
}

/** Clearness of a month (radiation over what arrives outside the air) that a climate on Earth can have. */
export const MONTH_CLEARNESS = { least: 0.1, most: 0.85 } as const;

/**
 * Refuses monthly figures that no place has: not twelve of each, not finite, a maximum below the
 * minimum, wind below zero.
 *
 * @throws {Refusal} `length-mismatch`, `not-finite`, `inconsistent`, `outside-range`.
 */
export function checkNormals(normals: MonthlyNormals): void {
  const { ghiKwhM2Day, meanC, dayMaxC, dayMinC, windMS } = normals;
  twelve(ghiKwhM2Day, 'ghiKwhM2Day', 0, 15);
  twelve(meanC, 'meanC', -70, 50);
  twelve(dayMaxC, 'dayMaxC', -70, 60);
  twelve(dayMinC, 'dayMinC', -80, 50);
  if (windMS !== undefined) twelve(windMS, 'windMS', 0, 40);
  for (let m = 0; m < 12; m++) {
    if (dayMaxC[m] < dayMinC[m]) {
      throw new Refusal({
        code: 'inconsistent',
        at: `dayMaxC[${m}]`,
        got: dayMaxC[m],
        want: `at least dayMinC[${m}], ${dayMinC[m]}`,
        mend: 'Exchange the two, or look the month up again.',
      });
    }
  }
}

function twelve(values: readonly number[], at: string, low: number, high: number): void {
  if (values.length !== 12) {
    const mend = 'Give one figure a month, January first.';
    throw new Refusal({ code: 'length-mismatch', at: `${at}.length`, got: values.length, want: '12', mend });
  }
  for (let m = 0; m < 12; m++) {
    const value = values[m];
    if (value >= low && value <= high) continue;
    throw new Refusal({
      code: Number.isFinite(value) ? 'outside-range' : 'not-finite',
      at: `${at}[${m}]`,
      got: value,
      want: `${low} to ${high}`,
      mend: 'Look the month up again; mind the unit.',
    });
  }
}
