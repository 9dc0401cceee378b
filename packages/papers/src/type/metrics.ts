import type { Lettering } from '../drawing/model.ts';
import { runsOf } from './runs.ts';

/** Letters and signs that reach below the baseline in our faces. */
const DESCENDING = /[gjpqyçþµýÿğģķļņŗşșţțąęįųηρφβγξζχψμςΞQ,;()[\]{}|/§_@$]/u;

/** What layout may ask of lettering. No pen measures. */
export interface TextMetrics {
  /** Width of one line of text, mm. */
  widthMm(text: string, lettering: Lettering): number;
  /** How far this text reaches below its baseline, mm. */
  descentMm(text: string, lettering: Lettering): number;
}

/**
 * The measures of the shipped typefaces: sums of their advance widths. Pens letter without
 * kerning and without ligatures, so what is measured is what is drawn.
 *
 * `descentMm` is 0.3 of the cap height where any sign descends (the deepest of our letters
 * reach 0.29), else 0.
 */
export const metrics: TextMetrics = {
  widthMm: (text, lettering) => runsOf(text, lettering).reduce((sum, run) => sum + run.widthMm, 0),
  descentMm: (text, { capMm }) => (DESCENDING.test(text) ? 0.3 * capMm : 0),
};
