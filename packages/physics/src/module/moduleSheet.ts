import { finite, positive, Refusal, within } from '../refusal.ts';

/** What a data sheet says of a module at 1000 W/m² and 25 °C. */
export interface ModuleSheet {
  readonly vOcV: number;
  readonly iScA: number;
  readonly vMpV: number;
  readonly iMpA: number;
  /** Rated power; held against vMpV · iMpA if given. */
  readonly pMpW?: number;
  /** Absolute, A/K: percent/100 × iScA. */
  readonly alphaIscAPerK: number;
  /** Absolute and negative, V/K: percent/100 × vOcV. */
  readonly betaVocVPerK: number;
  /** Cells in series in one string; a half-cut module with two parallel halves counts one half. */
  readonly cellsInSeries: number;
}

/**
 * Refuses a sheet that describes no module, and says which line to look at again.
 *
 * @throws {Refusal} `not-positive`, `not-finite`, `inconsistent`, `outside-range`.
 */
export function checkModuleSheet(sheet: ModuleSheet): void {
  for (const name of ['vOcV', 'iScA', 'vMpV', 'iMpA'] as const)
    positive(sheet[name], name, 'Read it off the data sheet.');
  refuseUnless(sheet.vOcV > sheet.vMpV, 'vOcV', sheet.vOcV, `above vMpV, ${sheet.vMpV} V`, 'The two may be swapped.');
  refuseUnless(sheet.iScA > sheet.iMpA, 'iScA', sheet.iScA, `above iMpA, ${sheet.iMpA} A`, 'The two may be swapped.');
  finite(sheet.betaVocVPerK, 'betaVocVPerK', 'Give volts per kelvin.');
  const betaWant = 'below 0 and above −1 % of vOcV per kelvin';
  const betaOk = sheet.betaVocVPerK < 0 && sheet.betaVocVPerK > -0.01 * sheet.vOcV;
  refuseUnless(betaOk, 'betaVocVPerK', sheet.betaVocVPerK, betaWant, 'Multiply percent/100 by vOcV and keep the sign.');
  within(
    sheet.alphaIscAPerK,
    -0.005 * sheet.iScA,
    0.005 * sheet.iScA,
    'alphaIscAPerK',
    'Multiply percent/100 by iScA.',
  );
  const wholeCells = Number.isInteger(sheet.cellsInSeries) && sheet.cellsInSeries >= 1 && sheet.cellsInSeries <= 400;
  refuseUnless(
    wholeCells,
    'cellsInSeries',
    sheet.cellsInSeries,
    'a whole number, 1 to 400',
    'Count the cells of one string.',
  );
  if (sheet.pMpW === undefined) return;
  positive(sheet.pMpW, 'pMpW', 'Read it off the data sheet.');
  const product = sheet.vMpV * sheet.iMpA;
  const want = `within 1 % of vMpV · iMpA, ${product.toFixed(1)} W`;
  refuseUnless(Math.abs(product / sheet.pMpW - 1) <= 0.01, 'pMpW', sheet.pMpW, want, 'One of the three is misread.');
}

function refuseUnless(ok: boolean, at: string, got: number, want: string, mend: string): void {
  if (!ok) throw new Refusal({ code: 'inconsistent', at, got, want, mend });
}
