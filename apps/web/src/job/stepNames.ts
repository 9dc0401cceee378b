/** A figure stepped up by its key is one step; one taken anew after a pause, however short a pen's, is another. */
const ONE_STEP_WITHIN_MS = 1_500;

/**
 * Names for steps: edits of one meaning at one place that follow each other at once are one step, so that a figure held
 * on its arrow key is taken back at once, and the same field of another thing is not.
 *
 * @returns a function of what an edit says and where it is made; without it the step stands alone.
 */
export function makeStepNames(now: () => Date): (same: string | undefined) => string {
  let last: { readonly same: string | undefined; readonly name: string; atMs: number } | undefined;
  // another page of this device may begin a step in the same millisecond
  const page = Math.random().toString(36).slice(2, 8);
  let count = 0;
  return (same) => {
    const atMs = now().getTime();
    if (last !== undefined && same !== undefined && last.same === same && atMs - last.atMs < ONE_STEP_WITHIN_MS) {
      last.atMs = atMs;
      return last.name;
    }
    count += 1;
    last = { same, name: `${atMs.toString(36)}-${page}-${count}`, atMs };
    return last.name;
  };
}
