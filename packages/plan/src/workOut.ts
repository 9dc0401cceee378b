import type { Job } from '@eaveline/job';
import { arrayStage } from './array/index.ts';
import { backupStage } from './backup/index.ts';
import { boardStage } from './board/index.ts';
import { checksStage } from './checks/index.ts';
import { dayStage } from './day/index.ts';
import { energyStage } from './energy/index.ts';
import { kitStage } from './kit/index.ts';
import type { PlanInputs, StageName, WorkedPlan } from './plan.ts';
import { planOfParts } from './planOfParts.ts';
import { roofStage } from './roof/index.ts';
import { siteStage } from './site/index.ts';
import type { Stage } from './stage.ts';
import { stageNames } from './stageNames.ts';
import { structureStage } from './structure/index.ts';
import { sunStage } from './sun/index.ts';
import { testsStage } from './tests/index.ts';
import { trunksStage } from './trunks/index.ts';

/** A stage with its own types rubbed off, so that a chain of unlike stages can stand in one list. */
interface AnyStage {
  readonly name: StageName;
  readonly before: readonly StageName[];
  view(job: Job): unknown;
  run(view: unknown, before: WorkedPlan, inputs: PlanInputs): WorkedPlan[StageName];
}

function anyStage<N extends StageName, B extends StageName, V>(stage: Stage<N, B, V>): AnyStage & { name: N } {
  return {
    name: stage.name,
    before: stage.before,
    view: (job) => stage.view(job),
    run: (view, before, inputs) => stage.run(view as V, before, inputs),
  };
}

const stages: { readonly [N in StageName]: AnyStage & { name: N } } = {
  site: anyStage(siteStage),
  sun: anyStage(sunStage),
  roof: anyStage(roofStage),
  array: anyStage(arrayStage),
  trunks: anyStage(trunksStage),
  board: anyStage(boardStage),
  energy: anyStage(energyStage),
  backup: anyStage(backupStage),
  structure: anyStage(structureStage),
  checks: anyStage(checksStage),
  kit: anyStage(kitStage),
  day: anyStage(dayStage),
  tests: anyStage(testsStage),
};

/** The road, in the order it is walked where nobody waits for one stage more than for another. */
const road: readonly AnyStage[] = stageNames.map((name) => stages[name]);

/** The road with some stages, and all that they stand on, before the rest; both in the order of the road. */
function roadBy(first: readonly StageName[]): readonly AnyStage[] {
  const wanted = new Set<StageName>();
  const want = (name: StageName) => {
    if (wanted.has(name)) return;
    wanted.add(name);
    stages[name].before.forEach(want);
  };
  first.forEach(want);
  const isWanted = ({ name }: AnyStage) => wanted.has(name);
  return [...road.filter(isWanted), ...road.filter((stage) => !isWanted(stage))];
}

interface Kept {
  readonly key: string;
  readonly before: readonly unknown[];
  readonly weather: unknown;
  readonly answer: WorkedPlan[StageName];
}

/**
 * Hears of each stage the moment its part stands, whether it was redone or is the same as before.
 *
 * `done` stages of `of` stand by then, this one among them.
 */
export type OnStage = <N extends StageName>(name: N, part: WorkedPlan[N], done: number, of: number) => void;

/** A stage about to be redone; `done` stages of `of` stand already. */
export interface StageAhead {
  readonly stage: StageName;
  readonly done: number;
  readonly of: number;
}

/** Works out plans one after another and redoes only the stages whose inputs changed. */
export interface Planner {
  (job: Job, inputs?: PlanInputs, onStage?: OnStage): WorkedPlan;
  /**
   * The same, with a halt before each stage that has to be redone: whoever walks it can say how far it is, look
   * up in between, or walk away. What was done until then is remembered.
   *
   * @param first  stages somebody waits for: they are walked to first, and stages they do not stand on come after.
   */
  walk(
    job: Job,
    inputs?: PlanInputs,
    onStage?: OnStage,
    first?: readonly StageName[],
  ): Generator<StageAhead, WorkedPlan, void>;
  /** Stages that the last call has redone so far. */
  redone(): readonly StageName[];
}

/**
 * A planner with a memory of one plan.
 *
 * A stage is redone when its view of the job reads differently, when an earlier stage it uses was redone, or when
 * the weather file is another one. Everything else is handed on as it was, the same object.
 */
export function createPlanner(): Planner {
  const kept = new Map<StageName, Kept>();
  let redone: StageName[] = [];

  function* walk(
    job: Job,
    inputs: PlanInputs = {},
    onStage?: OnStage,
    first: readonly StageName[] = [],
  ): Generator<StageAhead, WorkedPlan, void> {
    redone = [];
    const parts: Partial<Record<StageName, unknown>> = {};
    for (const [done, stage] of roadBy(first).entries()) {
      const view = stage.view(job);
      const key = JSON.stringify(view);
      const before = stage.before.map((name) => parts[name]);
      const last = kept.get(stage.name);
      const same =
        last !== undefined &&
        last.key === key &&
        last.weather === inputs.weather &&
        last.before.every((part, i) => part === before[i]);
      let answer = last?.answer;
      if (!same || answer === undefined) {
        yield { stage: stage.name, done, of: road.length };
        answer = stage.run(view, parts as unknown as WorkedPlan, inputs);
        kept.set(stage.name, { key, before, weather: inputs.weather, answer });
        redone.push(stage.name);
      }
      parts[stage.name] = answer;
      onStage?.(stage.name, answer, done + 1, road.length);
    }
    return planOfParts(job, parts as Pick<WorkedPlan, StageName>);
  }

  const plan = (job: Job, inputs: PlanInputs = {}, onStage?: OnStage): WorkedPlan => {
    const steps = walk(job, inputs, onStage);
    let step = steps.next();
    while (!step.done) step = steps.next();
    return step.value;
  };

  return Object.assign(plan, { walk, redone: () => redone });
}

/**
 * Works out everything there is to know about a job: a pure function of the job and its inputs.
 *
 * @param onStage  hears of each stage as it is done; the plan is the same without it.
 * @throws {Refusal} only where a figure has no physical meaning that `parseJob` lets through; a design that breaks
 * a rule is a finding, and a missing fact is an `ask`.
 */
export function workOut(job: Job, inputs: PlanInputs = {}, onStage?: OnStage): WorkedPlan {
  return createPlanner()(job, inputs, onStage);
}
