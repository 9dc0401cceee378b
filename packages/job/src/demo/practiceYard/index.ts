import { type Job, jobSchema } from '../../schema/job.ts';
import { firm } from '../firm.ts';
import { practiceChoices } from './choices.ts';
import { practiceFacts } from './facts.ts';

export { type PracticeFault, practiceYardFaults } from './faults.ts';

/** Practice yard: a roof on trestles behind the workshop, wrong on purpose. For training and for tests; never build it. */
export const practiceYard: Job = jobSchema.parse({
  format: 'eaveline-job',
  version: 1,
  id: 'practice-yard',
  name: 'Practice yard',
  invented: true,
  firm,
  about: 'wrong on purpose: thirty faults in the design, more to find with instruments',
  state: 'design',
  facts: practiceFacts,
  choices: practiceChoices,
});
