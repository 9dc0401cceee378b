import { CLIMATE_REACH_KM, climateNear, greatCircleKm, type WeatherYear } from '@eaveline/formats';
import type { SiteFacts } from '@eaveline/job';
import { WIND_UNKNOWN_MS } from '@eaveline/physics';
import type { Climate } from './types.ts';

/** Radiation from year to year, one standard deviation as a share: 3 to 6 % is usual, from memory. */
const YEAR_TO_YEAR = 0.04;
/** Radiation of a weather file at its own place, one standard deviation: common practice, no source. */
const FILE_SD = 0.03;
/** Where nothing tells how far off the figures are: taken wide, no source. */
const UNKNOWN_SD = 0.15;
/** A weather file farther away than this counts as another climate, km: common practice, no source. */
const FILE_REACH_KM = 100;
/** Half of a range that holds nine in ten, in standard deviations. */
const NINE_IN_TEN = 1.645;
/** Leaving each place of the normals out and estimating it from the others: nine in ten within 10.5 %. */
const FROM_AFAR_SD = 0.105 / NINE_IN_TEN;

/** A climate and the height of the place or places it was taken at, m; undefined where they do not say. */
export interface PlacedClimate {
  readonly climate: Climate;
  readonly heightM: number | undefined;
}

/** What of the site a climate is chosen by. */
export type ClimateSite = Pick<SiteFacts, 'latitudeDeg' | 'longitudeDeg' | 'elevationM'>;

/** Climate from the monthly normals of the places round the site. */
export function climateFromNormals({ latitudeDeg, longitudeDeg, elevationM }: ClimateSite): PlacedClimate {
  const near = climateNear(latitudeDeg, longitudeDeg, elevationM);
  const nearest = near.from[0];
  if (nearest === undefined) throw new Error('the table of climates has no place');
  const more = near.from.length - 1;
  const { errorPercent } = near;
  const ownSd = errorPercent ? errorPercent.nineInTen / 100 / NINE_IN_TEN : UNKNOWN_SD;
  const { ghiKwhM2Day, meanC, dayMaxC, dayMinC, windMS } = near;
  const climate: Climate = {
    kind: 'monthly normals',
    name: `${nearest.place.name}${more > 0 ? ` and ${more} more` : ''}`,
    places: near.from.map(({ place, distanceKm, weight }) => ({ name: place.name, distanceKm, weight })),
    distanceKm: nearest.distanceKm,
    far: near.beyondReach,
    quality: errorPercent
      ? `half of such estimates within ${errorPercent.median} %, nine in ten within ${errorPercent.nineInTen} %`
      : `nobody knows how far off: no place within ${CLIMATE_REACH_KM} km, 15 % taken`,
    annualSd: Math.hypot(ownSd, YEAR_TO_YEAR),
    ghiKwhM2Day,
    meanC,
    normals: { ghiKwhM2Day, meanC, dayMaxC, dayMinC, windMS },
    credit: [...new Set(near.from.map(({ place }) => place.source))].join('; '),
    remarks: normalsRemarks(near),
  };
  return { climate, heightM: meanHeightM(near) };
}

/** Height of the places that have one, by their shares, m. */
function meanHeightM({ from }: ReturnType<typeof climateNear>): number | undefined {
  const high = from.flatMap(({ place, weight }) =>
    place.elevationM === undefined ? [] : [{ m: place.elevationM, weight }],
  );
  const whole = high.reduce((sum, { weight }) => sum + weight, 0);
  return whole > 0 ? high.reduce((sum, { m, weight }) => sum + m * weight, 0) / whole : undefined;
}

function normalsRemarks(near: ReturnType<typeof climateNear>): string[] {
  const remarks = [near.says];
  if (near.ghiClass === 'C')
    remarks.push('One of the places is a cloud-model year or disagrees with its neighbours: 5 to 15 % uncertain.');
  if (near.heightCorrected !== 'all') {
    remarks.push(
      near.heightCorrected === 'none'
        ? 'Temperatures are not brought to the height of the site: its height or the places’ is not known.'
        : 'Temperatures of some places are not brought to the height of the site: their height is not known.',
    );
  }
  if (near.windMS === undefined) remarks.push(`No place has wind: ${WIND_UNKNOWN_MS} m/s stands for it.`);
  return remarks;
}

