import type { RemarkLog } from '../reading/remarkLog.ts';
import type { OrderedHours } from './orderHours.ts';
import {
  type HourRow,
  WEATHER_QUANTITIES,
  type WeatherPlace,
  type WeatherQuantity,
  type WeatherSums,
  type WeatherYear,
} from './weatherYear.ts';

const WORD: Record<WeatherQuantity, string> = {
  ghi: 'global radiation',
  dni: 'direct radiation',
  dhi: 'diffuse radiation',
  airC: 'temperature',
  windMS: 'wind speed',
};

/** Hours in order to typed arrays, masks, counts and sums; says how many values are missing. */
export function takeYear(
  { rows, hoursInYear, wholeYear }: OrderedHours,
  place: WeatherPlace | undefined,
  sourceText: string,
  sunShiftH: number,
  log: RemarkLog,
): WeatherYear {
  const column = (name: WeatherQuantity) => Float64Array.from(rows, (row) => row[name] ?? 0);
  const mask = (name: WeatherQuantity) => Uint8Array.from(rows, (row) => (row[name] === undefined ? 0 : 1));
  const ofEach = <T>(make: (name: WeatherQuantity) => T) =>
    Object.fromEntries(WEATHER_QUANTITIES.map((name) => [name, make(name)])) as Record<WeatherQuantity, T>;

  const values = ofEach(column);
  const has = ofEach(mask);
  const covered = ofEach((name) => has[name].reduce((sum, one) => sum + one, 0));
  remarkMissing(covered, rows.length, wholeYear, log);
  const sums = sumsOf(values, covered);
  return {
    place,
    stepS: 3600,
    sunTimeMs: Float64Array.from(rows, (row) => row.sunTimeMs),
    month: Uint8Array.from(rows, (row) => row.month),
    ...values,
    has,
    covered,
    albedo: albedoOf(rows),
    hoursInYear,
    sums,
    annual: wholeYear ? annualOf(sums, covered, hoursInYear) : undefined,
    sunShiftH,
    sourceText,
  };
}

function sumsOf(
  values: Readonly<Record<WeatherQuantity, Float64Array>>,
  covered: Readonly<Record<WeatherQuantity, number>>,
): WeatherSums {
  const total = (name: WeatherQuantity, divisor: number) =>
    covered[name] === 0 ? undefined : values[name].reduce((sum, value) => sum + value, 0) / divisor;
  return {
    ghiKwhM2: total('ghi', 1000),
    dniKwhM2: total('dni', 1000),
    dhiKwhM2: total('dhi', 1000),
    meanAirC: total('airC', covered.airC),
    meanWindMS: total('windMS', covered.windMS),
  };
}

/** The sums as annual figures; those that cover less than nine tenths of the year are not known. */
function annualOf(
  sums: WeatherSums,
  covered: Readonly<Record<WeatherQuantity, number>>,
  hoursInYear: number,
): WeatherSums {
  const enough = (name: WeatherQuantity, value: number | undefined) =>
    covered[name] >= 0.9 * hoursInYear ? value : undefined;
  return {
    ghiKwhM2: enough('ghi', sums.ghiKwhM2),
    dniKwhM2: enough('dni', sums.dniKwhM2),
    dhiKwhM2: enough('dhi', sums.dhiKwhM2),
    meanAirC: enough('airC', sums.meanAirC),
    meanWindMS: enough('windMS', sums.meanWindMS),
  };
}

/** Albedo where at least half of the hours give one; the others take the mean of those. */
function albedoOf(rows: readonly HourRow[]): Float64Array | undefined {
  const given = rows.map((row) => row.albedo).filter((value) => value !== undefined);
  if (given.length === 0 || given.length < rows.length / 2) return undefined;
  const mean = given.reduce((sum, value) => sum + value, 0) / given.length;
  return Float64Array.from(rows, (row) => row.albedo ?? mean);
}

function remarkMissing(
  covered: Readonly<Record<WeatherQuantity, number>>,
  rows: number,
  wholeYear: boolean,
  log: RemarkLog,
): void {
  const parts: string[] = [];
  const missing = (name: WeatherQuantity) => rows - covered[name];
  const allRadiation = missing('ghi') > 0 && missing('ghi') === missing('dni') && missing('ghi') === missing('dhi');
  if (allRadiation) parts.push(`${missing('ghi')} hours have no radiation`);
  for (const name of WEATHER_QUANTITIES) {
    if (missing(name) === 0 || (allRadiation && /^(ghi|dni|dhi)$/.test(name))) continue;
    parts.push(
      parts.length === 0 ? `${missing(name)} hours have no ${WORD[name]}` : `${missing(name)} no ${WORD[name]}`,
    );
  }
  if (parts.length === 0) return;
  log.add({
    severity: 'warn',
    code: 'values-missing',
    found: `${parts.join(', ')}.`,
    wanted: 'Every hour should have every value.',
    done: `They were left out; ${wholeYear ? 'the annual sum covers' : 'the sums cover'} ${covered.ghi} hours of radiation.`,
  });
}
