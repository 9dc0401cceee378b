import type { Job } from '@eaveline/job';
import type { Plan } from '@eaveline/plan';
import type { SheetView } from '../desk/sheetView.ts';
import { type Subject, workingSubjects } from '../pad/subject.ts';
import { withUnit } from '../words/figure.ts';
import { BoardSheet } from './BoardSheet.tsx';
import { headOfBoard } from './headOfBoard.ts';

function circuitSubjects({ board }: Plan): Subject[] {
  return board.circuits.flatMap(({ id, name, capacity, loop }): Subject[] => [
    { id: `circuit:${id}`, name: `${name}, what its cable carries`, working: capacity.working },
    ...(loop === undefined ? [] : [{ id: `loop:${id}`, name: `${name}, loop at its far end`, working: loop.working }]),
  ]);
}

/** A circuit of the house: what was found of it. */
export function loadSubjects({ facts }: Job): Subject[] {
  return Object.entries(facts.loads.circuits).map(([id, { name, lines, runW, nightW, wanted }]) => ({
    id: `load:${id}`,
    name,
    words: [
      `On ${lines.join(' and ')}: ${withUnit(runW, 'W', 0)} running, ${withUnit(nightW, 'W', 0)} in a mean night. In an outage: ${wanted}.`,
    ],
  }));
}

/** Sheet 05. */
export const boardView: SheetView = {
  head: headOfBoard,
  subjects: (plan, job) => [
    ...circuitSubjects(plan),
    ...(plan.board.bus.working === undefined ? [] : [{ id: 'bus', name: 'The bars', working: plan.board.bus.working }]),
    ...workingSubjects('board', plan.board.workings),
    ...loadSubjects(job),
  ],
  leavesOut: ({ board }) => board.leavesOut,
  shows: 'circuits, bars',
  Body: BoardSheet,
};
