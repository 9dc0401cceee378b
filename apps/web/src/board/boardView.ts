import type { Plan } from '@eaveline/plan';
import type { SheetView } from '../desk/sheetView.ts';
import { type Subject, workingSubjects } from '../pad/subject.ts';
import { BoardSheet } from './BoardSheet.tsx';
import { headOfBoard } from './headOfBoard.ts';

function circuitSubjects({ board }: Plan): Subject[] {
  return board.circuits.flatMap(({ id, name, capacity, loop }): Subject[] => [
    { id: `circuit:${id}`, name: `${name}, what its cable carries`, working: capacity.working },
    ...(loop === undefined ? [] : [{ id: `loop:${id}`, name: `${name}, loop at its far end`, working: loop.working }]),
  ]);
}

/** Sheet 05. */
export const boardView: SheetView = {
  head: headOfBoard,
  subjects: (plan) => [
    ...circuitSubjects(plan),
    ...(plan.board.bus.working === undefined ? [] : [{ id: 'bus', name: 'The bars', working: plan.board.bus.working }]),
    ...workingSubjects('board', plan.board.workings),
  ],
  leavesOut: ({ board }) => board.leavesOut,
  shows: 'circuits, bars',
  Body: BoardSheet,
};
