import type { Reading } from '../reading/remark.ts';
import { remarkLog } from '../reading/remarkLog.ts';
import { readPvgis } from './readPvgis.ts';
import type { WeatherReadOptions, WeatherYear } from './weatherYear.ts';

type Json = Readonly<Record<string, unknown>>;

/**
 * Reads the JSON form of a PVGIS typical year: `inputs.location` and `outputs.tmy_hourly`, or a
 * saved array alone (then the place has to be given). The records are laid out as the CSV form
 * and read by {@link readPvgis}; line numbers in remarks count records from 1.
 */
export function readPvgisJson(text: string, options: WeatherReadOptions = {}): Reading<WeatherYear> {
  const root = parsed(text);
  const records = recordsOf(root);
  if (records === undefined) {
    const log = remarkLog();
    log.add({
      severity: 'stop',
      code: 'not-pvgis-json',
      found: root === undefined ? 'The file breaks off or is not JSON.' : 'The file has no outputs.tmy_hourly.',
      wanted: 'A typical year in JSON form was expected.',
      done: 'Nothing was read.',
    });
    return log.close<WeatherYear>('pvgis-json', undefined);
  }
  const reading = readPvgis(asCsv(root as Json, records, options), options);
  return { ...reading, what: 'pvgis-json' };
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    if (error instanceof SyntaxError) return undefined;
    throw error;
  }
}

function recordsOf(root: unknown): readonly Json[] | undefined {
  const list = Array.isArray(root) ? root : (at(root, 'outputs', 'tmy_hourly') ?? at(root, 'outputs', 'hourly'));
  return Array.isArray(list) && list.every((record) => typeof record === 'object' && record !== null)
    ? list
    : undefined;
}

function at(value: unknown, ...keys: readonly string[]): unknown {
  let inner = value;
  for (const key of keys) {
    if (typeof inner !== 'object' || inner === null) return undefined;
    inner = (inner as Json)[key];
  }
  return inner;
}

function asCsv(root: unknown, records: readonly Json[], { place }: WeatherReadOptions): string {
  const location = (key: 'latitude' | 'longitude' | 'elevation') => at(root, 'inputs', 'location', key);
  const offset = at(root, 'inputs', 'location', 'irradiance_time_offset');
  const names = Object.keys(records[0] ?? {});
  const head = [
    `Latitude (decimal degrees): ${location('latitude') ?? place?.latitudeDeg ?? ''}`,
    `Longitude (decimal degrees): ${location('longitude') ?? place?.longitudeDeg ?? ''}`,
    `Elevation (m): ${location('elevation') ?? place?.elevationM ?? ''}`,
    ...(typeof offset === 'number' ? [`Irradiance Time Offset (h): ${offset}`] : []),
  ];
  const rows = records.map((record) => names.map((name) => String(record[name] ?? '')).join(','));
  return [...head, names.join(','), ...rows].join('\n');
}
