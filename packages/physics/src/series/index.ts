export { airTemperatureYear, dayCurve, daysFromMonths } from './airTemperatureYear.ts';
export { type DayClearness, dayClearness } from './dayClearness.ts';
export { checkNormals, MONTH_CLEARNESS, type MonthlyNormals } from './monthlyNormals.ts';
export { type SeededRandom, seededRandom } from './seededRandom.ts';
export { squashToSum } from './squashToSum.ts';
export { type SeriesSite, type SyntheticYear, synthesiseYear } from './synthesiseYear.ts';
export type { WeatherSeries } from './weatherSeries.ts';
export { WIND_UNKNOWN_MS, windYear } from './windYear.ts';
