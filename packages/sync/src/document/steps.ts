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
 * Reads on from where it stopped: an edit in a long history costs what it costs in a short one.
 */
export function makeStepReader(device: string): (moments: readonly Moment[]) => StepsBackAndForth {
  let read = 0;
  // sets keep the order in which names came to stand in them
  const back = new Set<string>();
  const forth = new Set<string>();

  function take({ step, kind, of }: Moment['reason']): void {
    if (kind === 'undo' && of !== undefined) {
      if (!back.delete(of)) return;
      forth.delete(of);
      forth.add(of);
    } else if (kind === 'redo' && of !== undefined) {
      if (forth.delete(of)) back.add(of);
    } else if (kind === 'edit' || kind === 'gone back') {
      back.add(step);
      forth.clear();
    }
  }

  /** @param moments in the order in which they were made; those read before stand at their head. */
  return (moments) => {
    for (; read < moments.length; read += 1) {
      const moment = moments[read] as Moment;
      if (moment.reason.device === device) take(moment.reason);
    }
    return { back: [...back], forth: [...forth] };
  };
}
