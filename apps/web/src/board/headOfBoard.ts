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
  return {
    sentence:
      `${sentence(counted(circuits.length, 'circuit'))} bring ${figure(bus.sourceA, 1)} A to the ${board.name}.`.replace(
        'One circuit bring ',
        'One circuit brings ',
      ),
    quiet: `Sources by line: ${listed(each)}. ${sentence(ways)}.`,
  };
}
