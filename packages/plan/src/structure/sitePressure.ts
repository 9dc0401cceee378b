import type { SiteFacts } from '@eaveline/job';
import { type AsWindRegion, ascePressure, asPressure, type EnTerrain, enPeakPressure } from '@eaveline/physics';
import type { RulePack } from '../rules/pack.ts';
import { given, type Working, worked } from '../working.ts';

type Wind = SiteFacts['wind'];
export type WindMethod = RulePack['wind']['method'];

/** Pressure of the site, or the facts it waits for. */
export interface SitePressurePlan {
  readonly pressurePa?: number;
  readonly working?: Working;
  /** Job paths. */
  readonly missing: readonly string[];
}

const AT = 'facts.site.wind';
/** Heights the formulas at hand reach, m. */
const HIGHEST_M: Readonly<Record<WindMethod, number>> = { 'AS/NZS 1170.2': 10, 'EN 1991-1-4': 200, 'ASCE 7': 150 };
const EN_TERRAINS: readonly string[] = ['0', 'I', 'II', 'III', 'IV'] satisfies readonly EnTerrain[];

/**
 * Velocity pressure of the site by the pack's method. On a hill, an escarpment, in a lee zone or by the coast nothing
 * is worked out: the speed there is an engineer's.
 */
export function sitePressure(method: WindMethod, wind: Wind, elevationM: number | undefined): SitePressurePlan {
  const missing = [
    ...(wind.exposed === false ? [] : [`${AT}.exposed`]),
    ...(wind.roofHeightM === undefined || wind.roofHeightM > HIGHEST_M[method] ? [`${AT}.roofHeightM`] : []),
    ...(terrainReads(method, wind.terrain) ? [] : [`${AT}.terrain`]),
    ...(speedReads(method, wind) ? [] : [method === 'AS/NZS 1170.2' ? `${AT}.region` : `${AT}.basicSpeedMS`]),
  ];
  if (missing.length > 0) return { missing };
  const working = pressureWorking(method, wind, elevationM);
  return { pressurePa: working.value, working, missing };
}

function terrainReads(method: WindMethod, terrain: string | undefined): boolean {
  if (method === 'AS/NZS 1170.2') return terrain === '2' || terrain === '3';
  if (method === 'EN 1991-1-4') return EN_TERRAINS.includes(terrain ?? '');
  return terrain === 'B' || terrain === 'C' || terrain === 'D';
}

function speedReads(method: WindMethod, wind: Wind): boolean {
  return wind.basicSpeedMS !== undefined || (method === 'AS/NZS 1170.2' && australianRegion(wind.region) !== undefined);
}

/** `A`, `A0` to `A5`, `B1`, `B2`, `C`, `D`; New Zealand's regions are not in the table. */
function australianRegion(region: string | undefined): { region: AsWindRegion; climate: number } | undefined {
  const found = /^(A)[0-5]?$|^(B)[12]?$|^(C)$|^(D)$/.exec(region?.trim().toUpperCase() ?? '');
  if (!found) return undefined;
  const letter = found[0].charAt(0) as AsWindRegion;
  return { region: letter, climate: letter === 'A' || found[0] === 'B1' ? 1 : 1.05 };
}

type Pressure = Working & { readonly value: number };

function pressureWorking(method: WindMethod, wind: Wind, elevationM: number | undefined): Pressure {
  if (method === 'AS/NZS 1170.2') return byAsNzs(wind);
  return method === 'EN 1991-1-4' ? byEn(wind) : byAsce(wind, elevationM);
}

const terrainOf = (wind: Wind) => given('terrain', wind.terrain ?? '', '', `${AT}.terrain`, 'survey');
const heightOf = (wind: Wind) => given('mean roof height', wind.roofHeightM ?? 0, 'm', `${AT}.roofHeightM`, 'survey');
const speedOf = (wind: Wind) => given('basic speed', wind.basicSpeedMS ?? 0, 'm/s', `${AT}.basicSpeedMS`, 'wind map');

