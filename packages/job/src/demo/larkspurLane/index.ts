import { type Job, jobSchema } from '../../schema/job.ts';
import { firm } from '../firm.ts';
import { larkspurChoices } from './choices.ts';
import { larkspurFacts } from './facts.ts';

/** Larkspur Lane: split phase, shingle gable, 18 modules line to line, two batteries, the whole house kept alive. */
export const larkspurLane: Job = jobSchema.parse({
  format: 'eaveline-job',
  version: 1,
  id: 'larkspur-lane',
  name: 'Larkspur Lane',
  invented: true,
  firm,
  customer: { name: 'J. Okafor-Lind' },
  about: '18 modules on a shingle gable, two Heath 13, whole-house backup with a heat pump',
  state: 'design',
  facts: larkspurFacts,
  choices: larkspurChoices,
});
