import { setImmediate } from 'node:timers/promises';
import type { Job } from '@eaveline/job';
import { createPlanner, planFigures, type WorkedPlan, workOut } from '@eaveline/plan';

/** A plan takes some 700 kB as text. */
const KEPT_AT_MOST = 12;
/** A job with a longer text has stages that take seconds: requests would wait for them. */
const LONGEST_JOB = 100_000;
/** Saves come one after another; the job is worked out when they rest. */
const REST_MS = 2000;

interface Kept {
  readonly job: string;
  readonly answer: string;
}

/** Plans the server has worked out, as the text a page is answered with. */
export interface PlansAtHand {
  /** Works a valid document out at once. */
  workOut(document: unknown): WorkedPlan;
  /** Works it out when saves rest, a stage at a time, so that requests come first. Long jobs are left to their pages. */
  soon(document: unknown): void;
  /** `{ engine, job, plan, at }` of this very document; undefined where it is not worked out. */
  answer(document: unknown): string | undefined;
  /** Nothing more is begun. */
  close(): void;
}

/**
 * Plans kept while the server runs, for pages that open a job for the first time: their engine is not there yet.
 *
 * @param engine     names the engine down to its last letter: a page takes figures of its own engine only.
 * @param onMistake  receives why a job could not be worked out; its page says so too.
 */
export function plansAtHand(engine: string, now: () => Date, onMistake: (error: Error) => void): PlansAtHand {
  const kept = new Map<string, Kept>();
  const waiting = new Map<string, ReturnType<typeof setTimeout>>();
  let closed = false;

  function keep(document: Job, plan: WorkedPlan): void {
    const answer = JSON.stringify({ engine, job: document, plan: planFigures(plan), at: now().toISOString() });
    kept.delete(document.id); // the one kept last stands last
    kept.set(document.id, { job: JSON.stringify(document), answer });
    for (const oldest of [...kept.keys()].slice(0, -KEPT_AT_MOST)) kept.delete(oldest);
  }

  async function walk(document: Job): Promise<void> {
    const steps = createPlanner().walk(document);
    let step = steps.next();
    while (!step.done) {
      await setImmediate();
      if (closed || waiting.has(document.id)) return; // a newer save waits
      step = steps.next();
    }
    keep(document, step.value);
  }

  return {
    workOut(document) {
      const job = document as Job;
      const plan = workOut(job);
      keep(job, plan);
      return plan;
    },
    soon(document) {
      const job = document as Job;
      clearTimeout(waiting.get(job.id));
      waiting.delete(job.id);
      if (closed || JSON.stringify(job).length > LONGEST_JOB) return;
      const begin = () => {
        waiting.delete(job.id);
        walk(job).catch(onMistake);
      };
      waiting.set(job.id, setTimeout(begin, REST_MS).unref());
    },
    answer(document) {
      const { id } = document as Job;
      const found = kept.get(id);
      return found?.job === JSON.stringify(document) ? found.answer : undefined;
    },
    close() {
      closed = true;
      for (const timer of waiting.values()) clearTimeout(timer);
      waiting.clear();
    },
  };
}
