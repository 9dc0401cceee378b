export * from './array/types.ts';
export * from './backup/types.ts';
export * from './board/types.ts';
export * from './checks/types.ts';
export * from './day/types.ts';
export { decimalsApart } from './decimalsApart.ts';
export { SKY_AZIMUTHS, type SkyOver, skyOver } from './energy/skyOver.ts';
export * from './energy/types.ts';
export * from './finding.ts';
export * from './kit/types.ts';
export type { Plan, PlanInputs, StageName, WorkedPlan } from './plan.ts';
export { figuresOf, planFigures, planOfParts } from './planOfParts.ts';
export * from './roof/types.ts';
export type { LabelText, Limit, PackWords, RulePack } from './rules/pack.ts';
export { howFar } from './site/howFar.ts';
export {
  measuresMayDiffer,
  type NotMeasured,
  type SurveyHole,
  type SurveyStanding,
  surveyStanding,
  usualAnswer,
} from './site/surveyStanding.ts';
export * from './site/types.ts';
export { wantedFacts } from './site/wantedFacts.ts';
export { stageNames } from './stageNames.ts';
export * from './structure/types.ts';
export { type CivilTime, civilTimeAt, zoneOffsetH } from './sun/civilClock.ts';
export * from './sun/types.ts';
export * from './tests/types.ts';
export * from './trunks/types.ts';
export { given, type Working, worked } from './working.ts';
export { createPlanner, type OnStage, type Planner, type StageAhead, workOut } from './workOut.ts';
