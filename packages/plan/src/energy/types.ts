import type { Line } from '../trunks/types.ts';
import type { Working } from '../working.ts';

export interface ModuleEnergy {
  readonly moduleId: string;
  readonly monthlyKwh: readonly number[];
  readonly annualKwh: number;
  /** Loss at the unit's own ceiling, kWh a year. */
  readonly clippedKwh: number;
  /** Light in the plane that near objects take, sun and sky together, share of the module's year: a line of its ledger. */
  readonly shadeLoss: number;
  /** The chain from sun to a.c., a ledger: what, factor, running value. */
  readonly ledger: readonly {
    readonly what: string;
    readonly factor?: number;
    readonly value: number;
    readonly unit: string;
  }[];
  readonly working: Working;
}

export interface EnergyFigures {
  readonly modules: readonly ModuleEnergy[];
  /** Sum at the units' terminals less wire loss, kWh. */
  readonly monthlyKwh: readonly number[];
  readonly annualKwh: number;
  readonly rangeKwh: readonly [number, number];
  readonly kwhPerKw: number;
  readonly clippedKwh: number;
  /** Lost to the export limit if nothing is used in the house: an upper bound, stated so; undefined without a limit. */
  readonly exportLimitLossAtMostKwh?: number;
  /** Mean day of each month: 12 × 24 hours, W. */
  readonly meanDayW: readonly (readonly number[])[];
  /** What the house uses: mean W by hour of the local clock; a mean night from sunset to sunrise. */
  readonly loads: { readonly annualKwh?: number; readonly nightKwh?: number; readonly hourlyW?: readonly number[] };
  readonly working: Working;
  readonly workings: readonly Working[];
  readonly leavesOut: readonly string[];
}

/** The same with the power of every step of the sun stage. */
export interface EnergyPlan extends EnergyFigures {
  /** A.c. power of the whole array, W, a step of the sun stage. */
  readonly acW: Float64Array;
  /** The same on each line that units stand on. */
  readonly acByLineW: Readonly<Partial<Record<Line, Float64Array>>>;
}
