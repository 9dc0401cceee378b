import { type Job, jobSchema } from '../../schema/job.ts';
import { firm } from '../firm.ts';
import { ironbarkChoices } from './choices.ts';
import { ironbarkFacts } from './facts.ts';

/** Ironbark Clinic: four roofs, 96 modules, two sorts of unit, three batteries on three lines, a long feeder. */
export const ironbarkClinic: Job = jobSchema.parse({
  format: 'eaveline-job',
  version: 1,
  id: 'ironbark-clinic',
  name: 'Ironbark Clinic',
  invented: true,
  firm,
  customer: { name: 'Garrow Plain Health' },
  about: '96 modules on four roofs, three Heath 13, cold store and lights kept alive',
  state: 'booked',
  facts: ironbarkFacts,
  choices: ironbarkChoices,
});
