import { within } from '../refusal.ts';
import type { SunSeries } from '../sun/sunSeries.ts';
import { type IncidenceAverages, incidenceAverages } from './incidenceAverages.ts';
import { type IncidenceModel, incidenceByCosine } from './incidenceModifier.ts';
import type { RadiationSeries, SkySeries } from './skySeries.ts';

const RAD = Math.PI / 180;
const CELLS = 1024;

export interface Plane {
  /** 0 horizontal, 90 vertical. */
  readonly tiltDeg: number;
  /** Direction the plane faces, clockwise from true north. */
  readonly azimuthDeg: number;
  /** Default 0.2. */
  readonly albedo?: number;
  /** What the glass lets through; without it nothing is lost. */
  readonly incidence?: IncidenceModel;
}

/** Irradiance on one plane, W/m², a row a step. */
export interface PlaneSeries {
  readonly beam: Float64Array;
  /** Sky diffuse, the circumsolar part included. */
  readonly sky: Float64Array;
  /** The circumsolar part of `sky`: it goes when the beam goes. */
  readonly circumsolar: Float64Array;
  readonly ground: Float64Array;
  /** Beam after reflection at the glass. */
  readonly beamReduced: Float64Array;
  /** All three after reflection: beamReduced + skyIncidence·sky + groundIncidence·ground. */
  readonly effective: Float64Array;
  /** Share of sky light that passes the glass. */
  readonly skyIncidence: number;
  /** Share of ground light that passes the glass. */
  readonly groundIncidence: number;
}

/** Columns for `planeSeries` to write into again and again. */
export type PlaneColumns = Pick<PlaneSeries, 'beam' | 'sky' | 'circumsolar' | 'ground' | 'beamReduced' | 'effective'>;

export function blankPlaneColumns(count: number): PlaneColumns {
  const column = (): Float64Array => new Float64Array(count);
  return {
    beam: column(),
    sky: column(),
    circumsolar: column(),
    ground: column(),
    beamReduced: column(),
    effective: column(),
  };
}

/** Modifier over the cosine of incidence, where it has no steep end: linear in 1,024 cells, within 5·10⁻⁶. */
export function incidenceTable(incidence: IncidenceModel | undefined): Float64Array {
  const table = new Float64Array(CELLS + 2);
  const byCosine = incidence ? incidenceByCosine(incidence) : (cosAoi: number) => (cosAoi > 0 ? 1 : 0);
  for (let k = 0; k <= CELLS; k++) table[k] = byCosine(k / CELLS);
  if (!incidence) table[0] = 1; // nothing lost right down to grazing light
  table[CELLS + 1] = table[CELLS];
  return table;
}

/**
 * Irradiance of a year on one plane: the second of two flat loops.
 *
 * Beam, sky and ground as in `planeIrradiance`, with the sky spread as `sky` says, and what is left of
 * them behind the glass. Rows with the sun down (apparent zenith ≥ 90°) are all zero; the twilight
 * dropped with them is below 0.2 % of a year. No shade: the masks of the roof come after this, and
 * take `circumsolar` away together with the beam.
 *
 * @param into  Columns to write into; new ones if left out. Nothing else is allocated per step.
 * @throws {Refusal} `outside-range`.
 */
export function planeSeries(
  sun: SunSeries,
  radiation: RadiationSeries,
  sky: SkySeries,
  plane: Plane,
  into: PlaneColumns = blankPlaneColumns(sun.count),
): PlaneSeries {
  const tilt = within(plane.tiltDeg, 0, 180, 'tiltDeg', '0 is horizontal, 90 vertical.') * RAD;
  const azimuth = within(plane.azimuthDeg, -360, 360, 'azimuthDeg', 'Clockwise from true north.') * RAD;
  const albedo = within(plane.albedo ?? 0.2, 0, 1, 'albedo', '0.2 for grass and roofs, 0.8 for fresh snow.');
  const table = incidenceTable(plane.incidence);
  const whole: IncidenceAverages = { sky: 1, ground: 1 };
  const passed = plane.incidence ? incidenceAverages(plane.incidence, plane.tiltDeg) : whole;
  const skyIncidence = passed.sky;
  const groundIncidence = passed.ground ?? 1; // a horizontal plane sees no ground: any share of nothing

  const normalE = Math.sin(tilt) * Math.sin(azimuth);
  const normalN = Math.sin(tilt) * Math.cos(azimuth);
  const normalU = Math.cos(tilt);
  const seen = (1 + normalU) / 2;
  const horizon = Math.sin(tilt);
  const reflected = (albedo * (1 - normalU)) / 2;
  const { east, north, up } = sun;
  const { beam, sky: dome, circumsolar, ground, beamReduced, effective } = into;
  const { dni, dhi, ghi } = radiation;
  const { f1, f2, perCos } = sky;
  for (let i = 0; i < sun.count; i++) {
    if (perCos[i] === 0) {
      beam[i] = dome[i] = circumsolar[i] = ground[i] = beamReduced[i] = effective[i] = 0;
      continue;
    }
    const cosAoi = normalE * east[i] + normalN * north[i] + normalU * up[i];
    const a = cosAoi > 0 ? Math.min(cosAoi, 1) : 0;
    const direct = dni[i] > 0 ? dni[i] * a : 0;
    const diffuse = Math.max(0, dhi[i]);
    const near = diffuse * f1[i] * a * perCos[i];
    const above = Math.max(0, diffuse * ((1 - f1[i]) * seen + f2[i] * horizon) + near);
    const below = ghi[i] > 0 ? ghi[i] * reflected : 0;
    const place = a * CELLS;
    const k = Math.floor(place);
    const reduced = direct * (table[k] + (place - k) * (table[k + 1] - table[k]));
    beam[i] = direct;
    dome[i] = above;
    circumsolar[i] = near;
    ground[i] = below;
    beamReduced[i] = reduced;
    effective[i] = reduced + above * skyIncidence + below * groundIncidence;
  }
  return { ...into, skyIncidence, groundIncidence };
}
