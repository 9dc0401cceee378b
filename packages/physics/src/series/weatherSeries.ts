/**
 * Weather step by step: what every calculation of energy is fed with, whether it was read
 * from a file or made from monthly means. All arrays have one entry a step, in the order
 * of the year (January first); in a typical year neighbouring months may bear different years.
 */
export interface WeatherSeries {
  /** Length of a step, s. */
  readonly stepS: number;
  /** Instant at which the sun stands for the step, ms since 1970 UTC: normally the middle of the step. */
  readonly sunTimeMs: Float64Array;
  /** Month the step is booked to, 1 to 12. */
  readonly month: Uint8Array;
  /** Global horizontal irradiance, mean over the step, W/m². */
  readonly ghi: Float64Array;
  /** Direct normal irradiance, W/m². */
  readonly dni: Float64Array;
  /** Diffuse horizontal irradiance, W/m². */
  readonly dhi: Float64Array;
  /** Air temperature, °C. */
  readonly airC: Float64Array;
  /** Wind speed as the source gives it, normally 10 m above open ground, m/s. */
  readonly windMS: Float64Array;
}
