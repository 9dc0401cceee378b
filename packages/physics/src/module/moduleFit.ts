import { Refusal } from '../refusal.ts';
import { ridders } from '../ridders.ts';
import { BOLTZMANN_EV_PER_K, type ModuleModel, moduleAt, REFERENCE_K, saturationGrowth } from './diode.ts';
import { moduleOpenCircuitV } from './moduleCurrent.ts';
import { moduleMaxPower } from './moduleMaxPower.ts';
import { checkModuleSheet, type ModuleSheet } from './moduleSheet.ts';

/** A sheet turned into a model, with what there is to say about it. */
export interface ModuleFit {
  readonly model: ModuleModel;
  /** `no-shunt` where the five equations have no sensible root: the shunt and the β equation are left out. */
  readonly method: 'five-equations' | 'no-shunt';
  /** n of one cell, about 0.9 to 1.4 in good silicon. */
  readonly idealityFactor: number;
  /** Vmp·Imp / (Voc·Isc). */
  readonly fillFactor: number;
  /** Rsh·Isc/Voc; undefined without a shunt. Below 10 the sheet deserves a second look. */
  readonly shuntRatio: number | undefined;
  /** Rs·Isc/Voc. Above 0.15 the sheet deserves a second look. */
  readonly seriesRatio: number;
  /** Open-circuit voltage against temperature as the model has it, V/K (25 to 27 °C). */
  readonly betaVocVPerK: number;
  /** Power against temperature as the model has it, 1/K; it need not equal the sheet's. */
  readonly gammaPmpPerK: number;
}

/** One trial: what the linear equations give for an ideality a and a series resistance. */
interface Trial {
  readonly a: number;
  readonly rs: number;
  readonly shunt: number;
  /** Io·exp(Voc/a): the diode current at open circuit, so that nothing overflows. */
  readonly diodeOc: number;
  /** Zero where the power has no slope at the maximum-power point. */
  readonly slope: number;
}

const LOWEST_N = 0.4;
const N_STEP = 0.05;
const N_CELLS = 40;
const RS_CELLS = 40;

/** Given a and Rs the other three equations are linear in light current, shunt and diode current. */
function tryWithShunt(sheet: ModuleSheet, a: number, rs: number): Trial {
  const { vOcV: voc, iScA: isc, vMpV: vmp, iMpA: imp } = sheet;
  const e0 = Math.exp((isc * rs - voc) / a);
  const em = Math.exp((vmp + imp * rs - voc) / a);
  const atShort = voc - isc * rs;
  const atBest = voc - vmp - imp * rs;
  const det = (1 - e0) * atBest - (1 - em) * atShort;
  const diodeOc = (isc * atBest - imp * atShort) / det;
  const shunt = ((1 - e0) * imp - (1 - em) * isc) / det;
  return { a, rs, shunt, diodeOc, slope: slopeAt(sheet, a, rs, em, diodeOc, shunt) };
}

/** The same with no shunt: short circuit gives the diode current, and the slope is judged. */
function tryWithoutShunt(sheet: ModuleSheet, a: number, rs: number): Trial {
  const { vOcV: voc, iScA: isc, vMpV: vmp, iMpA: imp } = sheet;
  const diodeOc = isc / (1 - Math.exp((isc * rs - voc) / a));
  const em = Math.exp((vmp + imp * rs - voc) / a);
  return { a, rs, shunt: 0, diodeOc, slope: slopeAt(sheet, a, rs, em, diodeOc, 0) };
}

function slopeAt(sheet: ModuleSheet, a: number, rs: number, em: number, diodeOc: number, shunt: number): number {
  const { vMpV: vmp, iMpA: imp } = sheet;
  return (((diodeOc * em) / a + shunt) * (1 - (rs * imp) / vmp) * vmp) / imp - 1;
}

