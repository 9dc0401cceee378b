import { positive, within } from '../refusal.ts';
import type { SunSeries } from '../sun/sunSeries.ts';
import { airMassKastenYoung1989, airMassTable } from './airMass.ts';

const RAD = Math.PI / 180;

/**
 * Clear-sky global horizontal irradiance from the height of the sun alone, W/m²:
 *
 *     ghi = 1098 cos z · exp(−0.059 / cos z)
 *
 * Good to some 5 % at moderate altitudes; knows neither haze nor height. Some texts print 0.057.
 *
 * @throws {Refusal} `outside-range`. Source: Haurwitz 1945, Journal of Meteorology 2, 154.
 */
export function clearSkyHaurwitz1945(apparentZenithDeg: number): number {
  within(apparentZenithDeg, 0, 180, 'apparentZenithDeg', 'Give the angle from overhead in degrees.');
  const cosZ = apparentZenithDeg < 90 ? Math.cos(apparentZenithDeg * RAD) : 0;
  return cosZ > 0 ? 1098 * cosZ * Math.exp(-0.059 / cosZ) : 0;
}

export interface ClearSkyInput {
  readonly apparentZenithDeg: number;
  /** Linke turbidity at air mass 2: 2 in clean cold air, 3 usual, 5 in haze. */
  readonly linkeTurbidity: number;
  readonly altitudeM: number;
  /** Extraterrestrial normal, W/m². */
  readonly dniExtra: number;
  /** Relative air mass × pressure/101325. Default: Kasten and Young with `pressurePa`. */
  readonly airmassAbsolute?: number | undefined;
  /** Needed only where the air mass is not given; default sea level. */
  readonly pressurePa?: number;
}

export interface ClearSky {
  readonly ghi: number;
  readonly dni: number;
  readonly dhi: number;
}

/** What the model needs of a place, worked out once. */
interface Coefficients {
  readonly cg1: number;
  readonly hazeGlobal: number;
  readonly beamScale: number;
  readonly hazeBeam: number;
  readonly beamShare: number;
}

function coefficients(altitudeM: number, turbidity: number): Coefficients {
  const fh1 = Math.exp(-altitudeM / 8000);
  const fh2 = Math.exp(-altitudeM / 1250);
  return {
    cg1: 5.09e-5 * altitudeM + 0.868,
    hazeGlobal: -(3.92e-5 * altitudeM + 0.0387) * (fh1 + fh2 * (turbidity - 1)),
    beamScale: 0.664 + 0.163 / fh1,
    hazeBeam: -0.09 * (turbidity - 1),
    beamShare: 1 - (0.1 - 0.2 * Math.exp(-turbidity)) / (0.1 + 0.882 / fh1),
  };
}

/**
 * Clear-sky beam, diffuse and global from turbidity, height and air mass.
 *
 * Beam is the smaller of the two published expressions; diffuse is the rest of the global; all zero
 * when the sun is down. The later factor for high air masses is left out.
 *
 * @throws {Refusal} `outside-range`, `not-positive`.
 *
 * One unit of turbidity is 4 to 8 % of global and 10 to 18 % of beam: no verdict on a system below
 * 25° of sun. Source: Ineichen and Perez 2002, Solar Energy 73(3), 151.
 */
export function clearSkyIneichenPerez2002(input: ClearSkyInput): ClearSky {
  const zenithDeg = within(input.apparentZenithDeg, 0, 180, 'apparentZenithDeg', 'Give degrees from overhead.');
  const turbidity = within(input.linkeTurbidity, 1, 20, 'linkeTurbidity', 'Between 2 (clean) and 7 (thick haze).');
  const altitudeM = within(input.altitudeM, -500, 9000, 'altitudeM', 'Give metres above sea level.');
  const dniExtra = within(input.dniExtra, 1000, 2000, 'dniExtra', 'About 1320 to 1415 W/m² on Earth.');
  const cosZ = Math.cos(zenithDeg * RAD);
  const relative = airMassKastenYoung1989(zenithDeg);
  if (relative === undefined || !(cosZ > 0) || zenithDeg >= 90) return { ghi: 0, dni: 0, dhi: 0 };
  const pressurePa = positive(input.pressurePa ?? 101_325, 'pressurePa', 'Give pascals.');
  const airMass = positive(input.airmassAbsolute ?? (relative * pressurePa) / 101_325, 'airmassAbsolute', 'Above 0.');
  const c = coefficients(altitudeM, turbidity);
  const ghi = c.cg1 * dniExtra * cosZ * Math.exp(c.hazeGlobal * airMass);
  const dni = Math.min(dniExtra * c.beamScale * Math.exp(c.hazeBeam * airMass), (ghi * c.beamShare) / cosZ);
  return { ghi, dni, dhi: ghi - dni * cosZ };
}

export interface ClearSkySeries {
  readonly ghi: Float64Array;
  readonly dni: Float64Array;
  readonly dhi: Float64Array;
}

/**
 * The same for every instant of a sun series; one turbidity for all.
 *
 * @param dniExtra  W/m², one for all; default: the series' own extraterrestrial column.
 * @throws {Refusal} `outside-range`, `not-positive`.
 */
export function clearSkySeries(
  sun: SunSeries,
  site: { readonly altitudeM: number; readonly pressurePa: number; readonly linkeTurbidity: number },
  dniExtra?: number,
): ClearSkySeries {
  within(site.linkeTurbidity, 1, 20, 'linkeTurbidity', 'Between 2 (clean) and 7 (thick haze).');
  within(site.altitudeM, -500, 9000, 'altitudeM', 'Give metres above sea level.');
  const perAirMass = positive(site.pressurePa, 'pressurePa', 'Give pascals.') / 101_325;
  const c = coefficients(site.altitudeM, site.linkeTurbidity);
  const [ghi, dni, dhi] = [new Float64Array(sun.count), new Float64Array(sun.count), new Float64Array(sun.count)];
  for (let i = 0; i < sun.count; i++) {
    const zenithDeg = sun.apparentZenithDeg[i];
    const cosZ = sun.up[i];
    if (!(zenithDeg < 90 && cosZ > 0)) continue;
    const extra = dniExtra ?? sun.etrNormalWM2[i];
    const airMass = airMassTable(zenithDeg) * perAirMass;
    const g = c.cg1 * extra * cosZ * Math.exp(c.hazeGlobal * airMass);
    const b = Math.min(extra * c.beamScale * Math.exp(c.hazeBeam * airMass), (g * c.beamShare) / cosZ);
    ghi[i] = g;
    dni[i] = b;
    dhi[i] = g - b * cosZ;
  }
  return { ghi, dni, dhi };
}