/** Climate of a weather file, its rows as they stand. */
export function climateFromFile(weather: WeatherYear, site: ClimateSite): PlacedClimate {
  const { place } = weather;
  const distanceKm = place
    ? greatCircleKm(site.latitudeDeg, site.longitudeDeg, place.latitudeDeg, place.longitudeDeg)
    : undefined;
  const far = distanceKm === undefined || distanceKm > FILE_REACH_KM;
  const afar = distanceKm === undefined || distanceKm > CLIMATE_REACH_KM ? UNKNOWN_SD : far ? FROM_AFAR_SD : 0;
  const name = place?.name ?? 'a place the file does not name';
  const climate: Climate = {
    kind: 'weather file',
    name,
    places: distanceKm === undefined ? [] : [{ name, distanceKm, weight: 1 }],
    ...(distanceKm === undefined ? {} : { distanceKm }),
    far,
    quality: fileQuality(distanceKm, far),
    annualSd: Math.hypot(FILE_SD, YEAR_TO_YEAR, afar),
    ghiKwhM2Day: monthMeans(weather, 'ghi').map((mean) => (mean * 24) / 1000),
    meanC: monthMeans(weather, 'airC'),
    credit: weather.sourceText,
    remarks: fileRemarks(weather, site, distanceKm),
  };
  return { climate, heightM: place?.elevationM };
}

function fileQuality(distanceKm: number | undefined, far: boolean): string {
  if (distanceKm === undefined) return 'the file does not say where it was taken';
  return far ? `a file may carry ${FILE_REACH_KM} km` : `within the ${FILE_REACH_KM} km a file may carry`;
}

/** Mean over the hours of each month that have the value; 0 for a month without any. */
function monthMeans(weather: WeatherYear, column: 'ghi' | 'airC'): number[] {
  const sums = new Float64Array(12);
  const counts = new Float64Array(12);
  const values = weather[column];
  const has = weather.has[column];
  for (let i = 0; i < values.length; i++) {
    if (has[i] !== 1) continue;
    const m = (weather.month[i] as number) - 1;
    sums[m] = (sums[m] as number) + (values[i] as number);
    counts[m] = (counts[m] as number) + 1;
  }
  return Array.from(sums, (sum, m) => ((counts[m] as number) > 0 ? sum / (counts[m] as number) : 0));
}

function fileRemarks(weather: WeatherYear, site: ClimateSite, distanceKm: number | undefined): string[] {
  const { place, covered, hoursInYear } = weather;
  const remarks: string[] = [];
  if (distanceKm === undefined)
    remarks.push('The file does not say where it was taken. The sun is put where the site is.');
  else if (distanceKm > FILE_REACH_KM)
    remarks.push(`The file was taken ${Math.round(distanceKm)} km away: another climate, perhaps.`);
  if (place !== undefined && place.latitudeDeg * site.latitudeDeg < 0)
    remarks.push('It was taken on the other side of the equator: its summer is the winter of the site.');
  if (place?.elevationM !== undefined && site.elevationM !== undefined) {
    const liftM = place.elevationM - site.elevationM;
    if (Math.abs(liftM) > 200) {
      const which = liftM > 0 ? 'above' : 'below';
      remarks.push(
        `The file’s place stands ${Math.round(Math.abs(liftM))} m ${which} the site. Its temperatures are taken as they are.`,
      );
    }
  }
  for (const [column, words] of [
    ['ghi', 'sun on the level'],
    ['dni', 'beam'],
    ['dhi', 'diffuse light'],
    ['airC', 'air temperature'],
    ['windMS', 'wind'],
  ] as const) {
    if (covered[column] < hoursInYear) {
      remarks.push(`${hoursInYear - covered[column]} of ${hoursInYear} hours have no ${words}. They count as 0.`);
    }
  }
  return remarks;
}
