export { type SurveyFormInputs, surveyForm, surveySheets } from './surveyForm.ts';
