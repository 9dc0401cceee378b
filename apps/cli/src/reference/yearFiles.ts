import { camelKey } from '../camelKeys.ts';
import {
  asked,
  type FindFile,
  idOf,
  isJson,
  type Json,
  type ReferenceFile,
  type ReferenceShape,
  rowsIn,
  without,
} from './shape.ts';
import type { Tally } from './tally.ts';
import { toleranceOf } from './tolerance.ts';

const HORIZON_TOLERANCE: Readonly<Record<string, string>> = {
  sun_up_h: 'sun_up_h',
  blocked_h: 'blocked_h',
  beam_normal_clear_kwh_m2: 'beam_kwh_m2',
  beam_normal_blocked_kwh_m2: 'beam_kwh_m2',
};

/** Tries every field of a group such as `monthly` against the same group of the result. */
function tryGroup(
  { calc, group, entryOf }: { calc: string; group: 'annual' | 'monthly'; entryOf: (field: string) => string },
  row: Json,
  { id, where, tolerance, tally }: { id: string; where: string; tolerance: unknown; tally: Tally },
  result: Json | string,
): void {
  const wanted = row[group];
  if (!isJson(wanted)) return;
  for (const [field, want] of Object.entries(wanted)) {
    const quantity = `${calc} ${group} ${camelKey(field)}`;
    const allowed = toleranceOf(tolerance, entryOf(field));
    if (allowed === undefined) tally.skip(quantity, where, 'the file states no tolerance');
    else if (typeof result === 'string') tally.noAnswer(quantity, id, result);
    else tally.group(quantity, id, (result[group] as Json)[camelKey(field)], want, allowed);
  }
}

/** horizon.json */
export const horizonShape: ReferenceShape = {
  about: 'horizon-blocking',
  knows: ({ rows }) => rowsIn(rows)[0]?.horizon_azimuth_elevation_deg !== undefined,
  run({ name, document }, tally) {
    rowsIn(document.rows).forEach((row, at) => {
      const about = { id: idOf(row, at), where: name, tolerance: document.tolerance, tally };
      const result = asked('horizon-blocking', row);
      const entryOf = (field: string) => HORIZON_TOLERANCE[field] ?? field;
      for (const group of ['monthly', 'annual'] as const)
        tryGroup({ calc: 'horizon-blocking', group, entryOf }, row, about, result);
      const allowed = toleranceOf(document.tolerance, 'interpolation');
      const quantity = 'horizon-blocking interpolationCheck';
      if (row.interpolation_check === undefined || allowed === undefined) return;
      if (typeof result === 'string') tally.noAnswer(quantity, about.id, result);
      else tally.group(quantity, about.id, result.interpolationCheck, row.interpolation_check, allowed);
    });
  },
};

/** Names a row's weather may have: its own, and those its file's table gives it. */
function weatherNames(row: Json, about: Json | undefined): string[] {
  const names = [row.weather_file, about?.hourly_file, about?.raw_file, row.weather];
  return names.filter((name): name is string => typeof name === 'string');
}

function tryYear(row: Json, id: string, file: ReferenceFile, tally: Tally, find: FindFile): void {
  const { files, parameters, tolerance } = file.document;
  const about = rowsIn(files).find(({ key }) => key === row.weather);
  const names = weatherNames(row, about);
  const found = names.map((name) => find(file, name)).find((each) => each !== undefined);
  if (found === undefined) {
    tally.skip('plane-year', file.name, `its weather was not found: ${names.join(', ') || 'it names none'}`);
    return;
  }
  const place = about === undefined ? {} : without(about, ['key', 'format', 'raw_file', 'hourly_file', 'publisher']);
  const input = { ...place, ...(isJson(parameters) ? parameters : {}), ...row, weather_file: found.path };
  const result = asked('plane-year', input, new Map([[found.path, found.bytes]]));
  const to = { id, where: file.name, tolerance, tally };
  for (const group of ['annual', 'monthly'] as const) {
    const entryOf = (field: string) => (field === 'cell_c_weighted_by_poa' ? field : `${group}_energy`);
    tryGroup({ calc: 'plane-year', group, entryOf }, row, to, result);
  }
}

/** annual.json */
export const planeYearShape: ReferenceShape = {
  about: 'plane-year',
  knows: ({ rows, parameters }) => {
    const [first] = rowsIn(rows);
    return isJson(parameters) && first !== undefined && 'weather' in first && isJson(first.annual);
  },
  run(file, tally, find) {
    rowsIn(file.document.rows).forEach((row, at) => void tryYear(row, idOf(row, at), file, tally, find));
  },
};