/** First root of f over [low, high] by scanning cells; `undefined` where f changes sign nowhere or jumps. */
function firstRoot(f: (x: number) => number, low: number, high: number, cells: number): number | undefined {
  let x0 = low;
  let f0 = f(x0);
  for (let k = 1; k <= cells; k++) {
    const x1 = low + ((high - low) * k) / cells;
    const f1 = f(x1);
    if (Number.isFinite(f0) && Number.isFinite(f1) && f0 * f1 <= 0) {
      const x = ridders(f, x0, f0, x1, f1, 1e-14 * (1 + Math.abs(x1)));
      // a pole changes sign too, but is not small there
      if (Math.abs(f(x)) < 1e-6 * (1 + Math.min(Math.abs(f0), Math.abs(f1)))) return x;
    }
    [x0, f0] = [x1, f1];
  }
  return undefined;
}

/** Best series resistance for an ideality; `undefined` where none fits. */
function solveSeries(sheet: ModuleSheet, a: number): Trial | undefined {
  const most = ((sheet.vOcV - sheet.vMpV) / sheet.iMpA) * (1 - 1e-9);
  const rs = firstRoot((x) => tryWithShunt(sheet, a, x).slope, 0, most, RS_CELLS);
  return rs === undefined ? undefined : tryWithShunt(sheet, a, rs);
}

/** The same without a shunt: the current at the maximum-power point settles Rs. */
function solveSeriesWithoutShunt(sheet: ModuleSheet, a: number): Trial | undefined {
  const most = ((sheet.vOcV - sheet.vMpV) / sheet.iMpA) * (1 - 1e-9);
  const miss = (rs: number): number => {
    const em = Math.exp((sheet.vMpV + sheet.iMpA * rs - sheet.vOcV) / a);
    return (tryWithoutShunt(sheet, a, rs).diodeOc * (1 - em)) / sheet.iMpA - 1;
  };
  const rs = firstRoot(miss, 0, most, RS_CELLS);
  return rs === undefined ? undefined : tryWithoutShunt(sheet, a, rs);
}

/** The trial as a model. */
function modelOf(sheet: ModuleSheet, trial: Trial): ModuleModel {
  const { a, rs, shunt, diodeOc } = trial;
  const decay = Math.exp(-sheet.vOcV / a);
  return {
    photoCurrentA: diodeOc * (1 - decay) + sheet.vOcV * shunt,
    saturationCurrentA: diodeOc * decay,
    seriesOhm: rs,
    shuntSiemens: shunt,
    idealityV: a,
    alphaIscAPerK: sheet.alphaIscAPerK,
  };
}

/** Current left over at 27 °C and the sheet's open-circuit voltage there; zero where β is met. */
function betaMiss(sheet: ModuleSheet, trial: Trial | undefined): number {
  if (!trial) return Number.NaN;
  const { a, shunt, diodeOc } = trial;
  const v2 = sheet.vOcV + 2 * sheet.betaVocVPerK;
  const a2 = (a * (REFERENCE_K + 2)) / REFERENCE_K;
  const growth = saturationGrowth(REFERENCE_K + 2) - sheet.vOcV / a;
  const light = diodeOc * (1 - Math.exp(-sheet.vOcV / a)) + sheet.vOcV * shunt + 2 * sheet.alphaIscAPerK;
  return light - diodeOc * (Math.exp(growth + v2 / a2) - Math.exp(growth)) - v2 * shunt;
}

/** Root over the ideality of one cell, with or without a shunt. */
function solveIdeality(
  sheet: ModuleSheet,
): { readonly trial: Trial; readonly method: ModuleFit['method'] } | undefined {
  const perN = sheet.cellsInSeries * BOLTZMANN_EV_PER_K * REFERENCE_K;
  const highest = LOWEST_N + N_CELLS * N_STEP;
  const n = firstRoot((x) => betaMiss(sheet, solveSeries(sheet, x * perN)), LOWEST_N, highest, N_CELLS);
  const whole = n === undefined ? undefined : solveSeries(sheet, n * perN);
  if (whole && whole.shunt >= 0 && whole.diodeOc > 0) return { trial: whole, method: 'five-equations' };

  const slope = (x: number): number => solveSeriesWithoutShunt(sheet, x * perN)?.slope ?? Number.NaN;
  const m = firstRoot(slope, LOWEST_N, highest, N_CELLS);
  const bare = m === undefined ? undefined : solveSeriesWithoutShunt(sheet, m * perN);
  return bare && bare.diodeOc > 0 ? { trial: bare, method: 'no-shunt' } : undefined;
}

