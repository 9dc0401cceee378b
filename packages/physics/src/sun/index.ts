export { decimalYear, deltaT } from './deltaT.ts';
export { dayOfYearUtc, etrNormalDistance, etrNormalSpencer1971, SOLAR_CONSTANT_W_M2 } from './extraterrestrial.ts';
export { refractionDeg } from './refraction.ts';
export { stationPressure } from './stationPressure.ts';
export { type SunInstant, type SunPosition, type SunSite, sunPosition } from './sunPosition.ts';
export { type SunSeries, type SunSeriesInput, sunAtInstants, sunSeries } from './sunSeries.ts';
export { type SunTimes, type SunTimesInput, sunTimes } from './sunTimes.ts';
