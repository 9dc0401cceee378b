import type { ModuleSheet } from '@eaveline/job';
import {
  blankSectionState,
  moduleFit,
  modulePowerFromTable,
  modulePowerLinear2014,
  modulePowerTable,
  Refusal,
  sectionBest,
  sectionsAt,
} from '@eaveline/physics';

/** D.c. power of one module, W, under light that reached its cells and at their temperature. */
export type ModulePower = (irradiance: number, cellC: number) => number;

/** A sheet's power and, where its figures fit no diode, the reason. */
export interface SheetPower {
  readonly power: ModulePower;
  /** The same with the light of each of its three sections: the highest hill of their summed curve. */
  readonly sectionPower: (a: number, b: number, c: number, cellC: number) => number;
  readonly method: 'five parameters' | 'rated power and its coefficient';
  readonly why?: string;
}

const KEPT = 16;
const kept = new Map<string, SheetPower>();

/**
 * Power of a module by its sheet: the five-parameter model, tabulated, and brought to the rated power of the sheet.
 *
 * A sheet whose figures fit no single diode goes by rated power and power coefficient alone, and says why. Fit and
 * table cost about a millisecond and are kept for the last sheets used.
 */
export function modulePower(sheet: ModuleSheet): SheetPower {
  const { pmpW, vocV, iscA, vmpV, impA, vocPctPerK, iscPctPerK, pmpPctPerK, cellsInSeries } = sheet;
  const key = JSON.stringify([pmpW, vocV, iscA, vmpV, impA, vocPctPerK, iscPctPerK, pmpPctPerK, cellsInSeries]);
  const known = kept.get(key);
  if (known) return known;
  const made = byDiode(sheet);
  if (kept.size >= KEPT) kept.delete(kept.keys().next().value as string);
  kept.set(key, made);
  return made;
}

function byDiode(sheet: ModuleSheet): SheetPower {
  try {
    const { model } = moduleFit({
      vOcV: sheet.vocV,
      iScA: sheet.iscA,
      vMpV: sheet.vmpV,
      iMpA: sheet.impA,
      pMpW: sheet.pmpW,
      alphaIscAPerK: (sheet.iscPctPerK / 100) * sheet.iscA,
      betaVocVPerK: (sheet.vocPctPerK / 100) * sheet.vocV,
      cellsInSeries: sheet.cellsInSeries,
    });
    const table = modulePowerTable(model);
    const scale = sheet.pmpW / modulePowerFromTable(table, 1000, 25);
    const room = blankSectionState();
    return {
      power: (light, cellC) => scale * modulePowerFromTable(table, light, cellC),
      sectionPower: (a, b, c, cellC) =>
        scale * sectionBest(sectionsAt(model, [a, b, c], cellC, room), 0, Number.POSITIVE_INFINITY).powerW,
      method: 'five parameters',
    };
  } catch (refusal) {
    if (!(refusal instanceof Refusal)) throw refusal;
    const gamma = sheet.pmpPctPerK / 100;
    const power = (light: number, cellC: number) =>
      light > 0 ? Math.max(0, modulePowerLinear2014(sheet.pmpW, gamma, light, cellC)) : 0;
    return {
      power,
      // so many sections in series carry the current of the darkest of them
      sectionPower: (a, b, c, cellC) => {
        const [most, middle, least] = [a, b, c].sort((x, y) => y - x) as [number, number, number];
        return Math.max(power(most, cellC) / 3, (2 * power(middle, cellC)) / 3, power(least, cellC));
      },
      method: 'rated power and its coefficient',
      why: refusal.message,
    };
  }
}
