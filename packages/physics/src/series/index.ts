export { checkNormals, MONTH_CLEARNESS, type MonthlyNormals } from './monthlyNormals.ts';
export type { WeatherSeries } from './weatherSeries.ts';
