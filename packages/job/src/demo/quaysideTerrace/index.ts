import { type Job, jobSchema } from '../../schema/job.ts';
import { firm } from '../firm.ts';
import { quaysideChoices } from './choices.ts';
import { quaysideFacts } from './facts.ts';

/** Quayside Terrace: one phase, slate east and west, ten modules in landscape, on both sides of the network's 16 A. */
export const quaysideTerrace: Job = jobSchema.parse({
  format: 'eaveline-job',
  version: 1,
  id: 'quayside-terrace',
  name: 'Quayside Terrace',
  invented: true,
  firm,
  customer: { name: 'M. and T. Hale' },
  about: '10 modules on slate, east and west, Heath 9, essential circuits only',
  state: 'letter',
  facts: quaysideFacts,
  choices: quaysideChoices,
});
