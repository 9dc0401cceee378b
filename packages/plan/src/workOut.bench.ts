import { type Job, kestrelRise } from '@eaveline/job';
import type { Plan } from './plan.ts';
import { createPlanner, workOut } from './workOut.ts';

const longer = (lengthM: number): Job => {
  const job = structuredClone(kestrelRise);
  const trunk = job.choices.trunks.a;
  if (trunk === undefined) throw new Error('Kestrel Rise has a trunk a');
  trunk.homeRun.lengthM = lengthM;
  return job;
};

const planner = createPlanner();
planner(kestrelRise);
let turn = 0;

export const benches = [
  {
    name: 'plan/workOut: Kestrel Rise, hourly year, from nothing',
    run: () => workOut(kestrelRise),
    check: (plan: Plan) => plan.array.modules.length === 26 && plan.energy.annualKwh > 5000,
    budget: { ms: 250, why: 'a person opens a job and waits for it once' },
  },
  {
    name: 'plan/workOut: Kestrel Rise again after one changed cable length',
    run: () => planner(longer(31 + (turn++ % 7) / 10)),
    check: (plan: Plan) => (plan.trunks.trunks[0]?.homeRun.lengthM ?? 0) >= 31,
    budget: { ms: 20, why: 'figures follow while somebody types' },
  },
];
