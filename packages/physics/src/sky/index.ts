export { airMassKastenYoung1989 } from './airMass.ts';
export {
  type ClearSky,
  type ClearSkyInput,
  type ClearSkySeries,
  clearSkyHaurwitz1945,
  clearSkyIneichenPerez2002,
  clearSkySeries,
} from './clearSky.ts';
export { type IncidenceAverages, incidenceAverages } from './incidenceAverages.ts';
export {
  type AshraeIncidence,
  type GlassIncidence,
  type IncidenceModel,
  incidenceModifier,
  type MartinRuizIncidence,
} from './incidenceModifier.ts';
export { type PlaneInstant, type PlaneIrradiance, planeIrradiance } from './planeIrradiance.ts';
export { blankPlaneColumns, type Plane, type PlaneColumns, type PlaneSeries, planeSeries } from './planeSeries.ts';
export { hayDaviesSeries, isotropicSeries, perezSeries, type RadiationSeries, type SkySeries } from './skySeries.ts';
export { diffuseFractionErbs1982, type SkySplit, type SkySplitInput, skySplitErbs1982 } from './skySplit.ts';
