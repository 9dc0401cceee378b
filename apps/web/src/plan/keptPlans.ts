import type { Job } from '@eaveline/job';
import type { Plan } from '@eaveline/plan';

/** A plan as it was worked out last, with the state of the job it is of. */
interface PlanRow {
  readonly id: string;
  /** Names the engine down to its last letter: another version's figures are never shown. */
  readonly engine: string;
  /** The job as text: one letter apart, and it is another job. */
  readonly job: string;
  readonly plan: Plan;
  readonly at: Date;
}

/** The last plan of each job, at hand when the job is opened again: its sheets need not wait for the engine. */
export interface KeptPlans {
  /** The plan of this very state of the job by this very engine, and when it was worked out. */
  find(job: Job): Promise<{ readonly plan: Plan; readonly at: Date } | undefined>;
  keep(job: Job, plan: Plan): Promise<void>;
  forget(jobId: string): Promise<void>;
}

/** Nothing is kept by one that has no database. */
export const NO_PLANS_KEPT: KeptPlans = {
  find: async () => undefined,
  keep: async () => {},
  forget: async () => {},
};

/** The engine of this page as its build names it; undefined under work, where it changes under one's hands. */
export const ENGINE: string | undefined = import.meta.env.VITE_ENGINE;

const KEPT_AT_MOST = 12;
const PLANS = 'plans';
const AT = 'at';

function settled<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

function opened(indexed: IDBFactory): Promise<IDBDatabase> {
  // a database of its own: it holds nothing that could not be worked out again, and may be lost at any time
  const request = indexed.open('eaveline-plans', 1);
  request.onupgradeneeded = () => request.result.createObjectStore(PLANS, { keyPath: 'id' }).createIndex(AT, AT);
  return settled(request);
}

/**
 * Plans in the browser's own database. What fails there is no news for anybody: the plan is worked out as ever, a
 * second later.
 *
 * @param engine  as `ENGINE` has it.
 */
export function keptPlans(engine: string, indexed: IDBFactory | undefined = globalThis.indexedDB): KeptPlans {
  if (indexed === undefined) return NO_PLANS_KEPT;
  let database: Promise<IDBDatabase> | undefined;
  async function withPlans<T>(mode: IDBTransactionMode, use: (plans: IDBObjectStore) => Promise<T>) {
    try {
      database ??= opened(indexed as IDBFactory);
      return await use((await database).transaction(PLANS, mode).objectStore(PLANS));
    } catch {
      database = undefined; // as where the browser took it away: the next call opens it again
      return undefined;
    }
  }
  return {
    find: (job) =>
      withPlans('readonly', async (plans) => {
        const row = await settled<PlanRow | undefined>(plans.get(job.id));
        const same = row?.engine === engine && row.job === JSON.stringify(job);
        return same ? { plan: row.plan, at: row.at } : undefined;
      }),
    async keep(job, plan) {
      await withPlans('readwrite', async (plans) => {
        const row: PlanRow = { id: job.id, engine, job: JSON.stringify(job), plan, at: new Date() };
        await settled(plans.put(row));
        const ids = await settled(plans.index(AT).getAllKeys());
        for (const id of ids.slice(0, -KEPT_AT_MOST)) plans.delete(id);
      });
    },
    async forget(jobId) {
      await withPlans('readwrite', (plans) => settled(plans.delete(jobId)));
    },
  };
}
