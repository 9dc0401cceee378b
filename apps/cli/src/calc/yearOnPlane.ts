import type { WeatherYear } from '@eaveline/formats';
import {
  cellTemperatureSeries,
  dayOfYearUtc,
  etrNormalSpencer1971,
  hayDaviesSeries,
  isotropicSeries,
  type ModuleModel,
  moduleAt,
  moduleMaxPower,
  modulePowerLinear2014,
  type PlaneSeries,
  perezSeries,
  planeSeries,
  type SkySeries,
  sunAtInstants,
} from '@eaveline/physics';
import { type PlaceRow, siteOfYear } from './weatherNamed.ts';

/** What is summed over a year. */
export type SumName =
  | 'poaPerezKwhM2'
  | 'poaHaydaviesKwhM2'
  | 'poaIsotropicKwhM2'
  | 'poaBeamKwhM2'
  | 'skyPerezKwhM2'
  | 'groundKwhM2'
  | 'dcLinearKwhPerKwp'
  | 'dcDesotoKwhPerKwp'
  | 'effectiveIamKwhM2'
  | 'dcLinearIamKwhPerKwp';

/** A plane, its place where the weather does not say it, and its module. */
export interface PlaneRow extends PlaceRow {
  readonly tiltDeg: number;
  readonly surfaceAzimuthDeg: number;
  readonly albedo?: number;
  readonly faimanU0?: number;
  readonly faimanU1?: number;
  readonly gammaPerK: number;
  readonly moduleStcW: number;
}

/** The year on one plane, hour by hour. */
export interface Hours {
  readonly weather: WeatherYear;
  readonly perez: PlaneSeries;
  readonly others: Readonly<Record<'hayDavies' | 'isotropic', PlaneSeries>>;
  readonly poa: Float64Array;
  readonly cellC: Float64Array;
}

const valueAt = (column: Float64Array, i: number) => column[i] as number;

/** Beam, sky and ground together, W/m². */
const whole = (plane: PlaneSeries) =>
  plane.beam.map((beam, i) => beam + valueAt(plane.sky, i) + valueAt(plane.ground, i));

/** Irradiance and cell temperature of every hour. @throws {Refusal} what the physics refuses of site and plane. */
export function hoursOf(row: PlaneRow, weather: WeatherYear): Hours {
  const sun = sunAtInstants(weather.sunTimeMs, siteOfYear(row, weather));
  const extra = weather.sunTimeMs.map((ms) => etrNormalSpencer1971(dayOfYearUtc(ms)));
  const on = (sky: SkySeries) =>
    planeSeries(sun, weather, sky, {
      tiltDeg: row.tiltDeg,
      azimuthDeg: row.surfaceAzimuthDeg,
      albedo: row.albedo ?? 0.2,
      incidence: { model: 'physical', n: 1.526, extinctionPerM: 4, thicknessM: 0.002 },
    });
  const perez = on(perezSeries(sun, weather, extra));
  const others = { hayDavies: on(hayDaviesSeries(sun, weather, extra)), isotropic: on(isotropicSeries(sun)) };
  const poa = whole(perez);
  const losses = { u0: row.faimanU0 ?? 25, u1: row.faimanU1 ?? 6.84 };
  return { weather, perez, others, poa, cellC: cellTemperatureSeries(poa, weather.airC, weather.windMS, losses) };
}

/** What each hour adds to each sum, in kWh. */
export function columnsOf(hours: Hours, row: PlaneRow, model: ModuleModel): Record<SumName, (i: number) => number> {
  const { perez, others, poa, cellC, weather } = hours;
  const k = weather.stepS / 3600 / 1000;
  const at = (column: Float64Array) => (i: number) => k * valueAt(column, i);
  const linear = (light: Float64Array) => (i: number) =>
    k * modulePowerLinear2014(1000, row.gammaPerK, valueAt(light, i), valueAt(cellC, i));
  return {
    poaPerezKwhM2: at(poa),
    poaHaydaviesKwhM2: at(whole(others.hayDavies)),
    poaIsotropicKwhM2: at(whole(others.isotropic)),
    poaBeamKwhM2: at(perez.beam),
    skyPerezKwhM2: at(perez.sky),
    groundKwhM2: at(perez.ground),
    dcLinearKwhPerKwp: linear(poa),
    dcDesotoKwhPerKwp: (i) =>
      poa[i] === 0
        ? 0
        : (k * 1000 * moduleMaxPower(moduleAt(model, valueAt(poa, i), valueAt(cellC, i))).powerW) / row.moduleStcW,
    effectiveIamKwhM2: at(perez.effective),
    dcLinearIamKwhPerKwp: linear(perez.effective),
  };
}

/** Sums of the twelve months. */
export function byMonth(month: Uint8Array, add: (i: number) => number): number[] {
  const sum = new Array<number>(12).fill(0);
  month.forEach((m, i) => {
    sum[m - 1] = (sum[m - 1] as number) + add(i);
  });
  return sum;
}
