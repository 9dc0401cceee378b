import type { Plan } from '@eaveline/plan';
import type { SheetView } from '../desk/sheetView.ts';
import { moduleSum } from '../energy/moduleSum.ts';
import { type Subject, workingSubjects } from '../pad/subject.ts';
import { ArraySheet } from './ArraySheet.tsx';
import { headOfArray } from './headOfArray.ts';

function moduleSubjects({ array, energy }: Plan): Subject[] {
  const energyOf = new Map(energy.modules.map((each) => [each.moduleId, each]));
  return array.modules.map(({ id, name }) => {
    const module = energyOf.get(id);
    const about = { id: `module:${id}`, name: `${name}, energy in a year` };
    return module === undefined ? about : { ...about, working: module.working, ledger: moduleSum(module) };
  });
}

/** Sheet 03. */
export const arrayView: SheetView = {
  head: headOfArray,
  subjects: (plan) => [
    ...workingSubjects('array', plan.array.workings),
    ...workingSubjects('structure', plan.structure.workings),
    ...moduleSubjects(plan),
  ],
  first: ({ array: { modules } }) => {
    const shown = modules.find(({ row, place }) => row === 1 && place === 1) ?? modules[0];
    return shown && `module:${shown.id}`;
  },
  leavesOut: ({ array, structure }) => [...array.leavesOut, ...structure.leavesOut],
  shows: 'roof, one row',
  Body: ArraySheet,
};
