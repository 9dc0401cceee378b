export { measuresOf, ridgeMeasures, slopeMeasures, type TwoMeasures } from './closing.ts';
export { type ConductorSize, conductorSizes } from './conductorSizes.ts';
export { mixedColours } from './mixedColours.ts';
export {
  type Answer,
  INSTRUMENTS,
  type Instrument,
  type Question,
  type SurveyCaution,
  type ThingList,
  type WantedPhoto,
} from './question.ts';
export {
  type AskedStanding,
  lookedFor,
  photoReason,
  photoStands,
  seenAt,
  standingOf,
  surveying,
} from './standing.ts';
export {
  type Asked,
  asksOf,
  factAt,
  nameOf,
  type SurveyStep,
  surveyLists,
  surveySteps,
  thingsAt,
  valueBelow,
} from './steps.ts';
