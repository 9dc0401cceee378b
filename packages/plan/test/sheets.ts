import { type ModuleSheet, moduleSheetSchema, type UnitSheet, unitSheetSchema } from '@eaveline/job';

/** A module of 430 W with the figures of the trade's own sums. Invented. */
export const module430: ModuleSheet = moduleSheetSchema.parse({
  kind: 'module',
  name: 'module 430',
  lengthMm: 1722,
  widthMm: 1134,
  thicknessMm: 30,
  massKg: 21.5,
  cellsInSeries: 54,
  pmpW: 430,
  vocV: 38.9,
  iscA: 13.9,
  vmpV: 32.6,
  impA: 13.2,
  vocPctPerK: -0.25,
  iscPctPerK: 0.046,
  pmpPctPerK: -0.3,
  noctC: 44,
  clampZoneFrom: 0.2,
  clampZoneTo: 0.3,
  leadMm: 1100,
});

/** A unit of 400 VA, one module each, line to neutral. Invented. */
export const unit400: UnitSheet = unitSheetSchema.parse({
  kind: 'unit',
  name: 'unit 400',
  ratedVA: 400,
  inputs: 1,
  connection: 'line-neutral',
  nominalV: 230,
  trackingLowV: 20,
  trackingHighV: 45,
  startV: 22,
  maxDcV: 58,
  maxIscA: 20,
  efficiency: 0.97,
  standingLeakageMA: 0.3,
  massKg: 1.9,
  bracketMm: 212,
  dropReachMm: 300,
});