function pressure(value: number, formula: string, source: string, inputs: readonly Working[]): Pressure {
  return { ...worked('Velocity pressure', value, 'Pa', formula, source, inputs, { symbol: 'q', decimals: 0 }), value };
}

function byAsNzs(wind: Wind): Pressure {
  const terrain = wind.terrain === '2' ? 2 : 3;
  const heightM = wind.roofHeightM ?? 0;
  const place = australianRegion(wind.region);
  const source = 'AS/NZS 1170.2:2021, from memory';
  if (place) {
    const { speedMPerS, pressurePa } = asPressure({ ...place, terrain, heightM });
    const speed = worked(
      'gust at the roof',
      speedMPerS,
      'm/s',
      'V = V_R · M_c · M_z,cat, with M_d, M_s and M_t taken as 1',
      source,
      [given('wind region', wind.region ?? '', '', `${AT}.region`, 'wind map'), terrainOf(wind), heightOf(wind)],
      { symbol: 'V' },
    );
    return pressure(pressurePa, 'q = 0.6 · V²', source, [speed]);
  }
  // in terrain 2 at 10 m the multiplier is one, so this ratio is the multiplier of terrain and height alone
  const multiplier =
    asPressure({ region: 'A', terrain, heightM }).speedMPerS /
    asPressure({ region: 'A', terrain: 2, heightM: 10 }).speedMPerS;
  const speedMPerS = (wind.basicSpeedMS ?? 0) * multiplier;
  const speed = worked(
    'gust at the roof',
    speedMPerS,
    'm/s',
    'V = basic speed · M_z,cat; climate, direction and lee are in the basic speed',
    source,
    [speedOf(wind), terrainOf(wind), heightOf(wind)],
    { symbol: 'V' },
  );
  return pressure(0.6 * speedMPerS ** 2, 'q = 0.6 · V²', source, [speed]);
}

function byEn(wind: Wind): Pressure {
  const got = enPeakPressure({
    basicMPerS: wind.basicSpeedMS ?? 0,
    terrain: wind.terrain as EnTerrain,
    heightM: wind.roofHeightM ?? 0,
  });
  const source = 'EN 1991-1-4, from memory; the national annex changes it';
  const mean = worked(
    'mean speed at the roof',
    got.speedMPerS,
    'm/s',
    'v_m = k_r · ln(z ÷ z₀) · v_b',
    source,
    [speedOf(wind), terrainOf(wind), heightOf(wind)],
    { symbol: 'v_m' },
  );
  const turbulence: Working = { name: 'turbulence', symbol: 'I_v', value: got.turbulence, unit: '', source };
  return pressure(got.pressurePa, 'q_p = (1 + 7 · I_v) · ½ · 1.25 · v_m²', source, [mean, turbulence]);
}

function byAsce(wind: Wind, elevationM: number | undefined): Pressure {
  const got = ascePressure({
    basicMPerS: wind.basicSpeedMS ?? 0,
    exposure: wind.terrain as 'B' | 'C' | 'D',
    heightM: wind.roofHeightM ?? 0,
    ...(elevationM === undefined ? {} : { elevationM }),
  });
  const source = 'ASCE 7-16, from memory';
  return pressure(got.pressurePa, 'q = 0.613 · K_z · K_zt · K_d · K_e · V²', source, [
    worked('height and exposure', got.kz, '', 'K_z = 2.01 · (z ÷ z_g)^(2 ÷ α)', source, [
      terrainOf(wind),
      heightOf(wind),
    ]),
    worked(
      'thin air',
      got.ke,
      '',
      'K_e = exp(−0.000119 · height above sea)',
      source,
      elevationM === undefined ? [] : [given('height above sea', elevationM, 'm', 'facts.site.elevationM', 'survey')],
    ),
    { name: 'direction', symbol: 'K_d', value: 0.85, unit: '', source },
    speedOf(wind),
  ]);
}
