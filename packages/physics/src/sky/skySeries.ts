import { finite, Refusal } from '../refusal.ts';
import type { SunSeries } from '../sun/sunSeries.ts';
import { airMassTable } from './airMass.ts';
import { PEREZ_KAPPA, PEREZ_LOWEST_COS, perezBin, perezCoefficients } from './perez.ts';

const RAD = Math.PI / 180;

/** Radiation of every step, W/m². */
export interface RadiationSeries {
  /** Beam normal. */
  readonly dni: ArrayLike<number>;
  /** Diffuse horizontal. */
  readonly dhi: ArrayLike<number>;
  /** Global horizontal. */
  readonly ghi: ArrayLike<number>;
}

/**
 * How the diffuse light of every step is spread over the sky; shared by all planes. On a plane
 *
 *     sky = dhi ((1 − f1)(1 + cos β)/2 + f1 · max(cos aoi, 0) · perCos + f2 sin β)
 */
export interface SkySeries {
  /** Share that comes from about the sun. */
  readonly f1: Float64Array;
  /** Weight of the bright or dark horizon. */
  readonly f2: Float64Array;
  /** 1 / cos z, held where the sun is low; 0 with the sun down, and then the plane gets nothing. */
  readonly perCos: Float64Array;
}

function blank(count: number): SkySeries {
  return { f1: new Float64Array(count), f2: new Float64Array(count), perCos: new Float64Array(count) };
}

/** Refuses columns of other lengths and rows that are no numbers. */
function checkRadiation(sun: SunSeries, radiation: RadiationSeries): void {
  for (const name of ['dni', 'dhi', 'ghi'] as const) {
    const column = radiation[name];
    if (column.length !== sun.count) {
      const want = `${sun.count}, one per instant of the sun`;
      const mend = 'Give a row for every step, 0 at night.';
      throw new Refusal({ code: 'length-mismatch', at: `${name}.length`, got: column.length, want, mend });
    }
    // one sum tells whether any row is amiss; only then look for it
    let sum = 0;
    for (let i = 0; i < column.length; i++) sum += column[i];
    if (Number.isFinite(sum)) continue;
    for (let i = 0; i < column.length; i++)
      finite(column[i], `${name}[${i}]`, 'Fill the gap before the sky is worked out.');
  }
}

/**
 * Perez sky of a year: the first of two loops, the part that no plane needs to repeat.
 *
 * Negative readings count as 0. Air mass comes from a table: within 0.001 W/m² of `planeIrradiance`.
 *
 * @param dniExtra  Extraterrestrial normal, W/m²; default: the column of the sun.
 * @throws {Refusal} `length-mismatch`, `not-finite`.
 *
 * Source: Perez et al. 1990, Solar Energy 44(5), 271, all-sites composite.
 */
export function perezSeries(
  sun: SunSeries,
  radiation: RadiationSeries,
  dniExtra: ArrayLike<number> = sun.etrNormalWM2,
): SkySeries {
  checkRadiation(sun, radiation);
  const out = blank(sun.count);
  const { f1, f2, perCos } = out;
  const { apparentZenithDeg, up } = sun;
  const { dni, dhi } = radiation;
  const c = perezCoefficients;
  for (let i = 0; i < sun.count; i++) {
    const zenithDeg = apparentZenithDeg[i];
    if (!(zenithDeg < 90)) continue;
    const cosZ = up[i];
    perCos[i] = 1 / Math.max(cosZ, PEREZ_LOWEST_COS);
    const d = dhi[i];
    if (!(d > 0)) continue;
    const beam = Math.max(dni[i], 0);
    const z = zenithDeg * RAD;
    const k = PEREZ_KAPPA * z * z * z;
    const j = perezBin(((d + beam) / d + k) / (1 + k)) * 6;
    const delta = (d * airMassTable(zenithDeg)) / dniExtra[i];
    const bright = c[j] + c[j + 1] * delta + c[j + 2] * z;
    f1[i] = Math.max(bright, 0);
    f2[i] = c[j + 3] + c[j + 4] * delta + c[j + 5] * z;
  }
  return out;
}

/** Hay and Davies 1980 in the same form: f1 = dni/dniExtra, no horizon. Arguments as `perezSeries`. */
export function hayDaviesSeries(
  sun: SunSeries,
  radiation: RadiationSeries,
  dniExtra: ArrayLike<number> = sun.etrNormalWM2,
): SkySeries {
  checkRadiation(sun, radiation);
  const out = blank(sun.count);
  for (let i = 0; i < sun.count; i++) {
    if (!(sun.apparentZenithDeg[i] < 90)) continue;
    out.perCos[i] = 1 / Math.max(sun.up[i], 0.01745);
    out.f1[i] = Math.max(0, radiation.dni[i]) / dniExtra[i];
  }
  return out;
}

/** A sky of one brightness in the same form. */
export function isotropicSeries(sun: SunSeries): SkySeries {
  const out = blank(sun.count);
  for (let i = 0; i < sun.count; i++) {
    if (sun.apparentZenithDeg[i] < 90) out.perCos[i] = 1 / Math.max(sun.up[i], 0.01745);
  }
  return out;
}
