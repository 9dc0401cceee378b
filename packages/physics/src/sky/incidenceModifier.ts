import { positive, within } from '../refusal.ts';

const RAD = Math.PI / 180;

/** Fresnel reflection at the glass and absorption in it. */
export interface GlassIncidence {
  readonly model: 'physical';
  /** Refractive index of the glass. Default 1.526. */
  readonly n?: number;
  /** Extinction, 1/m. Default 4. */
  readonly extinctionPerM?: number;
  /** Thickness, m. Default 0.002. */
  readonly thicknessM?: number;
  /** Refractive index of an anti-reflective layer on the glass; none if left out. */
  readonly nCoating?: number | undefined;
}

export interface AshraeIncidence {
  readonly model: 'ashrae';
  /** Usually 0.05. */
  readonly b: number;
}

export interface MartinRuizIncidence {
  readonly model: 'martin-ruiz';
  /** Angular loss coefficient; 0.16 for plain clean glass. */
  readonly aR: number;
}

export type IncidenceModel = GlassIncidence | AshraeIncidence | MartinRuizIncidence;

/** Transmittance relative to nothing lost, as a function of the cosine of incidence. */
type ByCosine = (cosAoi: number) => number;

/** Reflectance of one surface for the two polarisations, from cosines and indices on both sides. */
function surface(nOut: number, cosOut: number, nIn: number, cosIn: number): readonly [number, number] {
  const s = (nOut * cosOut - nIn * cosIn) / (nOut * cosOut + nIn * cosIn);
  const p = (nOut * cosIn - nIn * cosOut) / (nOut * cosIn + nIn * cosOut);
  return [s * s, p * p];
}

/** Cosine behind a surface whose relative index is n, by Snell. */
const refracted = (cosAoi: number, n: number): number => Math.sqrt(1 - (1 - cosAoi * cosAoi) / (n * n));

/** Light through coating and glass; inside the coating it runs to and fro. */
function glassTransmittance(glass: GlassIncidence): ByCosine {
  const n = within(glass.n ?? 1.526, 1, 3, 'n', 'Glass has 1.5, a coating 1.2 to 1.4.');
  const path = within(glass.extinctionPerM ?? 4, 0, 200, 'extinctionPerM', 'Clear glass has 4 per metre.');
  const depth = path * within(glass.thicknessM ?? 0.002, 0, 0.1, 'thicknessM', 'Give metres: 0.0032.');
  const layer = glass.nCoating === undefined ? n : within(glass.nCoating, 1, 3, 'nCoating', 'Usually 1.2 to 1.4.');
  return (cosAoi) => {
    const cosLayer = refracted(cosAoi, layer);
    const cosGlass = refracted(cosAoi, n);
    const outer = surface(1, cosAoi, layer, cosLayer);
    const inner = surface(layer, cosLayer, n, cosGlass);
    const through = (k: 0 | 1): number => ((1 - outer[k]) * (1 - inner[k])) / (1 - outer[k] * inner[k]);
    return 0.5 * (through(0) + through(1)) * Math.exp(-depth / cosGlass);
  };
}

/** The modifier of a model as a function of cos(aoi), 1 at normal incidence and 0 from 90° on. */
export function incidenceByCosine(incidence: IncidenceModel): ByCosine {
  switch (incidence.model) {
    case 'physical': {
      const through = glassTransmittance(incidence);
      const normal = through(1);
      return (cosAoi) => (cosAoi > 0 ? through(Math.min(1, cosAoi)) / normal : 0);
    }
    case 'ashrae': {
      const b = within(incidence.b, 0, 1, 'b', 'Usually 0.05.');
      return (cosAoi) => (cosAoi > 0 ? Math.max(0, 1 - b * (1 / cosAoi - 1)) : 0);
    }
    case 'martin-ruiz': {
      const aR = positive(incidence.aR, 'aR', 'Between 0.14 and 0.25, 0.16 for clean glass.');
      const whole = 1 - Math.exp(-1 / aR);
      return (cosAoi) => (cosAoi > 0 ? (1 - Math.exp(-cosAoi / aR)) / whole : 0);
    }
    default: {
      const never: never = incidence;
      throw new Error(`no such incidence model: ${JSON.stringify(never)}`);
    }
  }
}

/**
 * Incidence-angle modifier: share of the beam that reaches the cells, relative to normal incidence.
 *
 * @param aoiDeg  Angle between the sun and the normal of the plane; the answer is 0 at and beyond 90.
 * @throws {Refusal} `outside-range`, `not-positive`.
 *
 * Sources: physical, Snell–Fresnel–Bouguer as in De Soto, Klein and Beckman 2006, Solar Energy 80(1), 78,
 * with a coating as a second surface; ashrae, Souka and Safwat 1966; martin-ruiz, Martin and Ruiz 2001,
 * Solar Energy Materials and Solar Cells 70, 25.
 */
export function incidenceModifier(incidence: IncidenceModel, aoiDeg: number): number {
  within(aoiDeg, 0, 180, 'aoiDeg', 'Give the angle to the normal in degrees.');
  return aoiDeg < 90 ? incidenceByCosine(incidence)(Math.cos(aoiDeg * RAD)) : 0;
}
