import { decimalYear, deltaT, stationPressure, sunPosition } from '@eaveline/physics';
import { z } from 'zod';
import { defineCalc } from './calc.ts';
import { fig, num, siteFields, siteNames, siteOf } from './fields.ts';
import { instantMs, utcInstant } from './instant.ts';

const input = z.object({ timeUtc: utcInstant, ...siteFields });
const output = z.object({
  apparentZenithDeg: num('°', 'angle from overhead with refraction'),
  trueZenithDeg: num('°', 'angle from overhead without refraction'),
  azimuthDeg: num('°', 'clockwise from true north, 0 to 360'),
  equationOfTimeMin: num('min', 'apparent minus mean solar time'),
  earthSunDistanceAu: num('au', 'distance of the sun'),
  etrNormalDistanceWM2: num('W/m²', 'extraterrestrial normal, 1366.1/R²'),
  etrNormalSpencerWM2: num('W/m²', 'extraterrestrial normal, 1366.1 × the series of Spencer'),
  dayOfYearUtc: num('d', '1 to 366'),
});

export const sunPositionCalc = defineCalc({
  name: 'sun-position',
  line: 'where the sun stands at an instant, with and without refraction',
  source: 'Reda and Andreas 2004 (solar position algorithm); Spencer 1971; ΔT after Espenak and Meeus',
  input,
  output,
  example: { timeUtc: '2003-10-17T19:30:30Z', lat: 39.742476, lon: -105.1786, altitudeM: 1830.14, pressurePa: 82000 },
  names: { ...siteNames, timeMs: 'timeUtc' },
  run: ({ timeUtc, ...site }) => sunPosition({ ...siteOf(site), timeMs: instantMs(timeUtc) }),
  working(row, r) {
    const ms = instantMs(row.timeUtc);
    const pressurePa = row.pressurePa ?? stationPressure(row.altitudeM ?? 0);
    return [
      `ΔT = TT − UT1 = ${fig(row.deltaTS ?? deltaT(decimalYear(ms)))} s; TT = UT + ΔT`,
      `geocentric sun of TT: R = ${r.earthSunDistanceAu.toFixed(8)} au; then sidereal time, parallax of the observer`,
      `true zenith z = ${r.trueZenithDeg.toFixed(5)}°, azimuth = ${r.azimuthDeg.toFixed(5)}°`,
      `refraction at ${fig(pressurePa)} Pa, ${fig(row.temperatureC ?? 12)} °C: ${(r.trueZenithDeg - r.apparentZenithDeg).toFixed(5)}°`,
      `apparent zenith = z − refraction = ${r.apparentZenithDeg.toFixed(5)}°`,
      `beyond the air: 1366.1/R² = ${fig(r.etrNormalDistanceWM2)} W/m²; Spencer, day ${r.dayOfYearUtc}: ${fig(r.etrNormalSpencerWM2)} W/m²`,
    ];
  },
});
