import type { Plan } from '@eaveline/plan';
import type { SheetView } from '../desk/sheetView.ts';
import { type Subject, workingSubjects } from '../pad/subject.ts';
import { figure } from '../words/figure.ts';
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

/** What stands on a plane, and how much it takes of it. */
function obstructionSubjects({ roof }: Plan): Subject[] {
  return roof.planes.flatMap((plane) =>
    plane.obstructions.map(({ id, name, clearM }) => ({
      id: `obstruction:${id}`,
      name,
      words: [`On the ${plane.name} plane. ${figure(clearM * 1000, 0)} mm are kept free all round it.`],
    })),
  );
}

/** Sheet 02. */
export const roofView: SheetView = {
  head: headOfRoof,
  subjects: (plan) => [
    ...planeSubjects(plan),
    ...obstructionSubjects(plan),
    ...workingSubjects('roof', plan.roof.workings),
  ],
  leavesOut: ({ roof }) => roof.leavesOut,
  shows: 'planes from above',
  Body: RoofSheet,
};
