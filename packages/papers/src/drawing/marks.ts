import { box, circle, corners, group, line, polygon, polyline, solid, text } from './make.ts';
import type { Group, Item, Point } from './model.ts';

/** How a thing stands. The worse, the more ink: an open tick, a ring, a solid block. */
export type State = 'meets' | 'fails' | 'ask';

const words: Readonly<Record<State, string>> = { meets: 'meets', fails: 'fails', ask: 'ask' };

/** The mark of a state, `sizeMm` wide and high, by its middle. Its word belongs beside it. */
export function mark(state: State, middle: Point, sizeMm = 3.2): Group {
  const parts = { meets: tick, fails: block, ask: question }[state](sizeMm);
  return group(`mark-${state}`, parts, { at: middle, label: words[state] });
}

function tick(size: number): Item[] {
  const h = size / 2;
  return [
    polyline(
      [
        [-0.85 * h, -0.05 * h],
        [-0.25 * h, -0.7 * h],
        [0.9 * h, 0.75 * h],
      ],
      { layer: 'TEXT', pen: 0.5, ink: 'meets' },
    ),
  ];
}

function block(size: number): Item[] {
  const h = size / 2;
  const arm = 0.52 * h;
  const look = { layer: 'TEXT', pen: 0.5, ink: 'on-solid' } as const;
  return [
    solid(corners([-h, -h], size, size), { layer: 'TEXT', ink: 'fails' }),
    line([-arm, -arm], [arm, arm], look),
    line([-arm, arm], [arm, -arm], look),
  ];
}

function question(size: number): Item[] {
  const capMm = 0.56 * size;
  const look = { layer: 'TEXT', ink: 'ask' } as const;
  return [
    circle([0, 0], size / 2 - 0.15, { ...look, pen: 0.35 }),
    text('?', [0, -capMm / 2], { ...look, capMm, weight: 700, anchor: 'middle' }),
  ];
}

/** A page drawn from facts that have changed since: a sand glass run out. */
export function staleMark(middle: Point, sizeMm = 3.2): Group {
  const [w, h] = [0.38 * sizeMm, 0.5 * sizeMm];
  const look = { layer: 'TEXT', pen: 0.35 } as const;
  const glass: Point[] = [
    [-w, h],
    [w, h],
    [-w, -h],
    [w, -h],
  ];
  const sand: Point[] = [
    [-w, -h],
    [w, -h],
    [0, 0],
  ];
  return group('mark-stale', [polygon(glass, look), solid(sand, look)], { at: middle, label: 'stale' });
}

/** A box to tick with a pencil, by its bottom left corner. */
export function tickBox(at: Point, sizeMm = 3.2): Item {
  return box(at, sizeMm, sizeMm, { layer: 'TEXT', pen: 0.35 });
}

/** The sign of caution (a triangle and a stroke), by the middle of its base. */
export function cautionSign([x, y]: Point, widthMm = 10): Item[] {
  const high = 0.88 * widthMm;
  const look = { layer: 'TEXT', pen: 0.5 } as const;
  return [
    polygon(
      [
        [x - widthMm / 2, y],
        [x + widthMm / 2, y],
        [x, y + high],
      ],
      look,
    ),
    line([x, y + 0.34 * high], [x, y + 0.66 * high], { ...look, pen: 0.7 }),
    line([x, y + 0.14 * high], [x, y + 0.23 * high], { ...look, pen: 0.7 }),
  ];
}

/** What is selected or proposed: marker under it and a heavy bar at its left, so that a photocopy keeps it. */
export function markerBand([x, y]: Point, widthMm: number, heightMm: number): Item[] {
  return [
    solid(corners([x, y], widthMm, heightMm), { layer: 'TEXT', ink: 'marker' }),
    solid(corners([x, y], 0.7, heightMm), { layer: 'TEXT', ink: 'ink' }),
  ];
}
