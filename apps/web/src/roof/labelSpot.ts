import type { RoofObstruction, RoofPlane } from '@eaveline/plan';
import type { Box } from '../drawing/freeSpot.ts';
import type { PlanView } from '../drawing/planView.ts';
import type { Px } from '../drawing/point.ts';
import { figure } from '../words/figure.ts';

/** Where a label stands, and the knee of its leader. */
export interface LabelSpot {
  readonly knee: Px;
  readonly text: Px;
  readonly anchor: 'start' | 'end';
}

const WAYS: readonly Px[] = [
  [1, -1],
  [-1, -1],
  [1, 1],
  [-1, 1],
];

/** A place beside a thing where its label lies on none of the boxes: the nearest of four corners, then farther out. */
export function labelSpot([x, y]: Px, r: number, width: number, boxes: readonly Box[], right: number): LabelSpot {
  const spots = [4, 22, 40].flatMap((out) =>
    WAYS.map(([dx, dy]): LabelSpot => {
      const knee: Px = [x + dx * (r * 0.75 + out), y + dy * (r * 0.75 + out)];
      return { knee, text: [knee[0] + dx * 11, knee[1] + 4], anchor: dx > 0 ? 'start' : 'end' };
    }),
  );
  const free = spots.find(({ text: [tx, ty], anchor }) => {
    const from = anchor === 'start' ? tx : tx - width;
    if (from < 0 || from + width > right) return false;
    return boxes.every(
      (box) => from + width < box.x || from > box.x + box.width || ty + 4 < box.y || ty - 11 > box.y + box.height,
    );
  });
  return free ?? (spots[0] as LabelSpot);
}

export interface ObstructionLabel extends LabelSpot {
  readonly words: string;
  readonly box: Box;
}

/** What an obstruction is called on the drawing, and where that stands. */
export function labelOf(
  { centre, widthM, clearM, name }: RoofObstruction,
  plane: RoofPlane,
  view: PlanView,
  boxes: readonly Box[],
): ObstructionLabel {
  const words = `${name}, ${figure(clearM * 1000, 0)} clear`;
  const width = words.length * 5.8;
  const spot = labelSpot(view.inPlane(plane, centre), (clearM + widthM / 2) * view.pxPerM, width, boxes, view.width);
  const [x, y] = spot.text;
  return { ...spot, words, box: { x: spot.anchor === 'start' ? x : x - width, y: y - 11, width, height: 15 } };
}
