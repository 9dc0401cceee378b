import { Refusal, within } from '../refusal.ts';
import {
  IEC_AIR_FACTOR,
  IEC_CAPACITY_A,
  IEC_CAPACITY_SIZES_MM2,
  IEC_GROUND_FACTOR,
  IEC_GROUPING_FACTOR,
  INSULATION_LENGTH_FACTOR,
} from './data/iecCapacity.ts';

export type CableInsulation = 'PVC' | 'XLPE';
export type InstallationMethod = 'A1' | 'A2' | 'B1' | 'B2' | 'C' | 'D1' | 'E';
export type CableGrouping = keyof typeof IEC_GROUPING_FACTOR;

export interface IecCapacityInput {
  /** Only copper is tabulated here. */
  readonly conductor: 'copper';
  readonly insulation: CableInsulation;
  readonly loadedConductors: 2 | 3;
  readonly method: InstallationMethod;
  readonly sizeMm2: number;
  /** Air round the cable; for D1 the ground. */
  readonly ambientC: number;
  readonly grouping?: CableGrouping;
  /** Circuits together, this one counted. Default 1. */
  readonly circuits?: number;
  /** Length run inside thermal insulation, mm. Default 0. */
  readonly insulationLengthMm?: number;
}

export interface IecCapacity {
  readonly tabulatedA: number;
  readonly ambientFactor: number;
  readonly groupingFactor: number;
  /** 1 when none of the route is inside thermal insulation. */
  readonly insulationFactor: number;
  readonly capacityA: number;
}

/**
 * Tabulated capacity of a copper cable, A.
 * @throws {Refusal} `unknown-name` when the table has no such size, method or metal.
 */
export function tabulatedCapacityA(input: Omit<IecCapacityInput, 'ambientC'>): number {
  const table = IEC_CAPACITY_A[`${input.insulation}${input.loadedConductors}`];
  const row: readonly number[] | undefined = table?.[input.method];
  const found = row?.[(IEC_CAPACITY_SIZES_MM2 as readonly number[]).indexOf(input.sizeMm2)];
  if (found === undefined || input.conductor !== 'copper') {
    throw new Refusal({
      code: 'unknown-name',
      at: 'cable',
      got: `${input.sizeMm2} mm² ${input.conductor} ${input.insulation}, ${input.loadedConductors} loaded, method ${input.method}`,
      want: 'copper, PVC or XLPE, 2 or 3 loaded, method A1 A2 B1 B2 C D1 or E, 1.5 to 185 mm²',
      mend: 'Choose a size and method of the table, or take the capacity from the maker.',
    });
  }
  return found;
}

/**
 * Ambient factor: that of the table's row at or above the temperature, so between rows it errs on the safe side.
 * Below the first row (10 °C) nothing is gained. Source: IEC 60364-5-52:2009, Tables B.52.14 and B.52.15.
 */
export function ambientFactor(insulation: CableInsulation, ambientC: number, method: InstallationMethod = 'C'): number {
  const rows = (method === 'D1' ? IEC_GROUND_FACTOR : IEC_AIR_FACTOR)[insulation];
  const hottestC = rows[rows.length - 1]?.[0] as number;
  within(ambientC, -60, hottestC, 'ambientC', 'Choose a cable with hotter insulation, or a cooler route.');
  return (rows.find(([c]) => c >= ambientC) as readonly [number, number])[1];
}

/**
 * CableGrouping factor: that of the table's row at or above the number of circuits. The single-layer rows fall
 * no further above nine circuits; the bunched row ends at twenty. Source: IEC 60364-5-52:2009, Table B.52.17.
 */
export function groupingFactor(grouping: CableGrouping, circuits: number): number {
  const rows: readonly (readonly [number, number])[] | undefined = IEC_GROUPING_FACTOR[grouping];
  if (!rows) {
    throw new Refusal({
      code: 'unknown-name',
      at: 'grouping',
      got: grouping,
      want: Object.keys(IEC_GROUPING_FACTOR).join(', '),
      mend: 'Say how the cables lie together.',
    });
  }
  const most = grouping === 'bunched_or_enclosed' ? 20 : Number.MAX_SAFE_INTEGER;
  within(circuits, 1, most, 'circuits', 'Count this circuit too; divide a bundle of more than twenty.');
  const row = rows.find(([n]) => n >= circuits) ?? rows[rows.length - 1];
  return (row as readonly [number, number])[1];
}

/**
 * Factor for a length of the route inside thermal insulation: 0.88 to 50 mm, 0.78 to 100, 0.63 to 200,
 * 0.51 to 400, 0.50 beyond. Not to be used with methods A1 and A2 or their like, which contain it.
 *
 * Source: BS 7671:2018 Table 52.2 (from memory).
 */
export function insulationFactor(lengthMm: number): number {
  within(lengthMm, 0, Number.MAX_VALUE, 'insulationLengthMm', 'Give the length inside the insulation, 0 for none.');
  if (lengthMm === 0) return 1;
  return (INSULATION_LENGTH_FACTOR.find(([upTo]) => lengthMm <= upTo) as readonly [number, number])[1];
}

/**
 * Current-carrying capacity of a copper cable where it lies.
 *
 *     Iz = It · ambient · grouping · insulation
 *
 * The loosest reading of the tables is never taken: between two rows the worse one holds. Factors are
 * multiplied although they are seldom all worst at the same place of the route, which errs on the safe side.
 *
 * @throws {Refusal} `unknown-name`, `outside-range` (too hot for the insulation, no circuits, grouped ducts).
 *
 * Source: IEC 60364-5-52:2009, Annex B; BS 7671:2018 Table 52.2.
 */
export function iecCableCapacity(input: IecCapacityInput): IecCapacity {
  const circuits = input.circuits ?? 1;
  if (input.method === 'D1') {
    within(
      circuits,
      1,
      1,
      'circuits',
      'Ducts side by side have a table of their own (B.52.19), which is not held here.',
    );
  }
  const tabulatedA = tabulatedCapacityA(input);
  const ambient = ambientFactor(input.insulation, input.ambientC, input.method);
  const group = groupingFactor(input.grouping ?? 'bunched_or_enclosed', circuits);
  const inside = insulationFactor(input.insulationLengthMm ?? 0);
  return {
    tabulatedA,
    ambientFactor: ambient,
    groupingFactor: group,
    insulationFactor: inside,
    capacityA: tabulatedA * ambient * group * inside,
  };
}
