import { positive, within } from '../refusal.ts';
import { type IncidenceModel, incidenceByCosine } from './incidenceModifier.ts';

const RAD = Math.PI / 180;
const NODES = 200;

export interface IncidenceAverages {
  /** Share of uniform sky light that passes. */
  readonly sky: number;
  /** Share of uniform ground light that passes; undefined where the plane sees no ground. */
  readonly ground: number | undefined;
}

/** Share of the circle at incidence θ about the plane's normal that lies above the horizon. */
function shareAbove(theta: number, tilt: number): number {
  const cot = 1 / (Math.tan(theta) * Math.tan(tilt));
  if (cot >= 1) return 1;
  if (cot <= -1) return 0;
  return Math.acos(-cot) / Math.PI;
}

/** Averages of any modifier over sky and ground, weighted by cos(aoi), by one integral over incidence. */
function integrate(byCosine: (cosAoi: number) => number, tilt: number): IncidenceAverages {
  const sums = { sky: 0, skyAll: 0, ground: 0, groundAll: 0 };
  // the curve of shares has a corner at 90° − tilt; the mapping crowds nodes where the ends are steep
  const corner = Math.abs(Math.PI / 2 - tilt);
  for (const [from, to] of [
    [0, corner],
    [corner, Math.PI / 2],
  ] as const) {
    for (let k = 0; k < NODES; k++) {
      const u = (k + 0.5) / NODES;
      const theta = from + (to - from) * u * u * (3 - 2 * u);
      const cos = Math.cos(theta);
      const weight = cos * Math.sin(theta) * (to - from) * 6 * u * (1 - u);
      const q = shareAbove(theta, tilt);
      const passed = byCosine(cos);
      sums.sky += passed * weight * q;
      sums.skyAll += weight * q;
      sums.ground += passed * weight * (1 - q);
      sums.groundAll += weight * (1 - q);
    }
  }
  return {
    sky: sums.skyAll > 0 ? sums.sky / sums.skyAll : 0,
    ground: sums.groundAll > 1e-12 ? sums.ground / sums.groundAll : undefined,
  };
}

/** Closed form for the martin-ruiz curve. Source: Martin and Ruiz 2005, Progress in Photovoltaics 13, 75. */
function martinRuiz2005(aR: number, tilt: number): IncidenceAverages {
  const c1 = 4 / (3 * Math.PI);
  const c2 = 0.5 * aR - 0.154;
  const passed = (s: number): number => 1 - Math.exp(-(c1 * s + c2 * s * s) / aR);
  const sin = Math.sin(tilt);
  const cos = Math.cos(tilt);
  const seesSky = 1 + cos > 1e-9;
  const seesGround = 1 - cos > 1e-9;
  return {
    sky: seesSky ? passed(sin + (Math.PI - tilt - sin) / (1 + cos)) : 0,
    ground: seesGround ? passed(sin + (tilt - sin) / (1 - cos)) : undefined,
  };
}

/**
 * Incidence-angle modifiers for the light of a uniform sky and of a uniform ground.
 *
 * The curve of the model is averaged over the hemisphere of the plane, weighted by cos(aoi); at incidence
 * θ the share of the circle above the horizon is acos(−cot θ · cot β)/π, held in 0…1. For martin-ruiz
 * the closed form of 2005 is used.
 *
 * @throws {Refusal} `outside-range`, `not-positive`.
 *
 * Integral good to 5·10⁻⁶. Idea: Marion 2017, Solar Energy 147, 344.
 */
export function incidenceAverages(incidence: IncidenceModel, tiltDeg: number): IncidenceAverages {
  const tilt = within(tiltDeg, 0, 180, 'tiltDeg', '0 is horizontal, 90 vertical.') * RAD;
  if (incidence.model === 'martin-ruiz') {
    return martinRuiz2005(positive(incidence.aR, 'aR', 'Between 0.14 and 0.25, 0.16 for clean glass.'), tilt);
  }
  return integrate(incidenceByCosine(incidence), tilt);
}
