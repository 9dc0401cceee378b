export {
  type CellAir,
  cellTemperatureFaiman2008,
  cellTemperatureNoct,
  cellTemperatureNoctBalance,
  cellTemperatureRoss1980,
  cellTemperatureSandia2004,
  type FaimanInput,
  type NoctBalanceInput,
  type NoctInput,
  type RossInput,
  type SandiaInput,
  type SandiaMounting,
  sandiaMountings,
} from './cellTemperature.ts';
export { cellTemperatureSeries } from './cellTemperatureSeries.ts';
