export {
  longestRoute,
  millivoltChange,
  oneSourceTerminalV,
  type ThreePhaseInput,
  type TwoWireInput,
  threePhaseChange,
  twoWireChange,
  type VoltageChange,
} from './closedForms.ts';
export {
  type CoupledFeeder,
  type CoupledFeederInput,
  type CoupledLine,
  coupledFeeder,
  type FeederStage,
  type StarTransformer,
} from './coupledFeeder.ts';
export { type DistributedInput, type DistributedRise, distributedRise } from './distributedRise.ts';
export {
  type CompiledFlow,
  compileFlow,
  type FlowCase,
  type FlowConductor,
  type FlowInjection,
  type FlowSegment,
  type FlowSystem,
} from './flowNetwork.ts';
export {
  type FourWireChange,
  type FourWireInput,
  type FourWirePhase,
  fourWireChange,
  neutralCurrentA,
} from './fourWire.ts';
export {
  addPhasors,
  exportPhasors,
  liftOver,
  magnitudes,
  type PhasorRun,
  type PhasorSource,
  type Phasors,
  riseBetween,
  type SupplyKind,
  sourcePhasors,
  type Terminal,
} from './phasorRise.ts';
export { type FlowTerminal, flowReport, type PowerFlow, powerFlow } from './powerFlow.ts';
export { coldState, type FlowState, runFlow } from './radialFlow.ts';
export { type FedTrunk, type FedTrunkRise, fedTrunkRise, type Span, trunkRiseV } from './trunkRise.ts';
