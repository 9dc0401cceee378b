import type { SurveyCaution } from './question.ts';

/** Said wherever a board of two colour schemes is asked for, drawn or printed: the same words each time. */
export const mixedColours: SurveyCaution = {
  head: 'Two colour schemes meet in this board. Prove every conductor before you touch it, and mark it.',
  body: 'Black is neutral in one scheme and live in another: go by the letters, never by the colour alone.',
};
