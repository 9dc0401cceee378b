import type { MonthlyNormals } from '@eaveline/physics';
import type { Working } from '../working.ts';

/** Where the weather of the plan comes from. */
export interface Climate {
  readonly kind: 'weather file' | 'monthly normals';
  /** `Aurora-Buckley, TMY3` or `Ballarat and 2 more`. */
  readonly name: string;
  readonly places: readonly { readonly name: string; readonly distanceKm: number; readonly weight: number }[];
  /** To the nearest place, or to the file's own place; left out where the file does not say where that is. */
  readonly distanceKm?: number;
  /** True where the distance is more than the method may carry: the screen and the papers say so. */
  readonly far: boolean;
  /** How good it is likely to be, in words: `half of such estimates within 3.3 %, nine in ten within 10.5 %`. */
  readonly quality: string;
  /** Share of one, one standard deviation of one year's radiation: of the figures and from year to year. */
  readonly annualSd: number;
  /** Mean daily sun on the level, kWh/m², twelve months. */
  readonly ghiKwhM2Day: readonly number[];
  readonly meanC: readonly number[];
  /** What a year is made from where no weather file was given. */
  readonly normals?: MonthlyNormals;
  readonly credit: string;
  readonly remarks: readonly string[];
}

/** A fact that somebody has to find out. */
export interface MissingFact {
  /** Job path. */
  readonly at: string;
  /** `Rafter spacing, west plane`. */
  readonly what: string;
  /** Rules that wait for it. */
  readonly rules: readonly string[];
  /** `survey`, `network`, `customer`, `sample`. */
  readonly from: string;
}

export interface SitePlan {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly elevationM: number;
  /** True where the height above sea was taken from the climate places and not from the survey. */
  readonly elevationGuessed: boolean;
  readonly zone: string;
  readonly climate: Climate;
  readonly recordLowC?: number;
  readonly recordHighC?: number;
  readonly missing: readonly MissingFact[];
  /** Facts present of facts wanted. */
  readonly survey: { readonly present: number; readonly wanted: number; readonly complete: boolean };
  readonly workings: readonly Working[];
  readonly leavesOut: readonly string[];
}
