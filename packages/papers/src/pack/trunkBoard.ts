import type { TrunkPlan } from '@eaveline/plan';
import { box, type Item, line, polyline, solid, text } from '../drawing/index.ts';
import { figure } from './figures.ts';
import type { Pack } from './packContext.ts';

/** Left and right side of the board from the left of the picture, mm. */
export const BOARD = { left: 11, right: 31 };
const BOLD = { capMm: 2.5, weight: 700, face: 'close' } as const;

/** Supply, bar and breaker of a trunk: an arrow from the street, and a switch that opens by itself (IEC 60617). */
export function boardItems(pack: Pack, trunk: TrunkPlan, x: number, y: number): Item[] {
  const circuit = pack.plan.board.circuits.find((one) => one.kind === 'trunk' && one.of === trunk.id);
  const [left, right] = [x + BOARD.left, x + BOARD.right];
  const words = circuit === undefined ? '' : `${trunk.name}  ${figure(circuit.breakerA, 0)} A`;
  return [
    // supply: an arrow from the street into the board
    line([x + 1, y], [left + 4, y], { pen: 0.5 }),
    solid([
      [x + 1, y + 1.6],
      [x + 4, y],
      [x + 1, y - 1.6],
    ]),
    box([left, y - 6], right - left, 12 + 18, { layer: 'CENTRE' }),
    line([left + 4, y - 5], [left + 4, y + 20], { layer: 'FRAME', pen: 1 }),
    // a switch that breaks by itself: cross at the fixed contact, blade open
    line([left + 4, y], [left + 9, y], { pen: 0.5 }),
    polyline(
      [
        [left + 8.2, y - 0.8],
        [left + 9.8, y + 0.8],
      ],
      { pen: 0.35 },
    ),
    polyline(
      [
        [left + 8.2, y + 0.8],
        [left + 9.8, y - 0.8],
      ],
      { pen: 0.35 },
    ),
    line([left + 14, y], [left + 9, y + 2.4], { pen: 0.5 }),
    line([left + 14, y], [right, y], { pen: 0.5 }),
    text(words, [left + 12.5, y - 4.6], { ...BOLD, anchor: 'middle' }),
  ];
}
