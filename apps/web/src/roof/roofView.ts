import type { Plan } from '@eaveline/plan';
import type { SheetView } from '../desk/sheetView.ts';
import { type Subject, workingSubjects } from '../pad/subject.ts';
import { headOfRoof } from './headOfRoof.ts';
import { RoofSheet } from './RoofSheet.tsx';

/** A plane goes to the pad with the working that names it, where the roof stage has one. */
function planeSubjects({ roof }: Plan): Subject[] {
  return roof.planes.map(({ id, name }) => {
    const working = roof.workings.find((each) => each.name.toLowerCase().includes(name.toLowerCase()));
    return {
      id: `plane:${id}`,
      name,
      ...(working === undefined ? { words: ['No figure of this plane carries a working of its own.'] } : { working }),
    };
  });
}

/** Sheet 02. */
export const roofView: SheetView = {
  head: headOfRoof,
  subjects: (plan) => [...planeSubjects(plan), ...workingSubjects('roof', plan.roof.workings)],
  leavesOut: ({ roof }) => roof.leavesOut,
  shows: 'planes from above',
  Body: RoofSheet,
};
