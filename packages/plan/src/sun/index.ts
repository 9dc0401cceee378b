import type { WeatherYear } from '@eaveline/formats';
import { type SunSeries, type SyntheticYear, sunAtInstants, synthesiseYear } from '@eaveline/physics';
import { givenPlace } from '../site/givenPlace.ts';
import type { SitePlan } from '../site/types.ts';
import type { Stage } from '../stage.ts';
import { type Working, worked } from '../working.ts';
import { standardOffsetH } from './civilClock.ts';
import { daylight, SUN_YEAR } from './daylight.ts';
import { placeSeed } from './placeSeed.ts';
import type { SunPlan } from './types.ts';

/** What of the site stage the sun hangs on. */
type SunPlace = Pick<SitePlan, 'latitudeDeg' | 'longitudeDeg' | 'elevationM' | 'zone' | 'climate'>;

/** Sky and weather of the place, hour by hour. It needs nothing of the job that the site stage has not told. */
export const sunStage: Stage<'sun', 'site', Record<string, never>> = {
  name: 'sun',
  before: ['site'],
  view: () => ({}),
  run: (_, { site }, { weather }): SunPlan => {
    const { latitudeDeg, longitudeDeg, elevationM, zone, climate } = site;
    return remembered({ latitudeDeg, longitudeDeg, elevationM, zone, climate }, weather);
  },
};

let last: { readonly key: string; readonly weather: WeatherYear | undefined; readonly answer: SunPlan } | undefined;

/**
 * The last place's answer again where nothing it hangs on has changed: the same object, so that the stages after it
 * see that nothing has. A survey that fills in redoes the site; it must not redo the sun.
 */
function remembered(place: SunPlace, weather: WeatherYear | undefined): SunPlan {
  const key = JSON.stringify(place);
  if (last?.key !== key || last.weather !== weather) last = { key, weather, answer: workSun(place, weather) };
  return last.answer;
}

function workSun(place: SunPlace, weather: WeatherYear | undefined): SunPlan {
  const series = weather ?? generatedYear(place);
  const stand = sunStand(place, weather);
  const sun = sunAtInstants(series.sunTimeMs, stand);
  return planOf(place, series, sun, stand);
}

/**
 * Where the sun is taken: the site, or the place of the file, for a file's light belongs to the sun of its own sky.
 * The offset is that of the clock the hours are counted by.
 */
function sunStand(place: SunPlace, weather: WeatherYear | undefined) {
  const at = weather?.place;
  return at
    ? {
        latitudeDeg: at.latitudeDeg,
        longitudeDeg: at.longitudeDeg,
        altitudeM: at.elevationM ?? place.elevationM,
        utcOffsetH: at.utcOffsetH,
      }
    : {
        latitudeDeg: place.latitudeDeg,
        longitudeDeg: place.longitudeDeg,
        altitudeM: place.elevationM,
        utcOffsetH: standardOffsetH(place.zone, SUN_YEAR),
      };
}

function generatedYear({ latitudeDeg, longitudeDeg, elevationM, zone, climate }: SunPlace): SyntheticYear {
  if (climate.normals === undefined)
    throw new Error('no weather file and no monthly normals: the site stage gives one');
  const site = {
    latitudeDeg,
    longitudeDeg,
    altitudeM: elevationM,
    utcOffsetH: standardOffsetH(zone, SUN_YEAR),
    year: SUN_YEAR,
    // the nearest place may be far away and have more sun than reaches this one
    beyondSky: 'cut' as const,
  };
  return synthesiseYear(climate.normals, site, placeSeed(latitudeDeg, longitudeDeg));
}

function planOf(
  place: SunPlace,
  series: WeatherYear | SyntheticYear,
  sun: SunSeries,
  { utcOffsetH, latitudeDeg }: ReturnType<typeof sunStand>,
): SunPlan {
  const cutMonths = 'cutMonths' in series ? series.cutMonths : undefined;
  const fromFile = cutMonths === undefined;
  const { stepS, sunTimeMs, ghi } = series;
  const steps = sunTimeMs.length;
  const month = new Uint8Array(steps);
  const hour = new Uint8Array(steps);
  const sums = new Float64Array(12);
  for (let i = 0; i < steps; i++) {
    const m = (series.month[i] as number) - 1;
    month[i] = m;
    hour[i] = ((Math.floor((sunTimeMs[i] as number) / 3_600_000 + utcOffsetH) % 24) + 24) % 24;
    sums[m] = (sums[m] as number) + (ghi[i] as number);
  }
  const monthlyGhiKwhM2 = Array.from(sums, (sum) => (sum * stepS) / 3.6e6);
  const annualGhiKwhM2 = monthlyGhiKwhM2.reduce((sum, one) => sum + one, 0);
  return {
    climate: place.climate,
    latitudeDeg,
    stepS,
    steps,
    sunTimeMs,
    month,
    hour,
    zenithDeg: sun.apparentZenithDeg,
    azimuthDeg: sun.azimuthDeg,
    east: sun.east,
    north: sun.north,
    up: sun.up,
    ghi,
    dni: series.dni,
    dhi: series.dhi,
    dniExtra: sun.etrNormalWM2,
    airC: series.airC,
    windMS: series.windMS,
    monthlyGhiKwhM2,
    annualGhiKwhM2,
    daylight: daylight(place.latitudeDeg, place.longitudeDeg, place.zone),
    workings: [annualWorking(place, annualGhiKwhM2, fromFile)],
    leavesOut: fromFile ? fromFileLeavesOut : [...cutWords(cutMonths, place), ...generatedLeavesOut],
  };
}

const always = ['Hours are the shortest step. Minutes of bright sun above a unit’s rating are smoothed away.'];
const fromFileLeavesOut = [
  ...always,
  'The file’s rows stand as they are. The sun is that of the file’s own place, for its light belongs to it.',
];
const generatedLeavesOut = [
  ...always,
  'The year is made from monthly means: one of many the climate allows, with its months exact. It is no forecast, and its extremes promise nothing.',
];

const MONTHS = 'January February March April May June July August September October November December'.split(' ');

/** Said first where the means of another place had to be cut to the sky of this one. */
function cutWords(cutMonths: readonly number[], { climate }: SunPlace): string[] {
  if (cutMonths.length === 0) return [];
  const months = cutMonths.map((m) => MONTHS[m]).join(', ');
  return [
    `The sun of ${climate.name} cannot be had at this place in ${months}: those months were brought to the nearest that the sky gives here. Check latitude and longitude, or give a weather file.`,
  ];
}

function annualWorking({ latitudeDeg, longitudeDeg, climate }: SunPlace, annual: number, fromFile: boolean): Working {
  const source = fromFile
    ? climate.credit
    : 'Aguiar and Collares-Pereira 1992; Hollands and Huget 1983; Erbs et al. 1982';
  const formula = fromFile ? 'Σ rows of the file' : 'Σ hours of a year made from monthly means';
  const months = climate.ghiKwhM2Day.map((mean, m) =>
    worked(`${MONTHS[m]}, mean day`, mean, 'kWh/m²', 'as the climate has it', climate.credit, [], { decimals: 1 }),
  );
  const inputs = [...givenPlace({ latitudeDeg, longitudeDeg }), ...months];
  return worked('Sun on the level', annual, 'kWh/m² a year', formula, source, inputs, {
    note: fromFile ? climate.name : `${climate.name}; seed ${placeSeed(latitudeDeg, longitudeDeg)}, from the place`,
  });
}
