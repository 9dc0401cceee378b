import { positive, Refusal, within } from '../refusal.ts';
import { type ClearSkySeries, clearSkySeries } from '../sky/clearSky.ts';
import { SOLAR_CONSTANT_W_M2 } from '../sun/extraterrestrial.ts';
import { stationPressure } from '../sun/stationPressure.ts';
import type { SunSite } from '../sun/sunPosition.ts';
import { type SunSeries, sunSeries } from '../sun/sunSeries.ts';
import { type HorizonPairs, type HorizonProfile, horizonElevationDeg, horizonProfile } from './horizonProfile.ts';

export interface HorizonBlockingInput extends SunSite {
  readonly year: number;
  /** Fixed offset of the clock that sorts the months, hours east of UTC. */
  readonly utcOffsetH: number;
  readonly horizon: HorizonPairs;
  /** Default 3. */
  readonly linkeTurbidity?: number;
  /** Default 60 s; it must divide the day. */
  readonly stepS?: number;
}

/** Hours and beam, kWh/m²; of one month or of the year. */
export interface HorizonHours {
  /** Refracted centre of the sun above 0°. */
  sunUpH: number;
  /** Of those, below the skyline. */
  blockedH: number;
  /** Clear-sky beam normal of the open sky. */
  beamNormalClearKwhM2: number;
  /** Part of it blocked. */
  beamNormalBlockedKwhM2: number;
}

export interface HorizonBlocking {
  /** January to December of the local clock. */
  readonly monthly: readonly HorizonHours[];
  readonly annual: HorizonHours;
}

const blank = (): HorizonHours => ({ sunUpH: 0, blockedH: 0, beamNormalClearKwhM2: 0, beamNormalBlockedKwhM2: 0 });

/** Adds up one stretch of steps. */
function count(sun: SunSeries, clear: ClearSkySeries, profile: HorizonProfile, stepH: number): HorizonHours {
  const sum = blank();
  for (let i = 0; i < sun.count; i++) {
    const elevationDeg = 90 - sun.apparentZenithDeg[i];
    if (!(elevationDeg > 0)) continue;
    const beamKwh = (clear.dni[i] * stepH) / 1000;
    sum.sunUpH += stepH;
    sum.beamNormalClearKwhM2 += beamKwh;
    if (elevationDeg < horizonElevationDeg(profile, sun.azimuthDeg[i])) {
      sum.blockedH += stepH;
      sum.beamNormalBlockedKwhM2 += beamKwh;
    }
  }
  return sum;
}

/** Refuses a step that does not divide the day: months would not begin on one. */
function checkStep(stepS: number): number {
  within(stepS, 1, 3600, 'stepS', 'A minute is fine: 60.');
  if (86_400 % stepS !== 0) {
    throw new Refusal({ code: 'inconsistent', at: 'stepS', got: stepS, want: 'a part of a day', mend: 'Use 60.' });
  }
  return stepS;
}

/**
 * What a skyline takes of the sun in each month of a year.
 *
 * Steps of a minute, the sun at the middle of each; blocked when its refracted centre is below the
 * skyline. Beam is the clear sky of Ineichen and Perez 2002 with 1366.1 W/m² above the air.
 *
 * @throws {Refusal} `outside-range`, `inconsistent`, `missing`, `not-positive`.
 *
 * A far horizon only: it lies in the same direction for every module. Of the sun's disc half a degree
 * wide the centre decides, worth a minute at each crossing and nothing on average.
 */
export function horizonBlocking(input: HorizonBlockingInput): HorizonBlocking {
  const profile = horizonProfile(input.horizon);
  const year = within(input.year, 1900, 2999, 'year', 'Give four digits.');
  if (!Number.isInteger(year)) {
    throw new Refusal({
      code: 'outside-range',
      at: 'year',
      got: year,
      want: 'a whole year',
      mend: 'Give four digits.',
    });
  }
  within(input.utcOffsetH, -14, 14, 'utcOffsetH', 'Give hours east of UTC.');
  const stepS = checkStep(input.stepS ?? 60);
  const altitudeM = input.altitudeM ?? 0;
  const pressurePa = positive(input.pressurePa ?? stationPressure(altitudeM), 'pressurePa', 'Give pascals.');
  const air = { altitudeM, pressurePa, linkeTurbidity: input.linkeTurbidity ?? 3 };

  const monthly: HorizonHours[] = [];
  const annual = blank();
  for (let month = 0; month < 12; month++) {
    const fromMs = Date.UTC(year, month, 1) - input.utcOffsetH * 3_600_000;
    const steps = (Date.UTC(year, month + 1, 1) - Date.UTC(year, month, 1)) / 1000 / stepS;
    const sun = sunSeries({ ...input, startMs: fromMs + stepS * 500, stepS, count: steps });
    const hours = count(sun, clearSkySeries(sun, air, SOLAR_CONSTANT_W_M2), profile, stepS / 3600);
    monthly.push(hours);
    for (const key of Object.keys(annual) as (keyof HorizonHours)[]) annual[key] += hours[key];
  }
  return { monthly, annual };
}
