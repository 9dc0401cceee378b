import type { PlacedModule } from '../array/types.ts';
import type { RoofPlane } from '../roof/types.ts';
import type { SunPlan } from '../sun/types.ts';
import { type Working, worked } from '../working.ts';
import { DUST, type ModuleYear } from './moduleYear.ts';
import type { ModuleEnergy } from './types.ts';

type Line = ModuleEnergy['ledger'][number];

/** What the ledger of one module is written from. */
export interface LedgerInput {
  readonly module: PlacedModule;
  readonly plane: RoofPlane;
  readonly sun: SunPlan;
  readonly year: ModuleYear;
  readonly unitName: string;
  readonly ratedVA: number;
  readonly efficiency: number;
  /** A.c. at the unit's terminals after its ceiling, what the ceiling took, and what arrives at the board, kWh. */
  readonly acKwh: number;
  readonly clippedKwh: number;
  readonly boardKwh: number;
}

/** The chain from the sun on level ground to the board, each step as a factor and what is left after it. */
export function writeLedger({
  module,
  plane,
  sun,
  year,
  unitName,
  ratedVA,
  efficiency,
  acKwh,
  clippedKwh,
  boardKwh,
}: LedgerInput): Line[] {
  const { annualBareKwhM2 } = plane.sun;
  const perKwhM2 = module.pmpW / 1000;
  const steps: readonly (readonly [what: string, value: number, unit: string])[] = [
    ['sun on level ground', sun.annualGhiKwhM2, 'kWh/m²'],
    ['on this plane', annualBareKwhM2, 'kWh/m²'],
    [`× ${module.pmpW} W at 25 °C`, annualBareKwhM2 * perKwhM2, 'kWh'],
    ['horizon and near objects', year.bareKwhM2 * perKwhM2, 'kWh'],
    ['glancing light', year.behindGlassKwhM2 * perKwhM2, 'kWh'],
    ['dust', year.behindGlassKwhM2 * (1 - DUST) * perKwhM2, 'kWh'],
    ['warm cells and low sun', year.dcKwh, 'kWh'],
    [`${unitName}, ${(efficiency * 100).toFixed(1)} %`, acKwh + clippedKwh, 'kWh'],
    [`above ${ratedVA} VA`, acKwh, 'kWh'],
    ['trunk and home run', boardKwh, 'kWh'],
  ];
  return steps.map(([what, value, unit], k) => {
    const before = steps[k - 1];
    // from sun to energy the unit changes: no factor there, and none where nothing was left to lose
    const factor = before && before[2] === unit && before[1] > 0 ? value / before[1] : undefined;
    return { what, ...(factor !== undefined && { factor }), value, unit };
  });
}

const SOURCES: Readonly<Record<string, string>> = {
  'sun on level ground': 'the climate of the plan',
  'on this plane': 'Perez et al. 1990',
  'horizon and near objects': 'horizon and objects of the survey',
  'glancing light': 'De Soto, Klein and Beckman 2006, plain glass',
  dust: 'common practice, no source',
  'warm cells and low sun': 'De Soto, Klein and Beckman 2006; cell temperature by the sheet’s NOCT, after Ross 1980',
  'trunk and home run': 'I²R at rating, with the square of the power',
};

/** The ledger as one working: each line made from the line before it. */
export function ledgerWorking(name: string, ledger: readonly Line[], range: readonly [number, number]): Working {
  const last = ledger.at(-1);
  if (last === undefined) throw new Error('a ledger has lines');
  const chain = ledger.reduce<Working | undefined>((before, { what, factor, value, unit }) => {
    const formula =
      factor === undefined ? 'begins the chain, or turns sun into energy' : `the line before × ${factor.toFixed(4)}`;
    return worked(what, value, unit, formula, SOURCES[what] ?? 'equipment sheet', before ? [before] : []);
  }, undefined);
  return worked(
    `${name}, energy in a year`,
    last.value,
    'kWh',
    'sun on the level, and one loss after another',
    'as each line says',
    chain ? [chain] : [],
    { range: [last.value * range[0], last.value * range[1]], note: 'nine years in ten' },
  );
}
