import type { Plan } from '@eaveline/plan';
import type { SheetView } from '../desk/sheetView.ts';
import { type Subject, workingSubjects } from '../pad/subject.ts';
import { ArraySheet } from './ArraySheet.tsx';
import { headOfArray } from './headOfArray.ts';

function moduleSubjects({ array, energy }: Plan): Subject[] {
  const energyOf = new Map(energy.modules.map((each) => [each.moduleId, each]));
  return array.modules.map(({ id, name }) => {
    const working = energyOf.get(id)?.working;
    return { id: `module:${id}`, name: `${name}, energy in a year`, ...(working === undefined ? {} : { working }) };
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
  first: ({ array }) => array.modules[0] && `module:${array.modules[0].id}`,
  leavesOut: ({ array, structure }) => [...array.leavesOut, ...structure.leavesOut],
  shows: 'roof, one row',
  Body: ArraySheet,
};
