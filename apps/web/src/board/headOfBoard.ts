import type { Plan } from '@eaveline/plan';
import type { Head } from '../frame/head.ts';
import { counted, listed, sentence } from '../words/count.ts';
import { figure } from '../words/figure.ts';

/** What the board takes in, and how evenly its lines share it. */
export function headOfBoard({ board, trunks }: Pick<Plan, 'board' | 'trunks'>): Head {
  const { circuits, lineA, waysNeeded, waysFree, bus } = board;
  if (circuits.length === 0) return { sentence: 'No circuit yet brings anything to this board.' };
  const lines = Object.entries(lineA).filter(([line, amperes]) => amperes > 0 || trunks.lineA[line as 'L1'] > 0);
  const each = lines.map(([line, amperes]) => `${line} ${figure(amperes, 1)} A`);
  const ways =
    waysFree === undefined
      ? `${counted(waysNeeded, 'way')} needed; free ways are not counted`
      : `${sentence(counted(waysNeeded, 'way'))} needed, ${waysFree} free`;
  const bring = `${sentence(counted(circuits.length, 'circuit'))} ${circuits.length === 1 ? 'brings' : 'bring'}`;
  // some sources may land behind a changeover: what the board itself takes is then a part of the whole
  const wholeA = Math.max(...Object.values(lineA));
  const here = `${figure(bus.sourceA, 1)} A`;
  return {
    sentence:
      wholeA - bus.sourceA > 0.05
        ? `${bring} ${figure(wholeA, 1)} A, ${here} of it to the ${board.name}.`
        : `${bring} ${here} to the ${board.name}.`,
    quiet: `Sources by line: ${listed(each)}. ${sentence(ways)}.`,
  };
}
