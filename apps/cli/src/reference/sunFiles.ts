import { camelKey } from '../camelKeys.ts';
import { asked, idOf, isJson, type Json, type ReferenceShape, rowsIn } from './shape.ts';
import type { Tally } from './tally.ts';
import { type Tolerance, toleranceOf } from './tolerance.ts';

const RAD = Math.PI / 180;
const POSITION_FIELDS = [
  'apparent_zenith_deg',
  'true_zenith_deg',
  'azimuth_deg',
  'equation_of_time_min',
  'earth_sun_distance_au',
  'etr_normal_distance_w_m2',
  'etr_normal_spencer_w_m2',
] as const;

/** A tolerance widened by an entry that holds under a condition. */
function widened(tolerance: unknown, field: string, key: string, holds: boolean): Tolerance | undefined {
  const plain = toleranceOf(tolerance, field);
  const entry = isJson(tolerance) && isJson(tolerance[field]) ? tolerance[field][key] : undefined;
  return plain && holds && typeof entry === 'number' ? { ...plain, okAbs: entry } : plain;
}

/** Azimuths are compared round the circle and by what they mean on the sky. */
function azimuthOff(got: number, want: number, trueZenithDeg: number): number {
  const turn = ((((got - want) % 360) + 540) % 360) - 180;
  return Math.abs(turn) * Math.sin(trueZenithDeg * RAD);
}

function tryPosition(row: Json, id: string, file: { document: Json; name: string }, tally: Tally): void {
  const result = asked('sun-position', row);
  for (const field of POSITION_FIELDS) {
    const want = row[field];
    if (typeof want !== 'number') continue;
    const quantity = `sun-position ${camelKey(field)}`;
    const low = typeof row.true_zenith_deg === 'number' && row.true_zenith_deg > 85;
    const key = 'acceptable_abs_where_true_elevation_below_5_deg';
    const allowed = widened(file.document.tolerance, field, key, low);
    if (allowed === undefined) tally.skip(quantity, file.name, 'the file states no tolerance');
    else if (typeof result === 'string') tally.noAnswer(quantity, id, result);
    else {
      const got = result[camelKey(field)] as number;
      const off = field === 'azimuth_deg' ? azimuthOff(got, want, result.trueZenithDeg as number) : undefined;
      tally.figure(quantity, id, got, want, allowed, off);
    }
  }
}

/** Figures on the way of a published example, under the names of the result where the result has them. */
function unfolded(row: Json, name: string, tally: Tally): Json {
  const inside = isJson(row.intermediate) ? row.intermediate : {};
  const { earth_sun_distance_au, topocentric_elevation_without_refraction_deg: elevation, ...rest } = inside;
  for (const key of Object.keys(rest)) tally.skip(`sun-position ${key}`, name, 'not a result of this quantity');
  return {
    ...row,
    ...(earth_sun_distance_au === undefined ? {} : { earth_sun_distance_au }),
    ...(typeof elevation === 'number' ? { true_zenith_deg: 90 - elevation } : {}),
  };
}

/** sun_position.json */
export const sunPositionShape: ReferenceShape = {
  about: 'sun-position',
  knows: ({ rows }) => {
    const [first] = rowsIn(rows);
    return first !== undefined && 'true_zenith_deg' in first && 'time_utc' in first;
  },
  run(file, tally) {
    rowsIn(file.document.rows).forEach((row, at) => void tryPosition(row, idOf(row, at), file, tally));
    rowsIn(file.document.published).forEach((row, at) => {
      tryPosition(unfolded(row, file.name, tally), idOf(row, at), file, tally);
    });
  },
};

const EVENTS = ['sunrise_utc', 'transit_utc', 'sunset_utc'] as const;

/** Seconds between two instants; undefined where one is none. */
function secondsApart(got: unknown, want: string): number | undefined {
  const apart = typeof got === 'string' ? Math.abs(Date.parse(got) - Date.parse(want)) / 1000 : Number.NaN;
  return Number.isFinite(apart) ? apart : undefined;
}

function tryInstant(quantity: string, id: string, got: unknown, want: unknown, allowed: Tolerance, tally: Tally): void {
  if (typeof want !== 'string') {
    tally.group(quantity, id, got, want, allowed);
    return;
  }
  const off = secondsApart(got, want);
  if (off === undefined) tally.noAnswer(quantity, id, `${String(got)} where ${want} is wanted`);
  // seconds off, against none
  else tally.figure(quantity, id, off, 0, allowed);
}

function tryTimes(row: Json, id: string, file: { document: Json; name: string }, tally: Tally): void {
  const result = asked('sun-times', row);
  const north = typeof row.lat === 'number' && Math.abs(row.lat) > 60;
  const allowedFor = (field: string) =>
    widened(file.document.tolerance, field, 'acceptable_abs_above_60_deg_latitude', north);
  for (const field of [...EVENTS, 'day_length_h', 'true_zenith_at_transit_deg', 'state']) {
    const want = row[field];
    if (want === undefined) continue;
    const quantity = `sun-times ${camelKey(field)}`;
    const allowed = field === 'state' ? {} : allowedFor(field);
    if (typeof result === 'string') tally.noAnswer(quantity, id, result);
    else if (allowed === undefined) tally.skip(quantity, file.name, 'the file states no tolerance');
    else if ((EVENTS as readonly string[]).includes(field))
      tryInstant(quantity, id, result[camelKey(field)], want, allowed, tally);
    else tally.group(quantity, id, result[camelKey(field)], want, allowed);
  }
}

/** Almanac times: the local clock, to the resolution printed and 3 s more. */
function tryAlmanac(row: Json, id: string, tally: Tally): void {
  const result = asked('sun-times', row);
  for (const event of ['sunrise', 'sunset']) {
    const printed = row[`${event}_local`];
    if (typeof printed !== 'string') continue;
    const quantity = `sun-times published ${event}`;
    if (typeof result === 'string') {
      tally.noAnswer(quantity, id, result);
      continue;
    }
    const localMs = Date.parse(`${row.date_local}T${printed}Z`) - Number(row.utc_offset_h) * 3_600_000;
    const off = secondsApart(result[`${event}Utc`], new Date(localMs).toISOString());
    const allowed = { sameAbs: Number(row.resolution_s) / 2 + 3 };
    if (off === undefined) tally.noAnswer(quantity, id, `no ${event}`);
    else tally.figure(quantity, id, off, 0, allowed);
  }
}

/** sunrise_sunset.json */
export const sunTimesShape: ReferenceShape = {
  about: 'sun-times',
  knows: ({ rows }) => {
    const [first] = rowsIn(rows);
    return first !== undefined && 'transit_utc' in first && 'date_local' in first;
  },
  run(file, tally) {
    rowsIn(file.document.rows).forEach((row, at) => void tryTimes(row, idOf(row, at), file, tally));
    rowsIn(file.document.published).forEach((row, at) => void tryAlmanac(row, idOf(row, at), tally));
  },
};
