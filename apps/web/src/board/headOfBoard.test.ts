import type { Plan } from '@eaveline/plan';
import { expect, test } from 'vitest';
import { headOfBoard } from './headOfBoard.ts';

test('what the board takes in, line by line, and whether there are ways for it', () => {
  const lineA = { L1: 41.74, L2: 15.65, L3: 0 };
  const plan = {
    board: {
      name: 'main switchboard',
      circuits: [{}, {}, {}],
      lineA,
      waysNeeded: 3,
      waysFree: 8,
      bus: { sourceA: 41.74 },
    },
    trunks: { lineA },
  } as unknown as Plan;
  expect(headOfBoard(plan)).toEqual({
    sentence: 'Three circuits bring 41.7 A to the main switchboard.',
    quiet: 'Sources by line: L1 41.7 A and L2 15.7 A. Three ways needed, 8 free.',
  });
});

test('a source behind a changeover is in the whole and not in what the board takes', () => {
  // two trunks of 11.25 A land on the panel, two batteries of 25 A behind the changeover: 22.5 of 72.5 A
  const lineA = { L1: 72.5, L2: 72.5, L3: 0 };
  const plan = {
    board: {
      name: 'service panel',
      circuits: [{}, {}, {}, {}],
      lineA,
      waysNeeded: 4,
      waysFree: 4,
      bus: { sourceA: 22.5 },
    },
    trunks: { lineA },
  } as unknown as Plan;
  expect(headOfBoard(plan).sentence).toBe('Four circuits bring 72.5 A, 22.5 A of it to the service panel.');
});
