import type { Job } from '@eaveline/job';
import { type Plan, type StageName, stageNames } from '@eaveline/plan';
import type { BegunPlan } from '../plan/begunPlan.ts';
import { type PlanDesk, type PlanSoFar, type Progress, Stopped } from '../plan/planDesk.ts';
import { wordsOf } from './keeping.ts';

/** How the plan stands beside the job on the screen. */
export interface Planned {
  /** Last plan worked out; undefined until the first is there. */
  readonly plan: Plan | undefined;
  /** The stages there are, until the first plan is whole. */
  readonly begun: BegunPlan | undefined;
  /** The job that plan's newest stages are of: what it names is found there, also while another is worked out. */
  readonly planOf: Job | undefined;
  /** True while a stage of the plan is of an earlier state of the job or its weather. */
  readonly stale: boolean;
  /** Stages that are of the job as it stands, while the others are not. */
  readonly fresh: ReadonlySet<StageName>;
  readonly workedOutAt: Date | undefined;
  /** Where long work stands. */
  readonly progress: Progress | undefined;
  /** Why the last plan could not be worked out. */
  readonly notWorkedOut: string | undefined;
  /** Where a person stopped it, in words. */
  readonly stopped: string | undefined;
}

const NONE: ReadonlySet<StageName> = new Set();
const ALL: ReadonlySet<StageName> = new Set(stageNames);

export const NOT_PLANNED: Planned = {
  plan: undefined,
  begun: undefined,
  planOf: undefined,
  stale: true,
  fresh: NONE,
  workedOutAt: undefined,
  progress: undefined,
  notWorkedOut: undefined,
  stopped: undefined,
};

/** So long the engine waits to hear whether a plan is at hand for the job just opened. */
const LOOK_MS = 150;
/** Where one is, the page is drawn from it first: the engine, starting beside it, would take its cores away. */
const DRAW_MS = 700;

export interface PlanningParts {
  readonly desk: PlanDesk;
  readonly now: () => Date;
  /** Calls back after so many milliseconds. */
  readonly later: (call: () => void, ms: number) => unknown;
  /** The job on the screen; undefined where none is open. */
  readonly job: () => Job | undefined;
  readonly onPlanned: (more: Partial<Planned>) => void;
}

/** Has the plan of the job on the screen worked out, and tells how it goes. The desk sees to it that only the newest is. */
export function makePlanning({ desk, now, later, job, onPlanned }: PlanningParts): () => Promise<void> {
  /** Parts of a plan, whole or not; one of another job than is on the screen is stale all through. */
  function soFar({ job: of, plan, begun, fresh, progress }: PlanSoFar): Partial<Planned> {
    const there = plan === undefined ? { begun } : { plan, begun: undefined };
    return { ...there, planOf: of, fresh: of === job() ? fresh : NONE, progress };
  }

  let opening = true;
  const wait = (ms: number) => new Promise<void>((over) => later(over, ms));

  return async function workOut() {
    const asked = job();
    if (asked === undefined) return;
    onPlanned({ stale: true, fresh: NONE, notWorkedOut: undefined, stopped: undefined });
    let atHand = false;
    let ended = false;
    // whole and of this very job: no part of what is under work adds to it
    const looked = desk.atHand(asked).then((found) => {
      if (found === undefined || ended || asked !== job()) return;
      atHand = true;
      onPlanned({
        ...{ plan: found.plan, begun: undefined, planOf: asked, progress: undefined },
        ...{ stale: false, fresh: ALL, workedOutAt: found.at },
      });
    });
    if (opening) {
      opening = false;
      await Promise.race([looked, wait(LOOK_MS)]);
      if (atHand) await wait(DRAW_MS);
      if (asked !== job()) return; // whoever changed it has asked for more
    }
    try {
      const onPart = (part: PlanSoFar) => {
        if (!(atHand && part.job === asked)) onPlanned(soFar(part));
      };
      const done = await desk.workOut(asked, { onPart }).finally(() => {
        ended = true;
      });
      const newest = done.job === job();
      onPlanned({ ...soFar(done), stale: !newest, ...(newest ? { workedOutAt: now() } : {}) });
    } catch (error) {
      if (asked !== job()) return; // whoever asked for the newer one hears of it
      if (error instanceof Stopped) onPlanned({ ...soFar(error.soFar), progress: undefined, stopped: error.message });
      else onPlanned({ progress: undefined, notWorkedOut: wordsOf(error) });
    }
  };
}
