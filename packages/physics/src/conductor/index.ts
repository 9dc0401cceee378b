export {
  ambientFactor,
  type CableGrouping,
  type CableInsulation,
  groupingFactor,
  type IecCapacity,
  type IecCapacityInput,
  type InstallationMethod,
  iecCableCapacity,
  insulationFactor,
  tabulatedCapacityA,
} from './capacity.ts';
export {
  ALPHA_20_PER_K,
  IEC_60228_SIZES_MM2,
  IEC_60228_SOURCE,
  INSULATION_LIMIT_C,
} from './data/iec60228.ts';
export { IEC_CAPACITY_SIZES_MM2, IEC_CAPACITY_SOURCE } from './data/iecCapacity.ts';
export { NEC_AMPACITY_SOURCE, NEC_SMALL_CONDUCTOR_MAX_A } from './data/necAmpacity.ts';
export {
  AWG_SIZES,
  type AwgSize,
  NEC_TABLE_8_SOURCE,
  NEC_TABLE_9_SOURCE,
  type NecTable9Row,
} from './data/necChapter9.ts';
export {
  type NecCapacity,
  type NecCapacityInput,
  type NecColumnC,
  necAmbientFactor,
  necCableCapacity,
  necConductorCountFactor,
  necTableAmpacityA,
  ROOFTOP_ADDER_C,
} from './necCapacity.ts';
export {
  AWG_AREA_MM2,
  type Conductor,
  type ConductorResistance,
  type ConductorResistanceInput,
  conductorResistance,
  type IecConductor,
  iecOhmPerKm20c,
  KFT_PER_KM,
  type Metal,
  type NecConductor,
  necTable9Row,
  ohmPerKm,
  resistanceAtTemperature,
} from './resistance.ts';
export { type CableCandidate, type CableChoice, type CableChoiceInput, smallestCable } from './smallestCable.ts';
export type { TableSource } from './tableSource.ts';
