import { within } from '../refusal.ts';
import { airMassKastenYoung1989 } from './airMass.ts';
import { PEREZ_KAPPA, PEREZ_LOWEST_COS, perezBin, perezCoefficients } from './perez.ts';

const RAD = Math.PI / 180;
const DEG = 180 / Math.PI;

export interface PlaneInstant {
  /** Apparent zenith angle of the sun. */
  readonly sunZenithDeg: number;
  readonly sunAzimuthDeg: number;
  /** Beam normal, W/m². */
  readonly dni: number;
  /** Diffuse horizontal, W/m². */
  readonly dhi: number;
  /** Global horizontal, W/m²; used for the ground only. */
  readonly ghi: number;
  /** Extraterrestrial normal, W/m². */
  readonly dniExtra: number;
  /** Default: Kasten and Young 1989 of the zenith angle. */
  readonly airmassRelative?: number | undefined;
  /** 0 horizontal, 90 vertical. */
  readonly tiltDeg: number;
  /** Direction the plane faces, clockwise from true north. */
  readonly surfaceAzimuthDeg: number;
  /** Default 0.2. */
  readonly albedo?: number;
}

/** All in W/m² but the angle and the Perez figures. */
export interface PlaneIrradiance {
  /** Angle between the sun and the normal of the plane. */
  readonly aoiDeg: number;
  readonly poaBeam: number;
  readonly skyIsotropic: number;
  readonly skyHaydavies: number;
  readonly skyPerez: number;
  readonly groundDiffuse: number;
  /** The three Perez terms before their sum is held at 0. */
  readonly perezPartIsotropic: number;
  readonly perezPartCircumsolar: number;
  readonly perezPartHorizon: number;
  /** Clearness; undefined without diffuse light. */
  readonly perezEpsilon: number | undefined;
  /** Brightness; undefined below the horizon. */
  readonly perezDelta: number | undefined;
  /** 1 (overcast) to 8 (clear); undefined in the dark. */
  readonly perezBin: number | undefined;
}

/** Angle between the sun and the normal of a plane, degrees, and its cosine. */
function incidence(at: PlaneInstant): { readonly aoiDeg: number; readonly cosAoi: number } {
  const [z, tilt] = [at.sunZenithDeg * RAD, at.tiltDeg * RAD];
  const turn = (at.sunAzimuthDeg - at.surfaceAzimuthDeg) * RAD;
  const cos = Math.cos(z) * Math.cos(tilt) + Math.sin(z) * Math.sin(tilt) * Math.cos(turn);
  const cosAoi = Math.max(-1, Math.min(1, cos));
  return { aoiDeg: Math.acos(cosAoi) * DEG, cosAoi };
}

/** Clearness, brightness and bin (counted from 0) of the sky; undefined where there is nothing to judge. */
function skyState(at: PlaneInstant) {
  const z = at.sunZenithDeg * RAD;
  const k = PEREZ_KAPPA * z * z * z;
  const airMass = at.airmassRelative ?? airMassKastenYoung1989(at.sunZenithDeg);
  const delta = airMass === undefined ? undefined : (at.dhi * airMass) / at.dniExtra;
  if (!(at.dhi > 0)) return { epsilon: undefined, delta, bin: at.dni > 0 ? 7 : undefined };
  const epsilon = ((at.dhi + at.dni) / at.dhi + k) / (1 + k);
  return { epsilon, delta, bin: perezBin(epsilon) };
}

/** Refuses irradiances and angles without meaning. */
function check(at: PlaneInstant): void {
  within(at.sunZenithDeg, 0, 180, 'sunZenithDeg', 'Give the angle from overhead in degrees.');
  within(at.sunAzimuthDeg, -360, 360, 'sunAzimuthDeg', 'Clockwise from true north.');
  within(at.tiltDeg, 0, 180, 'tiltDeg', '0 is horizontal, 90 vertical.');
  within(at.surfaceAzimuthDeg, -360, 360, 'surfaceAzimuthDeg', 'Clockwise from true north.');
  for (const name of ['dni', 'dhi', 'ghi'] as const) within(at[name], 0, 3000, name, 'Give W/m², not below 0.');
  within(at.dniExtra, 1000, 2000, 'dniExtra', 'About 1320 to 1415 W/m² on Earth.');
  within(at.albedo ?? 0.2, 0, 1, 'albedo', '0.2 for grass and roofs, 0.8 for fresh snow.');
  if (at.airmassRelative !== undefined) within(at.airmassRelative, 0, 100, 'airmassRelative', '1 overhead.');
}

/**
 * Irradiance on a tilted plane at one instant, by three models of the sky at once.
 *
 *     beam        dni · max(cos aoi, 0), nothing once the sun is down
 *     isotropic   dhi (1 + cos β)/2
 *     Hay, Davies dhi (A·max(cos aoi, 0)/max(cos z, 0.01745) + (1 − A)(1 + cos β)/2), A = dni/dniExtra
 *     Perez       dhi ((1 − F1)(1 + cos β)/2 + F1·max(cos aoi, 0)/max(cos z, cos 85°) + F2 sin β), not below 0
 *     ground      ghi · albedo (1 − cos β)/2
 *
 * Perez is the best of the three on clear days (2 to 5 % above isotropic towards the equator).
 * With the sun down beam, Hay–Davies and Perez are zero. One albedo, an unbounded horizon, no shade.
 *
 * @throws {Refusal} `outside-range`.
 *
 * Source: Hay and Davies 1980; Perez et al. 1990, Solar Energy 44(5), 271, all-sites composite.
 */
export function planeIrradiance(at: PlaneInstant): PlaneIrradiance {
  check(at);
  const { aoiDeg, cosAoi } = incidence(at);
  const { epsilon, delta, bin } = skyState(at);
  const up = at.sunZenithDeg < 90;
  const a = Math.max(0, cosAoi);
  const cosZ = Math.cos(at.sunZenithDeg * RAD);
  const cosTilt = Math.cos(at.tiltDeg * RAD);
  const seen = (1 + cosTilt) / 2;

  const anisotropy = at.dni / at.dniExtra;
  const hayDavies = at.dhi * ((anisotropy * a) / Math.max(cosZ, 0.01745) + (1 - anisotropy) * seen);

  let [isotropic, circumsolar, horizon] = [0, 0, 0];
  if (up && epsilon !== undefined && bin !== undefined && delta !== undefined) {
    const c = perezCoefficients;
    const j = bin * 6;
    const z = at.sunZenithDeg * RAD;
    const f1 = Math.max(0, c[j] + c[j + 1] * delta + c[j + 2] * z);
    const f2 = c[j + 3] + c[j + 4] * delta + c[j + 5] * z;
    isotropic = at.dhi * (1 - f1) * seen;
    circumsolar = (at.dhi * f1 * a) / Math.max(cosZ, PEREZ_LOWEST_COS);
    horizon = at.dhi * f2 * Math.sin(at.tiltDeg * RAD);
  }
  return {
    aoiDeg,
    poaBeam: up ? at.dni * a : 0,
    skyIsotropic: at.dhi * seen,
    skyHaydavies: up ? hayDavies : 0,
    skyPerez: Math.max(0, isotropic + circumsolar + horizon),
    groundDiffuse: (at.ghi * (at.albedo ?? 0.2) * (1 - cosTilt)) / 2,
    perezPartIsotropic: isotropic,
    perezPartCircumsolar: circumsolar,
    perezPartHorizon: horizon,
    perezEpsilon: epsilon,
    perezDelta: delta,
    perezBin: bin === undefined ? undefined : bin + 1,
  };
}
