import { type HorizonHours, horizonBlocking, horizonElevationDeg, horizonProfile } from '@eaveline/physics';
import { z } from 'zod';
import { defineCalc } from './calc.ts';
import { fig, list, num, optionalNum, siteFields, siteNames, siteOf } from './fields.ts';

const pairs = (what: string) =>
  z
    .array(z.tuple([z.number(), z.number()]))
    .meta({ unit: '°', description: `pairs of azimuth and elevation; ${what}` });

const { lat, lon, altitudeM, pressurePa, temperatureC } = siteFields;
const input = z.object({
  lat,
  lon,
  altitudeM,
  pressurePa,
  temperatureC,
  deltaTS: optionalNum('s', 'TT − UT1; default 67'),
  utcOffsetH: num('h', 'fixed offset of the clock that sorts the months'),
  year: num('a', 'whole year; its steps are counted'),
  horizonAzimuthElevationDeg: pairs('clockwise from true north, straight between pairs and through north'),
  linkeTurbidity: optionalNum('1', 'default 3'),
  interpolationCheck: pairs('directions to read the skyline at; elevations given are not used').exactOptional(),
});

const hours = {
  sunUpH: ['h', 'sun above the level horizon'],
  blockedH: ['h', 'of those, below the skyline'],
  beamNormalClearKwhM2: ['kWh/m²', 'clear-sky beam of the open sky'],
  beamNormalBlockedKwhM2: ['kWh/m²', 'part of it blocked'],
} as const satisfies Record<keyof HorizonHours, readonly [string, string]>;
type Shape<T> = Record<keyof HorizonHours, T>;
const each = <T>(make: (unit: string, what: string) => T) =>
  Object.fromEntries(Object.entries(hours).map(([key, [unit, what]]) => [key, make(unit, what)])) as Shape<T>;

const output = z.object({
  monthly: z.object(each(list)).meta({ description: 'January to December' }),
  annual: z.object(each(num)),
  interpolationCheck: pairs('the skyline at the directions asked for').exactOptional(),
});

export const horizonBlockingCalc = defineCalc({
  name: 'horizon-blocking',
  line: 'hours and clear-sky beam that a skyline takes, month by month',
  source: 'own sum in steps of a minute; sun by Reda and Andreas 2004, clear sky by Ineichen and Perez 2002',
  input,
  output,
  example: {
    lat: 46.2,
    lon: 7.3,
    altitudeM: 520,
    utcOffsetH: 1,
    year: 2025,
    horizonAzimuthElevationDeg: [
      [0, 14],
      [90, 20],
      [180, 6],
      [270, 18],
    ],
  },
  names: { ...siteNames, horizon: 'horizonAzimuthElevationDeg' },
  run({ horizonAzimuthElevationDeg: horizon, interpolationCheck, utcOffsetH, year, linkeTurbidity = 3, ...site }) {
    const found = horizonBlocking({ deltaTS: 67, ...siteOf(site), utcOffsetH, year, horizon, linkeTurbidity });
    const column = (key: keyof HorizonHours) => found.monthly.map((month) => month[key]);
    const monthly = {
      sunUpH: column('sunUpH'),
      blockedH: column('blockedH'),
      beamNormalClearKwhM2: column('beamNormalClearKwhM2'),
      beamNormalBlockedKwhM2: column('beamNormalBlockedKwhM2'),
    };
    if (interpolationCheck === undefined) return { monthly, annual: found.annual };
    const profile = horizonProfile(horizon);
    const read = interpolationCheck.map(([azimuth]): [number, number] => [
      azimuth,
      horizonElevationDeg(profile, azimuth),
    ]);
    return { monthly, annual: found.annual, interpolationCheck: read };
  },
  working: (row, r) => [
    `every minute of ${row.year}, sun at the middle of it; up where its refracted centre is above 0°`,
    `blocked where it is below the skyline of ${row.horizonAzimuthElevationDeg.length} pairs at its azimuth`,
    `year: ${fig(r.annual.blockedH)} of ${fig(r.annual.sunUpH)} h, ${fig(r.annual.beamNormalBlockedKwhM2)} of ${fig(r.annual.beamNormalClearKwhM2)} kWh/m² clear-sky beam`,
  ],
});
