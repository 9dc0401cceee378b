import type { Plan } from '@eaveline/plan';
import type { SheetView } from '../desk/sheetView.ts';
import { moduleSum } from '../energy/moduleSum.ts';
import { type Subject, workingSubjects } from '../pad/subject.ts';
import { counted, sentence } from '../words/count.ts';
import { figure } from '../words/figure.ts';
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

function rowSubjects({ array, roof }: Plan): Subject[] {
  return array.rows.map(({ id, name, planeId, moduleIds, lengthMm, gapMm }) => ({
    id: `row:${id}`,
    name: `Row ${name}`,
    words: [
      `${sentence(counted(moduleIds.length, 'module'))} on the ${roof.planes.find((plane) => plane.id === planeId)?.name} plane, ${figure(lengthMm, 0)} mm long with ${figure(gapMm, 0)} mm between them.`,
    ],
  }));
}

/** Sheet 03. */
export const arrayView: SheetView = {
  head: headOfArray,
  subjects: (plan) => [
    ...workingSubjects('array', plan.array.workings),
    ...workingSubjects('structure', plan.structure.workings),
    ...moduleSubjects(plan),
    ...rowSubjects(plan),
  ],
  first: ({ array: { modules } }) => {
    const shown = modules.find(({ row, place }) => row === 1 && place === 1) ?? modules[0];
    return shown && `module:${shown.id}`;
  },
  leavesOut: ({ array, structure }) => [...array.leavesOut, ...structure.leavesOut],
  shows: 'roof, one row',
  Body: ArraySheet,
};
