/** So many tasks are tried in full; each trial of more takes as much longer as the square of them. */
const IN_FULL = 300;
/** Fewer say nothing of a chance. */
const FEWEST = 40;

/**
 * How many trials a job of so many tasks gets: all of them in a house, fewer in a hall of thousands of modules. There
 * the luck of single tasks evens out, and the shared luck of the job is left.
 */
export function trialsFor(tasks: number, inFull: number): number {
  const share = Math.min(1, (IN_FULL / Math.max(1, tasks)) ** 2);
  return Math.max(Math.min(FEWEST, inFull), Math.round(inFull * share));
}
