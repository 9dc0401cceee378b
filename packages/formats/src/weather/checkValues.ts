import type { RemarkLog } from '../reading/remarkLog.ts';
import type { WeatherQuantity, WeatherYear } from './weatherYear.ts';

/** Annual global horizontal radiation found on inhabited land, kWh/m² (formats of open weather data, common experience). */
const ANNUAL_GHI = [600, 2700] as const;

const CONSTANT: readonly (readonly [WeatherQuantity, string])[] = [
  ['ghi', 'Global radiation'],
  ['airC', 'Temperature'],
  ['windMS', 'Wind speed'],
];

/** Doubts about a year as a whole: an annual sum that no place has, a column that never changes. */
export function checkValues(year: WeatherYear, log: RemarkLog): void {
  const ghi = year.annual?.ghiKwhM2;
  if (ghi !== undefined && (ghi < ANNUAL_GHI[0] || ghi > ANNUAL_GHI[1])) {
    log.add({
      severity: 'warn',
      code: 'annual-odd',
      field: 'global horizontal radiation',
      found: `The year sums to ${Math.round(ghi)} kWh/m².`,
      wanted: `${ANNUAL_GHI[0]} to ${ANNUAL_GHI[1]} kWh/m² is found on land.`,
      done: 'It was used as it is.',
    });
  }
  for (const [name, word] of CONSTANT) {
    const values = year[name].filter((_, i) => year.has[name][i] === 1);
    if (values.length < 48 || values.some((value) => value !== values[0])) continue;
    log.add({
      severity: 'warn',
      code: 'column-constant',
      field: name,
      found: `${word} is ${values[0]} in all ${values.length} hours.`,
      wanted: 'It should change from hour to hour.',
      done: 'It was used as it is.',
    });
  }
}
