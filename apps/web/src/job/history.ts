import type { JobDocument, Moment } from '@eaveline/sync';

/** A step of the history as a person made it: one or more changes of one meaning. */
export interface HistoryStep {
  readonly id: string;
  readonly who: string;
  readonly what: string;
  readonly kind: Moment['reason']['kind'];
  /** Undefined where the history began from a state whose time is not known. */
  readonly at: Date | undefined;
  /** State after it. */
  readonly heads: readonly string[];
  readonly moments: readonly Moment[];
}

/** The history as steps, newest first. Changes of one step that follow each other stand as one. */
export function historySteps(document: JobDocument): readonly HistoryStep[] {
  const steps: HistoryStep[] = [];
  for (const moment of document.moments()) {
    const { who, what, kind, step, device } = moment.reason;
    const id = `${device}/${step}/${kind}`;
    const last = steps.at(-1);
    const at = moment.atS === 0 ? undefined : new Date(moment.atS * 1000);
    if (last?.id === id) {
      steps[steps.length - 1] = { ...last, what, at, heads: [moment.hash], moments: [...last.moments, moment] };
    } else steps.push({ id, who, what, kind, at, heads: [moment.hash], moments: [moment] });
  }
  return steps.reverse();
}
