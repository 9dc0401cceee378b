import { z } from 'zod';

/** A number with its unit; both end up in the help and in the JSON Schema. */
export const num = (unit: string, what: string) => z.number().meta({ unit, description: what });

/** A number that may be left out. */
export const optionalNum = (unit: string, what: string) => num(unit, what).exactOptional();

/** A number that a result may lack: then it is null. */
export const numOrNull = (unit: string, what: string) => z.number().nullable().meta({ unit, description: what });

export const text = (what: string) => z.string().meta({ description: what });

export const yes = (what: string) => z.boolean().meta({ description: what });

export const choice = <const T extends readonly [string, ...string[]]>(names: T, what: string) =>
  z.enum(names).meta({ description: what });

export const list = (unit: string, what: string) => z.array(z.number()).meta({ unit, description: what });

/** A pair of real and imaginary part. */
export const complex = (unit: string, what: string) =>
  z.tuple([z.number(), z.number()]).meta({ unit, description: `${what}; real and imaginary part` });

/** A figure for a line of working: six digits are enough to follow the sum. */
export function fig(value: number): string {
  return String(Number(value.toPrecision(6)));
}

/** Where the observer stands, named as a row of weather names it. */
export const siteFields = {
  lat: num('°', 'latitude, north positive'),
  lon: num('°', 'longitude, east positive'),
  altitudeM: optionalNum('m', 'height above sea level; default 0'),
  pressurePa: optionalNum('Pa', 'mean pressure for refraction; default the standard atmosphere at the height'),
  temperatureC: optionalNum('°C', 'mean air temperature for refraction; default 12'),
  deltaTS: optionalNum('s', 'TT − UT1; default Espenak and Meeus for the year'),
};

/** The same as the physics names it. */
export const siteNames = { latitudeDeg: 'lat', longitudeDeg: 'lon' } as const;

interface SiteRow {
  readonly lat: number;
  readonly lon: number;
  readonly altitudeM?: number;
  readonly pressurePa?: number;
  readonly temperatureC?: number;
  readonly deltaTS?: number;
}

/** A row's site for the physics. */
export function siteOf({ lat, lon, altitudeM, pressurePa, temperatureC, deltaTS }: SiteRow) {
  return {
    latitudeDeg: lat,
    longitudeDeg: lon,
    ...(altitudeM === undefined ? {} : { altitudeM }),
    ...(pressurePa === undefined ? {} : { pressurePa }),
    ...(temperatureC === undefined ? {} : { temperatureC }),
    ...(deltaTS === undefined ? {} : { deltaTS }),
  };
}
