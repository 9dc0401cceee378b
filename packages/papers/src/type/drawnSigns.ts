/** A sign no typeface of ours holds, drawn with a pen. Measures are parts of the height of a capital. */
export interface DrawnSign {
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

/** Ticks, crosses and boxes form one set, so all are drawn although one face holds a tick. */
export const drawnSigns: Readonly<Record<string, DrawnSign>> = {
  '✓': { advance: 1.1, strokes: [tick] },
  '✗': {
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
  '☐': { advance: 1.1, strokes: [box] },
  '☑': { advance: 1.1, strokes: [box, boxTick] },
  '☒': {
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
