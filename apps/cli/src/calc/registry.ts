import { breakerCalc, necBranchCalc, unitsPerBranchCalc } from './branch.ts';
import { busRatingCalc } from './busRating.ts';
import { cableCapacityCalc, smallestCableCalc } from './cableCapacity.ts';
import type { Calc } from './calc.ts';
import { cellTemperatureCalc } from './cellTemperature.ts';
import { clearSkyCalc } from './clearSky.ts';
import { coldVoltageCalc } from './coldVoltage.ts';
import { conductorResistanceCalc } from './conductorResistance.ts';
import { cutStockCalc } from './cutStock.ts';
import { adiabaticCalc, faultLoopCalc } from './faultLoop.ts';
import { horizonBlockingCalc } from './horizonBlocking.ts';
import { incidenceModifierCalc } from './incidenceModifier.ts';
import { moduleCurveCalc } from './moduleCurve.ts';
import { moduleFitCalc } from './moduleFit.ts';
import { phaseBalanceCalc } from './phaseBalance.ts';
import { planeIrradianceCalc } from './planeIrradiance.ts';
import { planeYearCalc } from './planeYear.ts';
import { powerFlowCalc } from './powerFlow.ts';
import { responseCurveCalc } from './responseCurve.ts';
import { skySplitCalc } from './skySplit.ts';
import { sunPositionCalc } from './sunPosition.ts';
import { sunTimesCalc } from './sunTimes.ts';
import { testLimitCalc } from './testLimit.ts';
import { voltageChangeCalc } from './voltageChange.ts';

/** Every quantity that can be worked out on its own, in the order of `eaveline calc --list`. */
export const calcs: readonly Calc[] = [
  sunPositionCalc,
  sunTimesCalc,
  skySplitCalc,
  clearSkyCalc,
  planeIrradianceCalc,
  incidenceModifierCalc,
  cellTemperatureCalc,
  moduleFitCalc,
  moduleCurveCalc,
  horizonBlockingCalc,
  planeYearCalc,
  conductorResistanceCalc,
  cableCapacityCalc,
  smallestCableCalc,
  voltageChangeCalc,
  powerFlowCalc,
  breakerCalc,
  unitsPerBranchCalc,
  necBranchCalc,
  faultLoopCalc,
  adiabaticCalc,
  busRatingCalc,
  phaseBalanceCalc,
  responseCurveCalc,
  coldVoltageCalc,
  testLimitCalc,
  cutStockCalc,
];

/** The quantity of a name. */
export const calcNamed = (name: string): Calc | undefined => calcs.find((calc) => calc.name === name);
