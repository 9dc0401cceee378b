export {
  type FixingDownInput,
  type FixingInput,
  type FixingUplift,
  fixingDown,
  fixingUplift,
  type LoadCode,
} from './fixing.ts';
export { type Force, type Level, utilisation } from './level.ts';
export {
  type AscePressure,
  type AscePressureInput,
  type AsPressureInput,
  type AsWindRegion,
  ascePanelPressurePa,
  ascePressure,
  asEdgeWidthM,
  asPressure,
  type EnPressure,
  type EnPressureInput,
  type EnTerrain,
  enPeakPressure,
  enZones,
  type SitePressure,
} from './pressure.ts';
export {
  type EnScrewInput,
  enDesignResistance,
  enScrewWithdrawal,
  type NdsLagInput,
  ndsLagWithdrawal,
} from './screw.ts';
export { asceSnow, enSnow, enSnowShape, type SnowLoad } from './snow.ts';
