import {
  blankPlaneColumns,
  type PlaneColumns,
  perezSeries,
  planeSeries,
  type SunSeries,
  skyShare,
} from '@eaveline/physics';
import type { SunPlan } from '../sun/types.ts';
import { planeFrame } from './planeShape.ts';
import type { PlaneSun } from './types.ts';

/** Plain glass, 2 mm, index 1.526: what a sheet that says nothing of a coating gets. */
const GLASS = { model: 'physical' } as const;
/** Grass, roofs and streets alike: common practice, no source. */
export const ALBEDO = 0.2;

/** Works out the light of one plane after another; what all planes share is worked out once. */
export type PlaneLight = (tiltDeg: number, facingDeg: number) => PlaneSun;

/**
 * Light of a year on planes of one house.
 *
 * Perez 1990 sky, physical incidence modifier with its own averages for sky and ground. Light from the sun and from
 * the bright sky about it goes where the sun stands below the surveyed horizon; of the rest of the sky, taken as evenly
 * bright, the horizon takes the share it hides.
 *
 * @param horizonDeg  Height of the horizon for every whole degree of azimuth; nothing hidden where left out.
 */
export function planeLight(sun: SunPlan, horizonDeg: Float64Array | undefined): PlaneLight {
  const series = sunSeriesOf(sun);
  const sky = perezSeries(series, sun);
  const columns = blankPlaneColumns(sun.steps);
  const open = openSky(sun, horizonDeg);
  return (tiltDeg, facingDeg) => {
    const plane = { tiltDeg, azimuthDeg: facingDeg, albedo: ALBEDO, incidence: GLASS };
    const lit = planeSeries(series, sun, sky, plane, columns);
    const { normal } = planeFrame(facingDeg, tiltDeg);
    return splitLight(sun, lit, open, skyShare(normal, [], horizonDeg));
  };
}

/** The sun stage's columns under the names the physics gives them. */
function sunSeriesOf({ steps, zenithDeg, azimuthDeg, east, north, up, dniExtra }: SunPlan): SunSeries {
  return { count: steps, apparentZenithDeg: zenithDeg, azimuthDeg, east, north, up, etrNormalWM2: dniExtra };
}

/** 1 where the sun stands clear of the horizon, else 0. */
function openSky({ steps, zenithDeg, azimuthDeg }: SunPlan, horizonDeg: Float64Array | undefined): Uint8Array {
  const open = new Uint8Array(steps).fill(1);
  if (horizonDeg === undefined) return open;
  for (let i = 0; i < steps; i++) {
    const azimuth = azimuthDeg[i] as number;
    const k = Math.min(359, Math.floor(azimuth));
    const low = horizonDeg[k] as number;
    const height = low + (azimuth - k) * ((horizonDeg[k + 1] as number) - low);
    if (90 - (zenithDeg[i] as number) < height) open[i] = 0;
  }
  return open;
}

type Lit = PlaneColumns & { readonly skyIncidence: number; readonly groundIncidence: number };

/** Parts what goes with the sun from what stays, and sums both. */
function splitLight({ steps, stepS, month }: SunPlan, lit: Lit, open: Uint8Array, skyLeft: number): PlaneSun {
  const beam = new Float64Array(steps);
  const diffuse = new Float64Array(steps);
  const beamBare = new Float64Array(steps);
  const diffuseBare = new Float64Array(steps);
  const fromSky = new Float64Array(steps);
  const skyBare = new Float64Array(steps);
  const monthly = new Float64Array(12);
  let bare = 0;
  for (let i = 0; i < steps; i++) {
    const sky = lit.sky[i] as number;
    if (sky === 0 && lit.beam[i] === 0 && lit.ground[i] === 0) continue;
    const near = Math.min(lit.circumsolar[i] as number, sky);
    const direct = (lit.beam[i] as number) + near;
    const rest = sky - near;
    const ground = lit.ground[i] as number;
    bare += direct + rest + ground;
    skyBare[i] = rest * skyLeft;
    fromSky[i] = rest * skyLeft * lit.skyIncidence;
    diffuseBare[i] = rest * skyLeft + ground;
    diffuse[i] = (fromSky[i] as number) + ground * lit.groundIncidence;
    if (open[i] === 1) {
      beamBare[i] = direct;
      beam[i] = (lit.beamReduced[i] as number) + near * lit.skyIncidence;
    }
    monthly[month[i] as number] =
      (monthly[month[i] as number] as number) + (beam[i] as number) + (diffuse[i] as number);
  }
  const kwh = stepS / 3.6e6;
  const monthlyKwhM2 = Array.from(monthly, (sum) => sum * kwh);
  return {
    beam,
    diffuse,
    beamBare,
    diffuseBare,
    sky: fromSky,
    skyBare,
    monthlyKwhM2,
    annualKwhM2: monthlyKwhM2.reduce((sum, one) => sum + one, 0),
    annualBareKwhM2: bare * kwh,
  };
}