/**
 * Refuses an ideality no silicon has. With all five equations met the count of cells is wrong; without
 * the shunt the fill factor is, for then the count had no say in it.
 */
function checkIdeality(sheet: ModuleSheet, n: number, method: ModuleFit['method'], fillFactor: number): void {
  const sound = (x: number): boolean => x >= 0.8 && x <= 1.6;
  if (sound(n)) return;
  if (method === 'no-shunt') throw noSolution(fillFactor);
  const cells = sheet.cellsInSeries;
  const other = [cells / 2, cells * 2].find((count) => Number.isInteger(count) && sound((n * cells) / count));
  const mend =
    other === undefined
      ? 'Check the cell count and the voltage coefficient.'
      : `${other} would give ${((n * cells) / other).toFixed(2)}: a half-cut module counts one half.`;
  const want = `such that the ideality of a cell is 0.8 to 1.6, not ${n.toFixed(2)}`;
  throw new Refusal({ code: 'inconsistent', at: 'cellsInSeries', got: cells, want, mend });
}

/** No single diode has this fill factor. */
function noSolution(fillFactor: number): Refusal {
  const want = 'one that a single diode can give, about 0.55 to 0.85';
  const mend = 'Check the four currents and voltages and the cell count.';
  return new Refusal({ code: 'no-solution', at: 'fill factor', got: Number(fillFactor.toFixed(3)), want, mend });
}

/**
 * Five-parameter model of a module from its data sheet.
 *
 * Five equations: short circuit, open circuit, maximum-power point, no slope of power there, and the
 * open-circuit voltage at 27 °C. For a given ideality and series resistance the rest is linear, so only
 * two unknowns are sought, one inside the other. Where the root has a negative shunt, or there is none,
 * the shunt is left out and the β equation with it; `betaVocVPerK` then says how far off β is.
 *
 * @throws {Refusal} `not-positive`, `inconsistent`, `outside-range` for a sheet that is no module;
 *   `no-solution` where no single diode gives its fill factor.
 *
 * About 0.3 ms. Sources: De Soto, Klein and Beckman 2006, Solar Energy 80(1), 78; the reduction to two
 * unknowns, Laudani et al. 2014, Solar Energy 103, 316.
 */
export function moduleFit(sheet: ModuleSheet): ModuleFit {
  checkModuleSheet(sheet);
  const fillFactor = (sheet.vMpV * sheet.iMpA) / (sheet.vOcV * sheet.iScA);
  const solved = solveIdeality(sheet);
  if (!solved) throw noSolution(fillFactor);
  const { trial, method } = solved;
  const idealityFactor = trial.a / (sheet.cellsInSeries * BOLTZMANN_EV_PER_K * REFERENCE_K);
  checkIdeality(sheet, idealityFactor, method, fillFactor);
  const model = modelOf(sheet, trial);
  const openAt = (cellC: number): number => moduleOpenCircuitV(moduleAt(model, 1000, cellC));
  const powerAt = (cellC: number): number => moduleMaxPower(moduleAt(model, 1000, cellC)).powerW;
  return {
    model,
    method,
    idealityFactor,
    fillFactor,
    shuntRatio: trial.shunt > 0 ? sheet.iScA / (trial.shunt * sheet.vOcV) : undefined,
    seriesRatio: (trial.rs * sheet.iScA) / sheet.vOcV,
    betaVocVPerK: (openAt(27) - openAt(25)) / 2,
    gammaPmpPerK: (powerAt(25.5) - powerAt(24.5)) / powerAt(25),
  };
}
