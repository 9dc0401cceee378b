import { type Job, jobSchema } from '../../schema/job.ts';
import { firm } from '../firm.ts';
import { kestrelChoices } from './choices.ts';
import { kestrelFacts } from './facts.ts';

/** Kestrel Rise: three phases, a hipped tiled roof, 26 modules on three trunks, a battery that keeps one phase alive. */
export const kestrelRise: Job = jobSchema.parse({
  format: 'eaveline-job',
  version: 1,
  id: 'kestrel-rise',
  name: 'Kestrel Rise',
  invented: true,
  firm,
  customer: { name: 'R. Amberley' },
  about: '26 modules on three planes and three phases, Heath 13, part backup',
  state: 'design',
  facts: kestrelFacts,
  choices: kestrelChoices,
});
