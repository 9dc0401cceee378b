import type { Job } from '@eaveline/job';
import type { Plan } from '@eaveline/plan';
import type { Answer, Ask, PlanSummary, WeatherRead } from './message.ts';
import { NotWorkedOut } from './planSoFar.ts';

export {
  NotWorkedOut,
  type PlanSoFar,
  type Progress,
  Stopped,
  type WorkedOut,
  type WorkOutOptions,
} from './planSoFar.ts';

type AskWithout<A extends Ask> = A extends Ask ? Omit<A, 'seq'> : never;

/** Where plans are worked out: a worker with a memory, and what it said last. */
export interface PlanDesk {
  workOut(job: Job): Promise<{ readonly plan: Plan; readonly tookMs: number }>;
  sumUp(job: Job): Promise<PlanSummary>;
  readWeather(jobId: string, name: string, bytes: Uint8Array): Promise<WeatherRead | undefined>;
  dropWeather(jobId: string): Promise<void>;
}

/** The part of a Worker that is used; a test hands in its own. */
export interface WorkerLike {
  onmessage: ((event: MessageEvent<Answer>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
  postMessage(ask: Ask): void;
}

/** Puts the page's questions to a worker, in order, and brings whole plans back together from their redone stages. */
export function makePlanDesk(worker: WorkerLike): PlanDesk {
  const waiting = new Map<number, { resolve(answer: Answer): void; reject(reason: Error): void }>();
  const plans = new Map<string, Plan>();
  let seq = 0;

  worker.onmessage = ({ data }) => {
    const asked = waiting.get(data.seq);
    waiting.delete(data.seq);
    if (data.kind === 'fell over') asked?.reject(new NotWorkedOut(data.words));
    else asked?.resolve(data);
  };
  worker.onerror = (event) => {
    const reason = new NotWorkedOut(event.message || 'The part that works plans out did not load.');
    for (const { reject } of waiting.values()) reject(reason);
    waiting.clear();
  };

  function put(ask: AskWithout<Ask>): Promise<Answer> {
    seq += 1;
    const numbered = { ...ask, seq } as Ask;
    return new Promise((resolve, reject) => {
      waiting.set(numbered.seq, { resolve, reject });
      worker.postMessage(numbered);
    });
  }

  function wanted<K extends Answer['kind']>(answer: Answer, kind: K): Extract<Answer, { kind: K }> {
    if (answer.kind !== kind) throw new Error(`The worker answered ${answer.kind} where ${kind} was asked`);
    return answer as Extract<Answer, { kind: K }>;
  }

  return {
    async workOut(job) {
      const { head, parts, tookMs } = wanted(await put({ kind: 'work out', job }), 'plan');
      const plan = { ...plans.get(job.id), ...head, ...parts } as Plan;
      plans.set(job.id, plan);
      return { plan, tookMs };
    },
    async sumUp(job) {
      return wanted(await put({ kind: 'sum up', job }), 'summary').summary;
    },
    async readWeather(jobId, name, bytes) {
      return wanted(await put({ kind: 'read weather', jobId, name, bytes }), 'weather').read;
    },
    async dropWeather(jobId) {
      await put({ kind: 'drop weather', jobId });
    },
  };
}

let desk: PlanDesk | undefined;

/** The page's one desk, set up when first asked for. */
export function planDesk(): PlanDesk {
  desk ??= makePlanDesk(new Worker(new URL('./planWorker.ts', import.meta.url), { type: 'module' }));
  return desk;
}
