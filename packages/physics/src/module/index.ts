export { blankDiodeState, type DiodeState, type ModuleModel, moduleAt } from './diode.ts';
export { moduleCurrentAt, moduleOpenCircuitV } from './moduleCurrent.ts';
export { type ModuleFit, moduleFit } from './moduleFit.ts';
export {
  type ModulePoint,
  type ModulePoints,
  moduleMaxPower,
  modulePoints,
  modulePowerInWindow,
  modulePowerLinear2014,
} from './moduleMaxPower.ts';
export {
  type ModulePowerTable,
  modulePowerFromTable,
  modulePowerTable,
  moduleVoltageFromTable,
} from './modulePowerTable.ts';
export type { ModuleSheet } from './moduleSheet.ts';
export {
  BYPASS_V,
  blankSectionState,
  type Hill,
  type SectionBest,
  type SectionState,
  sectionBest,
  sectionHills,
  sectionsAt,
} from './sectionPower.ts';
