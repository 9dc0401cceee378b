import type { RemarkLog } from '../reading/remarkLog.ts';
import { takeValue, type ValueRule } from './takeValue.ts';
import type { HourRow, WeatherQuantity } from './weatherYear.ts';

/** How the columns of a table with named columns are found and taken. */
export type ColumnRules = Readonly<Record<WeatherQuantity | 'albedo', ValueRule & { readonly column: string }>>;

/** Values of one line by the names of its columns. */
export type TakeLine = (fields: readonly string[], line: number) => Pick<HourRow, WeatherQuantity | 'albedo'>;

/** Names of columns that are looked for but not there, albedo aside. */
export function missingColumns(names: readonly string[], rules: ColumnRules): string[] {
  const wanted = Object.values(rules).filter((rule) => !rule.quiet);
  return wanted.map((rule) => rule.column).filter((column) => !names.includes(column));
}

/** A function that takes the values of one line, columns found by name and not by position. */
export function lineTaker(names: readonly string[], rules: ColumnRules, log: RemarkLog): TakeLine {
  const at = (key: keyof ColumnRules) => names.indexOf(rules[key].column);
  const places = {
    ghi: at('ghi'),
    dni: at('dni'),
    dhi: at('dhi'),
    airC: at('airC'),
    windMS: at('windMS'),
    albedo: at('albedo'),
  };
  return (fields, line) => {
    const value = (key: keyof ColumnRules) => takeValue(fields[places[key]], rules[key], line, log);
    return {
      ghi: value('ghi'),
      dni: value('dni'),
      dhi: value('dhi'),
      airC: value('airC'),
      windMS: value('windMS'),
      albedo: value('albedo'),
    };
  };
}

/** Stops when radiation columns are not there; warns when temperature or wind are not. */
export function checkColumns(names: readonly string[], rules: ColumnRules, line: number, log: RemarkLog): void {
  const absent = missingColumns(names, rules);
  if (absent.length === 0) return;
  const radiation = [rules.ghi, rules.dni, rules.dhi].map((rule) => rule.column);
  const stop = absent.some((name) => radiation.includes(name));
  log.add({
    severity: stop ? 'stop' : 'warn',
    code: 'column-missing',
    line,
    found: `Line ${line} names no column ${absent.join(', ')}.`,
    wanted: 'Global, direct and diffuse radiation, temperature and wind are needed.',
    done: stop ? 'Nothing was read.' : 'The file was read without.',
  });
}

/** The usual limits of each quantity; formats add their column names and codes for missing. */
export const USUAL: Readonly<Record<WeatherQuantity | 'albedo', ValueRule>> = {
  ghi: { name: 'global horizontal radiation', low: -10, high: 9998, floor: 0 },
  dni: { name: 'direct normal radiation', low: -10, high: 9998, floor: 0 },
  dhi: { name: 'diffuse horizontal radiation', low: -10, high: 9998, floor: 0 },
  airC: { name: 'air temperature', low: -60, high: 60 },
  windMS: { name: 'wind speed', low: 0, high: 80 },
  albedo: { name: 'albedo', low: 0, high: 1, quiet: true },
};
