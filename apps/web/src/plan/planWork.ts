import { readWeatherFile, remarkSentence, type WeatherYear } from '@eaveline/formats';
import type { Job } from '@eaveline/job';
import {
  createPlanner,
  figuresOf,
  type OnStage,
  type Plan,
  type Planner,
  planFigures,
  type StageAhead,
  type StageName,
  type WorkedPlan,
} from '@eaveline/plan';
import { keepFew } from './keepFew.ts';
import type { Answer, Ask, PlanParts, SetAside } from './message.ts';
import { summaryOf } from './summaryOf.ts';

export interface PlanWorkParts {
  readonly post: (answer: Answer) => void;
  /** Comes back after the messages that have arrived meanwhile were taken. */
  readonly lookUp: () => Promise<void>;
  /**
   * A stage that took no longer last time is walked into without a halt: after an edit most take a millisecond or two,
   * and telling of each would cost the page more than that.
   */
  readonly quickMs: number;
  /** Hears of each whole plan of a job alone, without a weather file. */
  readonly onWhole?: (job: Job, plan: Plan) => void;
}

/**
 * The worker's work: takes what the page says, works, and posts what it has.
 *
 * Each part that a planner redid is posted, so the page always knows what the planner remembers.
 */
export function makePlanWork({
  post,
  lookUp,
  quickMs,
  onWhole,
}: PlanWorkParts): (said: Ask | SetAside) => Promise<void> {
  const planners = new Map<string, Planner>();
  const weathers = new Map<string, WeatherYear>();
  /** How long each stage took last, of whichever job. */
  const lastedMs = new Map<StageName, number>();
  let setAside = 0;

  /** The plan at the end of the walk; undefined where the page wants something else. */
  async function walked(
    seq: number,
    walk: Generator<StageAhead, WorkedPlan, void>,
    onHalt: (ahead: StageAhead) => void,
  ): Promise<WorkedPlan | undefined> {
    let step = walk.next();
    while (!step.done) {
      const { stage } = step.value;
      if ((lastedMs.get(stage) ?? Number.POSITIVE_INFINITY) > quickMs) {
        onHalt(step.value);
        await lookUp();
        if (setAside === seq) return undefined;
      }
      const began = performance.now();
      step = walk.next();
      lastedMs.set(stage, performance.now() - began);
    }
    return step.value;
  }

  async function workOut({ seq, job, whole, first }: Extract<Ask, { kind: 'work out' }>): Promise<Answer> {
    const began = performance.now();
    const planner = (whole ? undefined : planners.get(job.id)) ?? createPlanner();
    planners.delete(job.id); // a planner that falls over half way is not asked again
    const fresh: StageName[] = [];
    let unsent: PlanParts = {};
    const onStage: OnStage = (name, part) => {
      fresh.push(name);
      if (planner.redone().at(-1) === name) unsent = { ...unsent, [name]: figuresOf(name, part) };
    };
    const weather = weathers.get(job.id);
    const walk = planner.walk(job, weather === undefined ? {} : { weather }, onStage, first);
    const plan = await walked(seq, walk, (ahead) => {
      post({ kind: 'stage', seq, ahead, fresh, parts: unsent });
      unsent = {};
    });
    keepFew(planners, job.id, planner);
    if (plan === undefined) return { kind: 'set aside', seq };
    if (weather === undefined) onWhole?.(job, planFigures(plan));
    return { kind: 'plan', seq, fresh, parts: unsent, tookMs: performance.now() - began };
  }

  async function sumUp({ seq, job }: Extract<Ask, { kind: 'sum up' }>): Promise<Answer> {
    // a memory of its own: the sheets' memory must not move on without the page hearing of it
    const plan = await walked(seq, createPlanner().walk(job), () => {});
    return plan === undefined ? { kind: 'set aside', seq } : { kind: 'summary', seq, summary: summaryOf(plan, job) };
  }

  function readWeather({ seq, jobId, name, bytes }: Extract<Ask, { kind: 'read weather' }>): Answer {
    const { data, remarks } = readWeatherFile(bytes);
    if (data !== undefined) weathers.set(jobId, data);
    const read = { fileName: name, remarks: remarks.map(remarkSentence) };
    const place = data && (data.place?.name ?? 'a place the file does not name');
    return { kind: 'weather', seq, read: place === undefined ? read : { ...read, place } };
  }

  async function answer(ask: Ask): Promise<Answer> {
    switch (ask.kind) {
      case 'work out':
        return workOut(ask);
      case 'sum up':
        return sumUp(ask);
      case 'read weather':
        return readWeather(ask);
      case 'drop weather':
        weathers.delete(ask.jobId);
        return { kind: 'weather', seq: ask.seq, read: undefined };
    }
  }

  return async (said) => {
    if (said.kind === 'set aside') {
      setAside = said.seq;
      return;
    }
    try {
      post(await answer(said));
    } catch (error) {
      post({ kind: 'fell over', seq: said.seq, words: error instanceof Error ? error.message : String(error) });
    }
  };
}
