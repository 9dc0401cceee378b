import { positive, Refusal, within } from '../refusal.ts';

/** Regional gust for a mean return of 500 years, m/s, of the Australian regions. AS/NZS 1170.2:2021, from memory. */
const AS_REGIONAL_GUST = { A: 45, B: 57, C: 66, D: 80 } as const;

export type AsWindRegion = keyof typeof AS_REGIONAL_GUST;

/** Gust at z ≤ 5 m and at 10 m by terrain category. AS/NZS 1170.2:2021 Table 4.1, from memory. */
const AS_HEIGHT = { 2: [0.91, 1], 3: [0.83, 0.83] } as const;

export interface AsPressureInput {
  readonly region: AsWindRegion;
  readonly terrain: 2 | 3;
  readonly heightM: number;
  /** Climate 1.0 in A and B1, 1.05 in B2, C and D. Default by region, B taken as B2. */
  readonly climate?: number;
  readonly direction?: number;
  /** 1.0 unless shielding was worked out; not below 0.7. */
  readonly shielding?: number;
  /** 1.0 on flat ground; any hill, escarpment, lee zone or coast: ask. */
  readonly topography?: number;
}

export interface SitePressure {
  /** Design gust or mean speed at the height, m/s. */
  readonly speedMPerS: number;
  readonly pressurePa: number;
}

/**
 * Design gust pressure on a site by AS/NZS 1170.2:2021 (from memory).
 *
 *     V = VR·Mc·Md·Mz,cat·Ms·Mt,   q = 0.6·V²
 *
 * Ultimate level: what comes of it is a design load, with no factor on the wind. Region and terrain outside
 * these tables, NZ regions and lee zones are data of the place: give speed and factors from the engineer.
 */
export function asPressure(input: AsPressureInput): SitePressure {
  const gust = AS_REGIONAL_GUST[input.region];
  const atHeight = AS_HEIGHT[input.terrain];
  if (gust === undefined || atHeight === undefined) {
    throw new Refusal({
      code: 'unknown-name',
      at: 'region',
      got: `${input.region}, terrain ${input.terrain}`,
      want: 'region A to D, terrain 2 or 3',
      mend: 'Take other regions and terrains from the standard.',
    });
  }
  const z = within(input.heightM, 0, 10, 'heightM', 'Above 10 m take the factor from the standard.');
  const [low, high] = atHeight;
  const mz = z <= 5 ? low : low + ((high - low) * (z - 5)) / 5;
  const mc = within(input.climate ?? (input.region === 'A' ? 1 : 1.05), 1, 1.2, 'climate', 'See the standard.');
  const md = within(input.direction ?? 1, 0.7, 1, 'direction', 'Take 1 for any direction.');
  const ms = within(input.shielding ?? 1, 0.7, 1, 'shielding', 'Take 1 unless worked out.');
  const mt = within(input.topography ?? 1, 1, 2, 'topography', 'Ask for the factor of the hill.');
  const speedMPerS = gust * mc * md * mz * ms * mt;
  return { speedMPerS, pressurePa: 0.6 * speedMPerS * speedMPerS };
}

/** Edge zone width by AS/NZS 1170.2: a = min(0.2·b, 0.2·d, h), m. */
export function asEdgeWidthM(breadthM: number, depthM: number, heightM: number): number {
  const b = positive(breadthM, 'breadthM', 'Plan breadth of the house.');
  const d = positive(depthM, 'depthM', 'Plan depth of the house.');
  return Math.min(0.2 * b, 0.2 * d, positive(heightM, 'heightM', 'Mean roof height.'));
}

/** z0 and zmin, m. EN 1991-1-4 Table 4.1, from memory. */
const EN_TERRAIN = { '0': [0.003, 1], I: [0.01, 1], II: [0.05, 2], III: [0.3, 5], IV: [1, 10] } as const;

export type EnTerrain = keyof typeof EN_TERRAIN;

export interface EnPressureInput {
  /** Basic wind velocity, m/s, direction and season factors already in it. */
  readonly basicMPerS: number;
  readonly terrain: EnTerrain;
  readonly heightM: number;
  /** Orography co. Default 1. */
  readonly orography?: number;
}

export interface EnPressure extends SitePressure {
  readonly terrainFactor: number;
  readonly roughness: number;
  readonly turbulence: number;
  readonly basicPressurePa: number;
}

/**
 * Peak velocity pressure by EN 1991-1-4 (from memory).
 *
 *     kr = 0.19·(z0/0.05)^0.07   cr = kr·ln(z/z0)   vm = cr·co·vb   Iv = 1/(co·ln(z/z0))
 *     qp = (1 + 7·Iv)·½·1.25·vm²
 *
 * Characteristic level. National annexes change all of it; the GB annex has its own charts.
 */
