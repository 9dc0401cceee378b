import type { Job } from '@eaveline/job';
import type { StageName } from '@eaveline/plan';
import { ENGINE, type KeptPlans, keptPlans, NO_PLANS_KEPT } from './keptPlans.ts';
import { knownPlans } from './knownPlans.ts';
import type { Answer, Ask, PlanSummary, SetAside, WeatherRead } from './message.ts';
import { NotWorkedOut, type PlanSoFar, Stopped, type WorkedOut, type WorkOutOptions } from './planSoFar.ts';
import workerUrl from './planWorker.ts?worker&url';
import { type ServedPlans, servedPlans } from './servedPlans.ts';

export {
  type PlanSoFar,
  type Progress,
  Stopped,
  type WorkedOut,
  type WorkOutOptions,
} from './planSoFar.ts';

/** Where plans are worked out: a worker with a memory, and what it said last. */
export interface PlanDesk {
  /**
   * The plan of this state of the job.
   *
   * A newer state of the same job takes the place of an older one that waits or is under work; both callers are then
   * handed the newer plan, and `job` says whose it is.
   *
   * @throws {Stopped} where a person stopped it, {NotWorkedOut} where it could not be worked out.
   */
  workOut(job: Job, options?: WorkOutOptions): Promise<WorkedOut>;
  /**
   * The plan of this very state of the job as an earlier page had it worked out on this device, or else the server. It
   * is there before the engine is; the engine goes over it all the same.
   */
  atHand(job: Job): ReturnType<KeptPlans['find']>;
  /** From now on these stages are worked out before those they do not stand on: the open sheet is drawn from them. */
  lookAt(stages: readonly StageName[]): void;
  /** Nothing of the job's plan stays on this device. */
  forget(jobId: string): Promise<void>;
  /** What is known of a job's plan now; undefined where none was asked for lately. */
  soFar(jobId: string): PlanSoFar | undefined;
  /** Ends every plan that waits or is under work, at once. Summaries and weather files go on. */
  stop(): void;
  sumUp(job: Job): Promise<PlanSummary>;
  readWeather(jobId: string, name: string, bytes: Uint8Array): Promise<WeatherRead | undefined>;
  dropWeather(jobId: string): Promise<void>;
}

