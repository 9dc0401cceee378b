export type { WeatherSeries } from './weatherSeries.ts';