export function enPeakPressure(input: EnPressureInput): EnPressure {
  const terrain = EN_TERRAIN[input.terrain];
  if (!terrain) {
    throw new Refusal({
      code: 'unknown-name',
      at: 'terrain',
      got: input.terrain,
      want: '0, I, II, III or IV',
      mend: 'See Table 4.1.',
    });
  }
  const [z0, zMin] = terrain;
  const vb = positive(input.basicMPerS, 'basicMPerS', 'Take it from the national map.');
  const co = within(input.orography ?? 1, 1, 2, 'orography', 'Ask for the factor of the hill.');
  const z = Math.max(zMin, within(input.heightM, 0, 200, 'heightM', 'Give the height of the ridge.'));
  const terrainFactor = 0.19 * (z0 / 0.05) ** 0.07;
  const roughness = terrainFactor * Math.log(z / z0);
  const speedMPerS = roughness * co * vb;
  const turbulence = 1 / (co * Math.log(z / z0));
  return {
    terrainFactor,
    roughness,
    turbulence,
    speedMPerS,
    basicPressurePa: 0.625 * vb * vb,
    pressurePa: (1 + 7 * turbulence) * 0.625 * speedMPerS * speedMPerS,
  };
}

/** Roof zones of EN 1991-1-4: e = min(b, 2h); edges e/10 deep, corners e/4 long, m. */
export function enZones(crosswindM: number, heightM: number): { eM: number; edgeM: number; cornerM: number } {
  const b = positive(crosswindM, 'crosswindM', 'Breadth across the wind.');
  const eM = Math.min(b, 2 * positive(heightM, 'heightM', 'Height of the ridge.'));
  return { eM, edgeM: eM / 10, cornerM: eM / 4 };
}

/** Power-law exponent and gradient height, ft, of ASCE 7-16. From memory; 7-22 revised both. */
const ASCE_EXPOSURE = { B: [7, 1200], C: [9.5, 900], D: [11.5, 700] } as const;

export interface AscePressureInput {
  /** Basic wind speed, m/s (mph × 0.44704). */
  readonly basicMPerS: number;
  readonly exposure: keyof typeof ASCE_EXPOSURE;
  readonly heightM: number;
  readonly elevationM?: number;
  /** Kzt. Default 1. */
  readonly topography?: number;
  /** Kd, 0.85 for buildings. In 7-22 it moves from q to p: give 1 here then, and apply it once. */
  readonly direction?: number;
  /** Kz itself, where the edition fixes it. */
  readonly kz?: number;
}

export interface AscePressure extends SitePressure {
  readonly kz: number;
  readonly ke: number;
}

/**
 * Velocity pressure by ASCE 7-16 (from memory).
 *
 *     q = 0.613·Kz·Kzt·Kd·Ke·V²,   Kz = 2.01·(z/zg)^(2/α), z not below 15 ft;   Ke = exp(−0.000119·elevation)
 *
 * Components in exposure B use Kz not below 0.70, as some editions ask: the safe reading, taken always.
 * Strength level.
 */
export function ascePressure(input: AscePressureInput): AscePressure {
  const exposure = ASCE_EXPOSURE[input.exposure];
  if (!exposure) {
    throw new Refusal({
      code: 'unknown-name',
      at: 'exposure',
      got: input.exposure,
      want: 'B, C or D',
      mend: 'See chapter 26.',
    });
  }
  const [alpha, gradientFt] = exposure;
  const v = positive(input.basicMPerS, 'basicMPerS', 'Take it from the map of the risk category.');
  const zFt = Math.max(15, within(input.heightM, 0, 150, 'heightM', 'Mean roof height.') / 0.3048);
  const byHeight = 2.01 * (zFt / gradientFt) ** (2 / alpha);
  const kz = input.kz ?? (input.exposure === 'B' ? Math.max(0.7, byHeight) : byHeight);
  const ke = Math.exp(-0.000119 * within(input.elevationM ?? 0, -500, 9000, 'elevationM', 'Height above the sea.'));
  const kd = within(input.direction ?? 0.85, 0.5, 1, 'direction', '0.85 for buildings.');
  const kzt = within(input.topography ?? 1, 1, 3, 'topography', 'Ask for the factor of the hill.');
  return { kz, ke, speedMPerS: v, pressurePa: 0.613 * kz * kzt * kd * ke * v * v };
}

/** Pressure on a roof-parallel panel by ASCE 7-16 29.4.4: p = q·GCp·γE·γa; the coefficients come from the job. */
export function ascePanelPressurePa(input: {
  readonly pressurePa: number;
  /** External coefficient of the roof zone; negative is uplift. */
  readonly gcp: number;
  /** γE: 1.5 for exposed panels in uplift, else 1. */
  readonly edgeFactor: number;
  /** γa: 0.8 to 10 ft², falling to 0.4 at 100 ft². */
  readonly equalisation: number;
}): number {
  const q = positive(input.pressurePa, 'pressurePa', 'See ascePressure.');
  const gcp = within(input.gcp, -5, 5, 'gcp', 'By pitch, zone and area, from the standard.');
  const edge = within(input.edgeFactor, 1, 1.5, 'edgeFactor', '1 or 1.5.');
  return q * gcp * edge * within(input.equalisation, 0.4, 0.8, 'equalisation', '0.4 to 0.8.');
}
