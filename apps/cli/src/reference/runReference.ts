import type { Outcome } from '../io.ts';
import { checkShape } from './checkFiles.ts';
import { dispatchShape, packingShape } from './combinatorialFile.ts';
import { moduleShape } from './moduleFile.ts';
import { feederShape, loadFlowShape } from './networkFiles.ts';
import { plainSunShapes } from './plainSunFiles.ts';
import { publishedVoltageShape } from './publishedVoltage.ts';
import type { FindFile, ReferenceFile, ReferenceShape } from './shape.ts';
import { summarise, summaryText } from './summary.ts';
import { sunPositionShape, sunTimesShape } from './sunFiles.ts';
import { makeTally } from './tally.ts';
import { workedShape } from './workedFiles.ts';
import { horizonShape, planeYearShape } from './yearFiles.ts';

/** A file may be of more than one shape: a load-flow file holds own cases and a published feeder. */
const SHAPES: readonly ReferenceShape[] = [
  sunPositionShape,
  sunTimesShape,
  ...plainSunShapes,
  moduleShape,
  horizonShape,
  planeYearShape,
  checkShape,
  publishedVoltageShape,
  loadFlowShape,
  feederShape,
  packingShape,
  dispatchShape,
  workedShape,
];

export interface ReferenceOptions {
  readonly json?: boolean;
}

/**
 * Tries everything that reference files of the known shapes hold, and says how far off each quantity is.
 *
 * Verdict 0 where every figure is within the tolerance its file states, 1 where one is not or has no answer,
 * 2 where nothing known was found or nothing could be tried: a check that looked at nothing does not pass.
 *
 * @param unread  files that are no JSON, named for the list.
 */
export function runReference(
  files: readonly ReferenceFile[],
  find: FindFile,
  { json = false }: ReferenceOptions = {},
  unread: readonly string[] = [],
): Outcome {
  const tally = makeTally();
  const unknown = [...unread];
  for (const file of files) {
    const shapes = SHAPES.filter((shape) => shape.knows(file.document));
    if (shapes.length === 0) unknown.push(file.name);
    for (const shape of shapes) shape.run(file, tally, find);
  }
  const lines = summarise(tally.trials);
  const outside = tally.trials.filter(({ within }) => !within).length;
  const verdict = lines.length === 0 ? 2 : outside > 0 ? 1 : 0;
  if (json) {
    const counts = { comparisons: tally.trials.length, outside };
    return {
      text: JSON.stringify({ verdict, ...counts, quantities: lines, skipped: tally.skipped, unknown }, null, 2),
      verdict,
    };
  }
  if (lines.length === 0 && tally.skipped.length === 0)
    return { text: `No reference file of a known shape among ${files.length + unread.length} files.`, verdict };
  return { text: summaryText(lines, tally.skipped, unknown), verdict };
}
