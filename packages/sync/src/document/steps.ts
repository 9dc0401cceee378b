import type { Moment } from './jobHistory.ts';

/** What one press back takes back, and one press forth does again. */
export interface StepsBackAndForth {
  /** Steps that can be taken back, the next one last. */
  readonly back: readonly string[];
  /** Steps that can be done again, the next one last. */
  readonly forth: readonly string[];
}

/**
 * Steps of one device that can be taken back and done again, read off the history alone: they outlive the page.
 *
 * @param moments in the order in which they were made.
 */
export function stepsBackAndForth(moments: readonly Moment[], device: string): StepsBackAndForth {
  let back: string[] = [];
  let forth: string[] = [];
  for (const { reason } of moments) {
    if (reason.device !== device) continue;
    const { step, kind, of } = reason;
    if (kind === 'undo' && of !== undefined) {
      if (back.includes(of)) forth = [...forth.filter((each) => each !== of), of];
      back = back.filter((each) => each !== of);
    } else if (kind === 'redo' && of !== undefined) {
      if (forth.includes(of)) back = [...back.filter((each) => each !== of), of];
      forth = forth.filter((each) => each !== of);
    } else if (kind === 'edit' || kind === 'gone back') {
      if (!back.includes(step)) back = [...back, step];
      forth = [];
    }
  }
  return { back, forth };
}
