/** Typing that pauses longer than this is another step. */
const ONE_STEP_WITHIN_MS = 10_000;

/**
 * Names for steps: edits of one meaning that follow each other are one step, so that a field typed into letter by
 * letter is taken back at once.
 *
 * @returns a function of the words of an edit; without words the step stands alone.
 */
export function makeStepNames(now: () => Date): (words: string | undefined) => string {
  let last: { readonly words: string | undefined; readonly name: string; atMs: number } | undefined;
  // another page of this device may begin a step in the same millisecond
  const page = Math.random().toString(36).slice(2, 8);
  let count = 0;
  return (words) => {
    const atMs = now().getTime();
    if (last !== undefined && words !== undefined && last.words === words && atMs - last.atMs < ONE_STEP_WITHIN_MS) {
      last.atMs = atMs;
      return last.name;
    }
    count += 1;
    last = { words, name: `${atMs.toString(36)}-${page}-${count}`, atMs };
    return last.name;
  };
}
