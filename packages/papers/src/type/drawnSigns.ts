/** A sign no typeface of ours holds, drawn with a pen. Measures are parts of the height of a capital. */
export interface DrawnSign {
  /** What a screen reader says. */
  readonly name: string;
  readonly advance: number;
  readonly strokes: readonly (readonly (readonly [x: number, y: number])[])[];
}

/** Width of the stroke, as a part of the height of a capital. */
export const signStroke = 0.1;

const box = [
  [0.12, 0.02],
  [0.98, 0.02],
  [0.98, 0.88],
  [0.12, 0.88],
  [0.12, 0.02],
] as const;
const tick = [
  [0.14, 0.42],
  [0.38, 0.1],
  [0.96, 0.86],
] as const;
const boxTick = [
  [0.28, 0.46],
  [0.46, 0.2],
  [0.84, 0.7],
] as const;

/** The space in thousands: the faces' own differ from a hair to half a figure. */
const thin: DrawnSign = { name: '', advance: 0.3, strokes: [] };

/** Ticks, crosses and boxes form one set, so all are drawn although one face holds a tick. */
export const drawnSigns: Readonly<Record<string, DrawnSign>> = {
  '\u2009': thin,
  '\u202f': thin,
  '✓': { name: 'tick', advance: 1.1, strokes: [tick] },
  '✗': {
    name: 'cross',
    advance: 1.1,
    strokes: [
      [
        [0.16, 0.06],
        [0.94, 0.84],
      ],
      [
        [0.16, 0.84],
        [0.94, 0.06],
      ],
    ],
  },
  '☐': { name: 'box', advance: 1.1, strokes: [box] },
  '☑': { name: 'ticked box', advance: 1.1, strokes: [box, boxTick] },
  '☒': {
    name: 'crossed box',
    advance: 1.1,
    strokes: [
      box,
      [
        [0.3, 0.2],
        [0.8, 0.7],
      ],
      [
        [0.3, 0.7],
        [0.8, 0.2],
      ],
    ],
  },
};
