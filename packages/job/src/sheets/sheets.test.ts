import { moduleFit } from '@eaveline/physics';
import { expect, test } from 'vitest';
import { sheetSchema } from '../schema/sheets.ts';
import { demoSheets, takeSheets } from './index.ts';
import { moduleSheets } from './modules.ts';

test('every sheet on the shelf is sound, and says that it is invented', () => {
  for (const [id, sheet] of Object.entries(demoSheets)) {
    expect(sheetSchema.safeParse(sheet).error?.issues ?? [], id).toEqual([]);
    expect(sheet.invented, id).toBe(true);
    expect(id).toMatch(/^[a-z0-9][a-z0-9-]*$/);
  }
});

test('a job takes copies: what it does to one, the shelf does not see', () => {
  const taken = takeSheets('alder-400');
  expect(taken['alder-400']).toEqual(demoSheets['alder-400']);
  taken['alder-400'].name = 'another';
  expect(demoSheets['alder-400'].name).toBe('Alder 400');
  // the kit's small parts come along
  expect(taken['end-cap']).toBeDefined();
});

test.each(Object.values(moduleSheets).map((sheet) => [sheet.name, sheet] as const))(
  '%s is physically possible: one five-parameter curve passes through its ratings',
  (_, sheet) => {
    const fit = moduleFit({
      vOcV: sheet.vocV,
      iScA: sheet.iscA,
      vMpV: sheet.vmpV,
      iMpA: sheet.impA,
      pMpW: sheet.pmpW,
      alphaIscAPerK: (sheet.iscPctPerK / 100) * sheet.iscA,
      betaVocVPerK: (sheet.vocPctPerK / 100) * sheet.vocV,
      cellsInSeries: sheet.cellsInSeries,
    });
    expect(fit.method).toBe('five-equations');
    // good silicon: 0.9 to 1.4 a cell
    expect(fit.idealityFactor).toBeGreaterThan(0.9);
    expect(fit.idealityFactor).toBeLessThan(1.4);
    // the curve's own −%/K of power agrees with the sheet's, which was chosen apart from it, to 0.02 %/K
    expect(Math.abs(fit.gammaPmpPerK * 100 - sheet.pmpPctPerK)).toBeLessThan(0.02);
    // rated power within the rounding of its volts and amperes
    expect(Math.abs((sheet.vmpV * sheet.impA) / sheet.pmpW - 1)).toBeLessThan(0.002);
  },
);
