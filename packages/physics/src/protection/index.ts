export { type Adiabatic, adiabatic, adiabaticK, kFromTemperatures, letThroughMm2 } from './adiabatic.ts';
export {
  type ContinuousBreaker,
  type ContinuousInput,
  continuousBreaker,
  largestRatingA,
  nextRatingA,
  type RatingList,
  ratingsOf,
  type UnitsPerBranch,
  type UnitsPerBranchInput,
  unitsPerBranch,
} from './breaker.ts';
export { type BusbarVerdict, type NecBusbarInput, type NecBusbarOption, necBusbar, sumOfSources } from './busbar.ts';
export { type ColdVoltage, type ColdVoltageInput, coldVoltage, necColdFactor } from './coldVoltage.ts';
export {
  FREQUENCY_RESPONSES,
  GRID_RESPONSES,
  type GridRegion,
  type GridResponse,
  type ResponsePoints,
} from './data/gridResponses.ts';
export { ADIABATIC_K, MAX_LOOP_SOURCE } from './data/tables.ts';
export {
  type BreakerCurve,
  type BreakerType,
  breakerNamed,
  disconnectionTimeS,
  electrodeLimitOhm,
  type FaultLoop,
  type FaultLoopInput,
  faultLoop,
  type IslandFault,
  type IslandFaultInput,
  islandFault,
  type LoopStandard,
  loopLimitByFormulaOhm,
  loopLimitOhm,
  prospectiveCurrentA,
} from './faultLoop.ts';
export { type NecBranch, type NecBranchInput, necBranch, necGroundingAwg } from './necBranch.ts';
export {
  dealtInTurn,
  type PhaseBalance,
  type PhaseBalanceInput,
  phaseBalance,
  splitPhaseNeutralA,
} from './phaseBalance.ts';
export { gridResponse, onCurve, powerAtFrequencyPercent, type ResponseAt, responseAt } from './responseCurve.ts';
export {
  continuityTest,
  earthContinuityTest,
  type InsulationLimit,
  insulationTest,
  loopTest,
  pvInsulationTest,
  type RcdKind,
  rcdTest,
  type TestVerdict,
} from './testLimits.ts';
