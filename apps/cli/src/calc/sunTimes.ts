import { sunTimes } from '@eaveline/physics';
import { z } from 'zod';
import { defineCalc } from './calc.ts';
import { choice, fig, num, numOrNull, optionalNum, siteNames, text } from './fields.ts';
import { isoInstant } from './instant.ts';

const input = z.object({
  dateLocal: text('civil date whose noon is meant, such as 2025-06-21'),
  utcOffsetH: num('h', 'fixed offset of the civil clock, east of UTC'),
  lat: num('°', 'latitude, north positive'),
  lon: num('°', 'longitude, east positive'),
  deltaTS: optionalNum('s', 'TT − UT1; default Espenak and Meeus for the year'),
});
const event = (what: string) => z.string().nullable().meta({ unit: 'ISO 8601, UTC', description: what });
const output = z.object({
  state: choice(['normal', 'polar_day', 'polar_night'], 'whether the sun crosses the horizon'),
  sunriseUtc: event('last upward crossing before noon'),
  transitUtc: event('solar noon'),
  sunsetUtc: event('first downward crossing after noon'),
  dayLengthH: numOrNull('h', 'between the two'),
  trueZenithAtTransitDeg: num('°', 'unrefracted zenith angle at noon'),
});
const STATE = { normal: 'normal', 'polar-day': 'polar_day', 'polar-night': 'polar_night' } as const;

export const sunTimesCalc = defineCalc({
  name: 'sun-times',
  line: 'sunrise, solar noon and sunset of a civil date',
  source: 'roots of the solar position algorithm (Reda and Andreas 2004) at −0.8333°: 34′ refraction, 16′ radius',
  input,
  output,
  example: { dateLocal: '2025-06-21', utcOffsetH: 1, lat: 59.91, lon: 10.75 },
  names: siteNames,
  run({ lat, lon, ...row }) {
    const found = sunTimes({ latitudeDeg: lat, longitudeDeg: lon, ...row });
    return {
      state: STATE[found.state],
      sunriseUtc: isoInstant(found.sunriseMs),
      transitUtc: isoInstant(found.noonMs),
      sunsetUtc: isoInstant(found.sunsetMs),
      dayLengthH: found.dayLengthH ?? null,
      trueZenithAtTransitDeg: found.trueZenithAtNoonDeg,
    };
  },
  working: (row, r) => [
    `noon: hour angle 0 inside ${row.dateLocal} (UTC${row.utcOffsetH < 0 ? '−' : '+'}${fig(Math.abs(row.utcOffsetH))}): ${r.transitUtc}`,
    `highest sun: true zenith ${r.trueZenithAtTransitDeg.toFixed(4)}°`,
    r.state === 'normal'
      ? `true elevation = −0.8333° before noon at ${r.sunriseUtc}, after noon at ${r.sunsetUtc}`
      : `the sun stays ${r.state === 'polar_day' ? 'above' : 'below'} −0.8333° all day`,
  ],
});
