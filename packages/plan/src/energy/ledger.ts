import type { ModuleSheet, UnitSheet } from '@eaveline/job';
import type { PlacedModule } from '../array/types.ts';
import type { RoofPlane } from '../roof/types.ts';
import type { SunPlan } from '../sun/types.ts';
import { given, givenAngle, type Working, worked } from '../working.ts';
import { DUST, type ModuleYear } from './moduleYear.ts';
import type { ModuleEnergy } from './types.ts';

/** What the ledger of one module is written from. */
export interface LedgerInput {
  readonly module: PlacedModule;
  readonly moduleSheet: ModuleSheet;
  readonly plane: RoofPlane;
  readonly sun: SunPlan;
  readonly year: ModuleYear;
  readonly unitSheet: UnitSheet;
  readonly unitSheetId: string;
  /** A.c. at the unit's terminals after its ceiling, what the ceiling took, and what arrives at the board, kWh. */
  readonly acKwh: number;
  readonly clippedKwh: number;
  readonly boardKwh: number;
  /** Share of its rating that the wires take when the whole trunk gives its rating. */
  readonly lossShare: number;
  /** Low and high of nine years in ten, as shares of what arrives. */
  readonly range: readonly [number, number];
}

/** One line before factors are put to it: what, how much is left, where it comes from and the facts it used. */
interface Step {
  readonly what: string;
  readonly value: number;
  readonly unit: string;
  readonly source: string;
  readonly facts?: readonly Working[];
}

/**
 * The chain from the sun on level ground to the board, each line a factor and what is left after it, and the same
 * chain as a working, each line made from the line before it and the facts it used.
 */
export function writeLedger(input: LedgerInput): Pick<ModuleEnergy, 'ledger' | 'working'> {
  const { module, range } = input;
  const steps = [...lightSteps(input), ...powerSteps(input)];
  const ledger = steps.map(({ what, value, unit }, k) => {
    const before = steps[k - 1];
    // from sun to energy the unit changes: no factor there, and none where nothing was left to lose
    const factor = before && before.unit === unit && before.value > 0 ? value / before.value : undefined;
    return { what, ...(factor !== undefined && { factor }), value, unit };
  });
  const chain = steps.reduce<Working | undefined>((before, { what, value, unit, source, facts = [] }, k) => {
    const factor = ledger[k]?.factor;
    const formula =
      factor === undefined ? 'begins the chain, or turns sun into energy' : `the line before × ${factor.toFixed(4)}`;
    return worked(what, value, unit, formula, source, before ? [before, ...facts] : facts);
  }, undefined);
  const working = worked(
    `${module.name}, energy in a year`,
    input.boardKwh,
    'kWh',
    'sun on the level, and one loss after another',
    'as each line says',
    chain ? [chain] : [],
    { range: [input.boardKwh * range[0], input.boardKwh * range[1]], note: 'nine years in ten' },
  );
  return { ledger, working };
}

/** Lines that are light: from the level to the cells, in kWh of the module's rating from the third on. */
function lightSteps({ module, plane, sun, year }: LedgerInput): Step[] {
  const { annualBareKwhM2 } = plane.sun;
  const perKwhM2 = module.pmpW / 1000;
  const planeAt = `facts.roof.planes.${plane.id}`;
  return [
    {
      what: 'sun on level ground',
      value: sun.annualGhiKwhM2,
      unit: 'kWh/m²',
      source: sun.climate.name,
      facts: sun.workings,
    },
    {
      what: 'on this plane',
      value: annualBareKwhM2,
      unit: 'kWh/m²',
      source: 'Perez et al. 1990',
      facts: [
        givenAngle('facing', plane.facingDeg, `${planeAt}.facingDeg`),
        givenAngle('pitch', plane.pitchDeg, `${planeAt}.pitchDeg`),
      ],
    },
    {
      what: `× ${module.pmpW} W at 25 °C`,
      value: annualBareKwhM2 * perKwhM2,
      unit: 'kWh',
      source: 'equipment sheet',
      facts: [given('rated power', module.pmpW, 'W', `choices.equipment.${module.sheetId}.pmpW`, 'equipment sheet')],
    },
    {
      what: 'horizon',
      value: year.openKwhM2 * perKwhM2,
      unit: 'kWh',
      source: 'horizon of the survey',
    },
    // of a clear module there is nothing to say
    ...(year.bareKwhM2 === year.openKwhM2
      ? []
      : [
          {
            what: 'near objects',
            value: year.bareKwhM2 * perKwhM2,
            unit: 'kWh',
            source: 'objects of the survey, things on the roof, its other planes',
          },
        ]),
    {
      what: 'glancing light',
      value: year.behindGlassKwhM2 * perKwhM2,
      unit: 'kWh',
      source: 'De Soto, Klein and Beckman 2006, plain glass',
    },
    {
      what: 'dust',
      value: year.behindGlassKwhM2 * (1 - DUST) * perKwhM2,
      unit: 'kWh',
      source: 'common practice, no source',
    },
  ];
}

/** Lines that are electricity: from the cells to the board. */
function powerSteps(input: LedgerInput): Step[] {
  const { module, moduleSheet, year, unitSheet, unitSheetId, acKwh, clippedKwh, boardKwh, lossShare } = input;
  const { name, efficiency, ratedVA } = unitSheet;
  const unitAt = `choices.equipment.${unitSheetId}`;
  const sheet = 'equipment sheet';
  return [
    {
      what: 'warm cells and low sun',
      value: year.evenDcKwh,
      unit: 'kWh',
      source: 'De Soto, Klein and Beckman 2006; cell temperature by the sheet’s NOCT, after Ross 1980',
      facts: [given('NOCT', moduleSheet.noctC, '°C', `choices.equipment.${module.sheetId}.noctC`, sheet)],
    },
    ...(year.dcKwh === year.evenDcKwh
      ? []
      : [
          {
            what: 'sections in unlike light',
            value: year.dcKwh,
            unit: 'kWh',
            source: 'highest hill of three sections in series, each behind its bypass',
          },
        ]),
    {
      what: `${name}, ${(efficiency * 100).toFixed(1)} %`,
      value: acKwh + clippedKwh,
      unit: 'kWh',
      source: sheet,
      facts: [given('efficiency', efficiency, '', `${unitAt}.efficiency`, sheet)],
    },
    {
      what: `above ${ratedVA} VA`,
      value: acKwh,
      unit: 'kWh',
      source: sheet,
      facts: [given('rating', ratedVA, 'VA', `${unitAt}.ratedVA`, sheet)],
    },
    {
      what: 'trunk and home run',
      value: boardKwh,
      unit: 'kWh',
      source: 'I²R at rating, with the square of the power',
      facts: [
        worked('lost at full export', lossShare, '', 'rise above the board ÷ volts at the terminals', 'trunks', []),
      ],
    },
  ];
}