/** The part of a Worker that is used; a test hands in its own. */
export interface WorkerLike {
  onmessage: ((event: MessageEvent<Answer>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
  postMessage(message: Ask | SetAside): void;
  terminate(): void;
}

type Wanted = Ask extends infer A ? (A extends Ask ? Omit<A, 'seq' | 'whole' | 'first'> : never) : never;

interface Waiter {
  resolve(answer: Answer): void;
  reject(reason: Error): void;
}

/** Something the worker is to do, and who waits for it; where nobody does any more it need not be done again. */
interface Errand {
  readonly wanted: Wanted;
  readonly waiters: readonly Waiter[];
  readonly onPart?: ((soFar: PlanSoFar) => void) | undefined;
}

interface Running {
  readonly seq: number;
  errand: Errand;
  /** When the stage under work began, by the page's clock in ms. */
  stageSince: number;
}

/** A stage that takes longer is not waited for when something else is wanted: the worker is ended. */
const PATIENCE_MS = 1500;
/** Between two stages the worker looks up; it gets at least so long to do it. */
const LOOK_UP_MS = 200;
/** A plan that is there by then is not told in parts; later parts are told as seldom. */
const TELL_EVERY_MS = 50;

/** Weather comes before the plan that needs it, a plan that somebody looks at before summaries for the Book. */
const RANK = { 'read weather': 0, 'drop weather': 0, 'work out': 1, 'sum up': 2 } as const;
const rank = ({ wanted }: Errand) => RANK[wanted.kind];

const planOf = ({ wanted }: Errand): Job | undefined => (wanted.kind === 'work out' ? wanted.job : undefined);

/** The first that is there; undefined where none is. */
function firstThere<T>(wanted: readonly Promise<T | undefined>[]): Promise<T | undefined> {
  const there = wanted.map(async (one) => {
    const found = await one;
    if (found === undefined) throw new Error('not there');
    return found;
  });
  return Promise.any(there).catch(() => undefined);
}

function expected<K extends Answer['kind']>(answer: Answer, kind: K): Extract<Answer, { kind: K }> {
  if (answer.kind !== kind) throw new Error(`The worker answered ${answer.kind} where ${kind} was asked`);
  return answer as Extract<Answer, { kind: K }>;
}

/** Puts the page's errands to a worker one at a time, and brings plans together from the parts that were redone. */
export function makePlanDesk(
  makeWorker: () => WorkerLike,
  kept: KeptPlans = NO_PLANS_KEPT,
  served: ServedPlans = NO_PLANS_KEPT,
): PlanDesk {
  const plans = knownPlans();
  /** Weather files by job, to be read again by a worker that takes the place of an ended one. */
  const weather = new Map<string, Errand>();
  let waiting: Errand[] = [];
  let running: Running | undefined;
  let worker: WorkerLike | undefined;
  let seq = 0;
  let first: readonly StageName[] = [];
  let telling: ReturnType<typeof setTimeout> | undefined;
  let patience: ReturnType<typeof setTimeout> | undefined;

  function hired(): WorkerLike {
    if (worker !== undefined) return worker;
    worker = makeWorker();
    worker.onmessage = ({ data }) => hear(data);
    worker.onerror = (event) => {
      // a worker that did not load never will; the next errand hires another
      const reason = new NotWorkedOut(event.message || 'The part that works plans out did not load.');
      const all = running === undefined ? waiting : [running.errand, ...waiting];
      waiting = [];
      dismiss();
      for (const { waiters } of all) for (const { reject } of waiters) reject(reason);
    };
    return worker;
  }

  /** Ends the worker at once. Its planners are lost, so the next plan is worked out from nothing. */
  function dismiss(): void {
    if (worker !== undefined) {
      worker.onmessage = worker.onerror = null;
      worker.terminate();
      worker = undefined;
    }
    put(undefined);
    waiting = [...weather.values(), ...waiting.filter((errand) => ![...weather.values()].includes(errand))];
  }

  /** What runs from now on. */
  function put(next: Running | undefined): void {
    clearTimeout(telling);
    clearTimeout(patience);
    telling = patience = undefined;
    const left = running && planOf(running.errand);
    if (left !== undefined) plans.leave(left.id);
    running = next;
  }

  function enqueue(errand: Errand): void {
    const at = waiting.findIndex((other) => rank(other) > rank(errand));
    waiting.splice(at < 0 ? waiting.length : at, 0, errand);
  }

  function goOn(): void {
    if (running !== undefined) return;
    const errand = waiting.shift();
    if (errand === undefined) return;
    seq += 1;
    put({ seq, errand, stageSince: performance.now() });
    const { wanted } = errand;
    if (wanted.kind === 'work out') {
      const whole = !plans.has(wanted.job.id);
      plans.begin(wanted.job);
      hired().postMessage({ ...wanted, seq, whole, first });
    } else hired().postMessage({ ...wanted, seq });
  }

  /** Has what runs set aside before its next stage; where that is too long in coming, ends the worker. */
  function interrupt(): void {
    if (running === undefined || patience !== undefined || rank(running.errand) === 0) return;
    hired().postMessage({ kind: 'set aside', seq: running.seq });
    const lasted = performance.now() - running.stageSince;
    patience = setTimeout(
      () => {
        const left = running?.errand;
        dismiss();
        goOnAfter(left);
      },
      Math.max(LOOK_UP_MS, PATIENCE_MS - lasted),
    );
  }

  /** Goes on with the next errand, and later with the one that was left where somebody still waits for it. */
  function goOnAfter(left: Errand | undefined): void {
    if (left !== undefined && left.waiters.length > 0) enqueue(left);
    goOn();
  }

  function tell({ errand }: Running, drawn: boolean): void {
    const job = planOf(errand);
    if (job === undefined || errand.onPart === undefined) return;
    const now = () => {
      clearTimeout(telling);
      telling = undefined;
      const soFar = plans.get(job.id);
      if (soFar !== undefined) errand.onPart?.(soFar);
    };
    // of a first plan the open sheet is drawn as soon as it can be
    if (drawn && plans.get(job.id)?.plan === undefined) now();
    else telling ??= setTimeout(now, TELL_EVERY_MS);
  }

  function hear(answer: Answer): void {
    if (running === undefined || answer.seq !== running.seq) return;
    const { errand } = running;
    const job = planOf(errand);
    if (answer.kind === 'stage') {
      running.stageSince = performance.now();
      if (job !== undefined) plans.take(job.id, answer.parts, answer.fresh, answer.ahead);
      const newest = first.some((stage) => answer.parts[stage] !== undefined);
      tell(running, newest && first.every((stage) => answer.fresh.includes(stage)));
      return;
    }
    put(undefined);
    if (answer.kind === 'set aside') {
      goOnAfter(errand);
      return;
    }
    if (answer.kind === 'plan' && job !== undefined) plans.take(job.id, answer.parts, answer.fresh, undefined);
    for (const { resolve, reject } of errand.waiters) {
      if (answer.kind === 'fell over') reject(new NotWorkedOut(answer.words));
      else resolve(answer);
    }
    goOn();
  }

  function ask<V>(wanted: Wanted, read: (answer: Answer) => V, onPart?: Errand['onPart']): Promise<V> {
    return new Promise((resolve, reject) => {
      const waiters: Waiter[] = [{ resolve: (answer) => resolve(read(answer)), reject }];
      const errand = { wanted, waiters, onPart };
      if (wanted.kind === 'work out') takePlaceOfOlder(wanted.job.id, waiters);
      enqueue(errand);
      if (wanted.kind !== 'sum up') interrupt();
      goOn();
    });
  }

  /** Whoever waits for an older state of the job waits for the newer one from now on. */
  function takePlaceOfOlder(jobId: string, waiters: Waiter[]): void {
    waiting = waiting.filter((errand) => {
      if (planOf(errand)?.id !== jobId) return true;
      waiters.unshift(...errand.waiters);
      return false;
    });
    if (running === undefined || planOf(running.errand)?.id !== jobId) return;
    waiters.unshift(...running.errand.waiters);
    running.errand = { wanted: running.errand.wanted, waiters: [] };
  }

  function workedOut(jobId: string, { tookMs }: Extract<Answer, { kind: 'plan' }>): WorkedOut {
    const soFar = plans.get(jobId);
    if (soFar?.plan === undefined) throw new Error(`The worker left parts of the plan of ${jobId} out`);
    return { ...soFar, plan: soFar.plan, begun: undefined, progress: undefined, tookMs };
  }

  hired(); // loads while the page still asks for its job
  return {
    workOut: (job, { onPart } = {}) =>
      ask({ kind: 'work out', job }, (answer) => workedOut(job.id, expected(answer, 'plan')), onPart),
    async atHand(job) {
      // a plan on a weather file is not of the job alone
      if (weather.has(job.id) || plans.get(job.id)?.plan !== undefined) return undefined;
      return firstThere([kept.find(job), served.find(job)]);
    },
    lookAt(stages) {
      first = stages;
    },
    forget: (jobId) => kept.forget(jobId),
    soFar: (jobId) => plans.get(jobId),
    stop() {
      const atWork = running && planOf(running.errand);
      const stopped: (readonly [Errand, PlanSoFar])[] = [];
      if (running !== undefined && atWork !== undefined) {
        const soFar = plans.get(atWork.id);
        if (soFar !== undefined) stopped.push([running.errand, soFar]);
        dismiss();
      }
      for (const errand of waiting) {
        const job = planOf(errand);
        if (job === undefined) continue;
        // of this state nothing has been begun
        const { plan, begun } = plans.get(job.id) ?? { plan: undefined, begun: undefined };
        const soFar = { job, plan, begun, fresh: new Set<never>(), progress: undefined };
        stopped.push([errand, soFar]);
      }
      waiting = waiting.filter((errand) => planOf(errand) === undefined);
      for (const [{ waiters }, soFar] of stopped) for (const { reject } of waiters) reject(new Stopped(soFar));
      goOn();
    },
    sumUp: (job) => ask({ kind: 'sum up', job }, (answer) => expected(answer, 'summary').summary),
    async readWeather(jobId, name, bytes) {
      const wanted = { kind: 'read weather', jobId, name, bytes } as const;
      const read = await ask(wanted, (answer) => expected(answer, 'weather').read);
      if (read?.place !== undefined) weather.set(jobId, { wanted, waiters: [] });
      return read;
    },
    dropWeather(jobId) {
      weather.delete(jobId);
      return ask({ kind: 'drop weather', jobId }, () => {});
    },
  };
}

let desk: PlanDesk | undefined;

/** The page's one desk, set up when first asked for. */
export function planDesk(): PlanDesk {
  const hire = () => new Worker(workerUrl, { type: 'module' });
  desk ??= ENGINE === undefined ? makePlanDesk(hire) : makePlanDesk(hire, keptPlans(ENGINE), servedPlans(ENGINE));
  return desk;
}
