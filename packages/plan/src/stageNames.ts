import type { StageName } from './plan.ts';

/** Names of the stages in the order of the road. They stand apart from the stages: a page that only names them loads none. */
export const stageNames: readonly StageName[] = [
  'site',
  'sun',
  'roof',
  'array',
  'trunks',
  'board',
  'energy',
  'backup',
  'structure',
  'checks',
  'kit',
  'day',
  'tests',
];
