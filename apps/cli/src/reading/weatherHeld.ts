import { readWeatherFile, type WeatherPlace, type WeatherSums, type WeatherYear } from '@eaveline/formats';
import type { Held } from './held.ts';

const QUANTITIES = [
  ['ghi', 'global horizontal'],
  ['dni', 'direct normal'],
  ['dhi', 'diffuse horizontal'],
  ['airC', 'air temperature'],
  ['windMS', 'wind'],
] as const;

/** The sign of a figure for a person. */
const minus = (figure: string) => figure.replace('-', '−');
const signed = (value: number, digits: number) => `${value < 0 ? '−' : '+'}${Math.abs(value).toFixed(digits)}`;

function placeText({ name, latitudeDeg, longitudeDeg, elevationM, utcOffsetH }: WeatherPlace): string {
  const where = `${Math.abs(latitudeDeg).toFixed(3)}° ${latitudeDeg < 0 ? 'S' : 'N'}, ${Math.abs(longitudeDeg).toFixed(3)}° ${longitudeDeg < 0 ? 'W' : 'E'}`;
  const height = elevationM === undefined ? 'height not said' : `${elevationM} m`;
  return `${name}, ${where}, ${height}, UTC${signed(utcOffsetH, 1)} h`;
}

function sumsText(sums: WeatherSums): string {
  const parts = [
    ['global', sums.ghiKwhM2, 'kWh/m²'],
    ['direct normal', sums.dniKwhM2, 'kWh/m²'],
    ['diffuse', sums.dhiKwhM2, 'kWh/m²'],
    ['mean air', sums.meanAirC, '°C'],
    ['mean wind', sums.meanWindMS, 'm/s'],
  ] as const;
  return parts
    .map(([name, value, unit]) => `${name} ${value === undefined ? 'not known' : `${minus(value.toFixed(1))} ${unit}`}`)
    .join(', ');
}

function hoursText(year: WeatherYear): string {
  const hours = year.month.length;
  const gaps = QUANTITIES.flatMap(([key, name]) => {
    const missing = hours - year.covered[key];
    return missing === 0 ? [] : [`${name} missing in ${missing}`];
  });
  return `${hours} of ${year.hoursInYear}${gaps.length === 0 ? ', every value there' : `; ${gaps.join(', ')}`}`;
}

function shiftText(sunShiftH: number): string {
  if (sunShiftH === 0) return 'as the file labels its hours';
  return `${(Math.abs(sunShiftH) * 60).toFixed(0)} min ${sunShiftH < 0 ? 'earlier' : 'later'} than the file labels its hours`;
}

/** JSON has no word for what is not known but null. */
const orNull = (sums: WeatherSums) => ({
  ghiKwhM2: sums.ghiKwhM2 ?? null,
  dniKwhM2: sums.dniKwhM2 ?? null,
  dhiKwhM2: sums.dhiKwhM2 ?? null,
  meanAirC: sums.meanAirC ?? null,
  meanWindMS: sums.meanWindMS ?? null,
});

/** What a weather file holds, and all its reader noticed. */
export function weatherHeld(file: Uint8Array): Held {
  const { data, remarks, counts, assumptions } = readWeatherFile(file);
  if (data === undefined) return { usable: false, facts: [], holds: {}, remarks, counts, assumptions };
  const { place, annual, sums, sunShiftH, covered, hoursInYear, sourceText } = data;
  return {
    usable: true,
    facts: [
      ['place', place === undefined ? 'the file does not say' : placeText(place)],
      ['hours', hoursText(data)],
      annual === undefined ? ['in the hours there', sumsText(sums)] : ['in the year', sumsText(annual)],
      ...(annual === undefined ? ([['year', 'no annual figure: the hours do not span a year']] as const) : []),
      ['sun', shiftText(sunShiftH)],
      ['source', sourceText],
    ],
    holds: {
      place: place === undefined ? null : { ...place, elevationM: place.elevationM ?? null },
      hours: data.month.length,
      hoursInYear,
      covered,
      sums: orNull(sums),
      annual: annual === undefined ? null : orNull(annual),
      sunShiftH,
      sourceText,
    },
    remarks,
    counts,
    assumptions,
  };
}
