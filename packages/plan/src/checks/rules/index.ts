import type { AnyRule } from '../runRules.ts';
import { asbestos } from './asbestos.ts';
import { backupLines } from './backupLines.ts';
import { backupNeutral } from './backupNeutral.ts';
import { backupResidualDevice } from './backupResidualDevice.ts';
import { backupRunning } from './backupRunning.ts';
import { backupSolar } from './backupSolar.ts';
import { backupStart } from './backupStart.ts';
import { batteryBarrier } from './batteryBarrier.ts';
import { batteryClearance } from './batteryClearance.ts';
import { batteryPlace } from './batteryPlace.ts';
import { batterySize } from './batterySize.ts';
import { batteryVehicles } from './batteryVehicles.ts';
import { boardBacking } from './boardBacking.ts';
import { breakerBothWays } from './breakerBothWays.ts';
import { breakerContinuous } from './breakerContinuous.ts';
import { breakerRating } from './breakerRating.ts';
import { breakingCapacity } from './breakingCapacity.ts';
import { bus } from './bus.ts';
import { cableCapacity } from './cableCapacity.ts';
import { changeoverRating } from './changeoverRating.ts';
import { clampZone } from './clampZone.ts';
import { coldVoltage } from './coldVoltage.ts';
import { dcAcRatio } from './dcAcRatio.ts';
import { designSignOff } from './designSignOff.ts';
import { documents } from './documents.ts';
import { dropReach } from './dropReach.ts';
import { exportLimit } from './exportLimit.ts';
import { faultLoop } from './faultLoop.ts';
import { fixingCovering } from './fixingCovering.ts';
import { footSpacing } from './footSpacing.ts';
import { footUplift } from './footUplift.ts';
import { freeWays } from './freeWays.ts';
import { gapUnder } from './gapUnder.ts';
import { hotVoltage } from './hotVoltage.ts';
import { islandEarthing } from './islandEarthing.ts';
import { labels } from './labels.ts';
import { leftDark } from './leftDark.ts';
import { lineDifference } from './lineDifference.ts';
import { lowVoltageDc } from './lowVoltageDc.ts';
import { moduleOverlap } from './moduleOverlap.ts';
import { networkApproval } from './networkApproval.ts';
import { networkThreshold } from './networkThreshold.ts';
import { obstructionClear } from './obstructionClear.ts';
import { proudOfRoof } from './proudOfRoof.ts';
import { rafters } from './rafters.ts';
import { railExpansion } from './railExpansion.ts';
import { railOverhang } from './railOverhang.ts';
import { railStress } from './railStress.ts';
import { roofMeasures } from './roofMeasures.ts';
import { roofPath } from './roofPath.ts';
import { setbacks } from './setbacks.ts';
import { shortCircuitCurrent } from './shortCircuitCurrent.ts';
import { standingLeakage } from './standingLeakage.ts';
import { supplyVoltage } from './supplyVoltage.ts';
import { surge } from './surge.ts';
import { trunkCaps } from './trunkCaps.ts';
import { trunkRise } from './trunkRise.ts';
import { trunkRiseWithBattery } from './trunkRiseWithBattery.ts';
import { unitsPerTrunk } from './unitsPerTrunk.ts';
import { windExposed } from './windExposed.ts';
import { wiringColours } from './wiringColours.ts';

/** Every rule, in the order a design is read: site, roof, array, trunks, board, battery, backup, network, papers. */
export const rules: readonly AnyRule[] = [
  supplyVoltage,
  windExposed,
  roofMeasures,
  rafters,
  asbestos,
  coldVoltage,
  hotVoltage,
  shortCircuitCurrent,
  lowVoltageDc,
  dcAcRatio,
  setbacks,
  roofPath,
  moduleOverlap,
  obstructionClear,
  clampZone,
  railOverhang,
  railExpansion,
  footSpacing,
  footUplift,
  railStress,
  fixingCovering,
  gapUnder,
  proudOfRoof,
  unitsPerTrunk,
  trunkRise,
  trunkRiseWithBattery,
  dropReach,
  trunkCaps,
  breakerRating,
  breakerContinuous,
  cableCapacity,
  faultLoop,
  breakingCapacity,
  bus,
  freeWays,
  lineDifference,
  standingLeakage,
  breakerBothWays,
  surge,
  wiringColours,
  boardBacking,
  batteryPlace,
  batteryClearance,
  batteryBarrier,
  batteryVehicles,
  batterySize,
  backupRunning,
  backupStart,
  backupSolar,
  backupLines,
  leftDark,
  backupResidualDevice,
  backupNeutral,
  islandEarthing,
  changeoverRating,
  networkThreshold,
  exportLimit,
  networkApproval,
  labels,
  documents,
  designSignOff,
];
