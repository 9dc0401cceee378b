import type { Plan } from '@eaveline/plan';
import { type Subject, workingSubjects } from '../pad/subject.ts';
import { moduleSum } from './moduleSum.ts';

/** The year, each module's year, and what else the stage worked out. */
export function energySubjects({ energy, array }: Plan): Subject[] {
  const names = new Map(array.modules.map(({ id, name }) => [id, name]));
  return [
    { id: 'year', name: 'The year of the array', working: energy.working },
    ...workingSubjects('energy-stage', energy.workings),
    ...energy.modules.map((module) => ({
      id: `energy:${module.moduleId}`,
      name: `${names.get(module.moduleId) ?? module.moduleId}, a year`,
      working: module.working,
      ledger: moduleSum(module),
    })),
  ];
}
