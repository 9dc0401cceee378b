import type { WeatherSeries } from '@eaveline/physics';

/** Where the weather was taken. */
export interface WeatherPlace {
  readonly name: string;
  /** North positive. */
  readonly latitudeDeg: number;
  /** East positive. */
  readonly longitudeDeg: number;
  /** Undefined when the file does not say. */
  readonly elevationM: number | undefined;
  /** The file's own standard time against UTC, h, east positive. Always the file's, whatever the country keeps. */
  readonly utcOffsetH: number;
}

/** Quantities that a weather file gives for each hour. */
export type WeatherQuantity = 'ghi' | 'dni' | 'dhi' | 'airC' | 'windMS';

export const WEATHER_QUANTITIES: readonly WeatherQuantity[] = ['ghi', 'dni', 'dhi', 'airC', 'windMS'];

/** Totals and means over the hours that have the value. Undefined where no hour has it. */
export interface WeatherSums {
  readonly ghiKwhM2: number | undefined;
  readonly dniKwhM2: number | undefined;
  readonly dhiKwhM2: number | undefined;
  readonly meanAirC: number | undefined;
  readonly meanWindMS: number | undefined;
}

/**
 * One year (or what there is of it) of hourly weather, as read from a file.
 *
 * A missing value stands as 0 in its array **and** as 0 in `has`: look there before using one.
 * Hours left out of the file are not in the arrays at all.
 */
export interface WeatherYear extends WeatherSeries {
  /** Undefined when the file does not say where it was taken. */
  readonly place: WeatherPlace | undefined;
  /** 1 where the hour has the value. */
  readonly has: Readonly<Record<WeatherQuantity, Uint8Array>>;
  /** Hours that have the value. */
  readonly covered: Readonly<Record<WeatherQuantity, number>>;
  /** Ground reflectance where the file gives it (NaN never: hours without it hold the mean of those with). */
  readonly albedo: Float64Array | undefined;
  /** Hours in a whole year of this file: 8760, or 8784 when it holds 29 February. */
  readonly hoursInYear: number;
  /** Over the hours present, whole year or not. */
  readonly sums: WeatherSums;
  /**
   * `sums` again when the hours span the whole year, else undefined: part of a year has no annual
   * figure. A quantity missing in more than a tenth of the hours is undefined in it.
   */
  readonly annual: WeatherSums | undefined;
  /** How far the sun was moved against the labels of the file, h; negative is earlier. Already in `sunTimeMs`. */
  readonly sunShiftH: number;
  /** Where the figures come from, in the file's own words. */
  readonly sourceText: string;
}

/** Answers of a person to what a reader had to assume. Leave out what the file should decide. */
export interface WeatherReadOptions {
  /** Put in place of what the file says, or doesn't. */
  readonly place?: Partial<WeatherPlace>;
  /** Whether an hour's label is its end (usual) or its beginning. */
  readonly hourLabels?: 'end' | 'begin';
  readonly radiationUnit?: 'Wh/m2' | 'kJ/m2';
  /** Shift of the sun against the labels, h; 0 takes the labels as they are. */
  readonly sunShiftH?: number;
}

/** One hour as read, before it is put in order. */
export interface HourRow extends Record<WeatherQuantity, number | undefined> {
  /** Line of the file. */
  readonly line: number;
  readonly month: number;
  readonly day: number;
  /** 1 to 24, the hour that ends there. */
  readonly hour: number;
  sunTimeMs: number;
  readonly albedo: number | undefined;
}
