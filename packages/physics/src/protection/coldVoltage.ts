import { positive, Refusal, within } from '../refusal.ts';
import { NEC_690_7_FACTOR } from './data/tables.ts';

export interface ColdVoltageInput {
  readonly vocStcV: number;
  /** Record low of the place: the cell is taken at air temperature, for Voc is near its rated value at dawn. */
  readonly lowestTemperatureC: number;
  readonly inverterMaxDcV: number;
  /** Of the module sheet, % of Voc per K. Left out: the table of NEC 690.7(A). */
  readonly betaPercentPerK?: number;
  /** Default 1. */
  readonly modulesInSeries?: number;
}

export interface ColdVoltage {
  /** What Voc is multiplied by. */
  readonly factor: number;
  readonly maxVoltageV: number;
  readonly withinInverterLimit: boolean;
  /** Of the limit, % left; negative when over it. */
  readonly marginPercent: number;
  /** The edge of the simpler case of AS/NZS 5033:2021 clause 5.4. */
  readonly above120VDc: boolean;
}

/**
 * Highest d.c. voltage at the inverter's input.
 *
 *     Vmax = n·Voc·(1 + β·(Tmin − 25)/100), or n·Voc·factor of NEC Table 690.7(A) where β is not given
 *
 * Above 24 °C the table adds nothing; below −40 °C it ends, and the coefficient must be known.
 */
export function coldVoltage(input: ColdVoltageInput): ColdVoltage {
  const vocV = positive(input.vocStcV, 'vocStcV', 'Read it from the module sheet.');
  const limitV = positive(input.inverterMaxDcV, 'inverterMaxDcV', 'Read it from the inverter sheet.');
  const lowC = within(input.lowestTemperatureC, -80, 60, 'lowestTemperatureC', 'Give the record low of the place.');
  const inSeries = positive(input.modulesInSeries ?? 1, 'modulesInSeries', 'Count the modules of one input.');
  const factor = input.betaPercentPerK === undefined ? necColdFactor(lowC) : byCoefficient(input.betaPercentPerK, lowC);
  const maxVoltageV = vocV * inSeries * factor;
  return {
    factor,
    maxVoltageV,
    withinInverterLimit: maxVoltageV <= limitV,
    marginPercent: 100 * (1 - maxVoltageV / limitV),
    above120VDc: maxVoltageV > 120,
  };
}

function byCoefficient(betaPercentPerK: number, lowC: number): number {
  within(
    betaPercentPerK,
    -1,
    0,
    'betaPercentPerK',
    'It is negative, about −0.25 to −0.35 % per K; mV per K must be converted.',
  );
  return 1 + (betaPercentPerK / 100) * (lowC - 25);
}

/** Factor of NEC Table 690.7(A); a temperature between two bands belongs to the colder one. */
export function necColdFactor(lowestC: number): number {
  if (lowestC >= 25) return 1;
  const row = NEC_690_7_FACTOR.find(([fromC]) => lowestC >= fromC);
  if (!row) {
    throw new Refusal({
      code: 'outside-range',
      at: 'lowestTemperatureC',
      got: lowestC,
      want: '−40 °C or warmer for the table',
      mend: 'Give the voltage coefficient of the module.',
    });
  }
  return row[1];
}
