import type { MonthlyNormals } from '@eaveline/physics';
import table from './data/normals.json' with { type: 'json' };

/**
 * How well founded the radiation of a place is. A: measured, satellite or well-founded model.
 * B: reanalysis or a synthetic year. C: cloud-model year, or a station that disagrees with its
 * neighbours; 5 to 15 % uncertain.
 */
export type GhiClass = 'A' | 'B' | 'C';

/** One place of the table. */
export interface ClimatePlace extends MonthlyNormals {
  readonly name: string;
  /** Two letters. */
  readonly country: string;
  readonly region: string;
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly elevationM: number | undefined;
  readonly utcOffsetH: number;
  readonly ghiClass: GhiClass;
  readonly annualGhiKwhM2: number;
  readonly period: string;
  readonly source: string;
  readonly note: string | undefined;
}

type Months = number[];
/** A row of the data file, in the order of its `fields`. */
type Row = [
  name: string,
  country: string,
  region: string,
  latitudeDeg: number,
  longitudeDeg: number,
  elevationM: number | null,
  utcOffsetH: number,
  ghiClass: GhiClass,
  annualGhiKwhM2: number,
  ghiKwhM2Day: Months,
  meanC: Months,
  dayMaxC: Months,
  dayMinC: Months,
  windMS: Months | null,
  period: string,
  source: number,
  note: number | null,
];

/** The places whose climate the product carries; `README.md` beside the data says where each figure comes from. */
export const climatePlaces: readonly ClimatePlace[] = (table.places as unknown as Row[]).map((row) => ({
  name: row[0],
  country: row[1],
  region: row[2],
  latitudeDeg: row[3],
  longitudeDeg: row[4],
  elevationM: row[5] ?? undefined,
  utcOffsetH: row[6],
  ghiClass: row[7],
  annualGhiKwhM2: row[8],
  ghiKwhM2Day: row[9],
  meanC: row[10],
  dayMaxC: row[11],
  dayMinC: row[12],
  windMS: row[13] ?? undefined,
  period: row[14],
  source: table.sources[row[15]] as string,
  note: row[16] === null ? undefined : table.notes[row[16]],
}));
