import type { Job } from '@eaveline/job';
import { type JobServer, type ListedJob, type Saved, ServerAway } from '../job/jobServer.ts';
import type { PlanSummary } from '../plan/message.ts';

/** A server in memory that can be stopped, for the examples of this folder. */
export interface TestServer extends JobServer {
  readonly jobs: Map<string, { document: unknown; revision: number }>;
  readonly fetched: string[];
  stopped: boolean;
}

export function testServer(...jobs: readonly Job[]): TestServer {
  const kept = new Map(jobs.map((job) => [job.id, { document: job as unknown, revision: 1 }]));
  const fetched: string[] = [];
  const reach = () => {
    if (server.stopped) throw new ServerAway('The server does not answer.');
  };
  const server: TestServer = {
    jobs: kept,
    fetched,
    stopped: false,
    async list() {
      reach();
      return [...kept].map(([id, { document, revision }]): ListedJob => {
        const { name } = document as { readonly name?: string };
        return { id, name: name ?? id, region: 'iec-eu/gb', updated: `2026-05-0${revision}T00:00:00Z` };
      });
    },
    async get(id) {
      reach();
      fetched.push(id);
      const found = kept.get(id);
      return found && { document: found.document, revision: `"${found.revision}"` };
    },
    async stateAt(id, count) {
      reach();
      const found = kept.get(id);
      return found?.revision === count ? { document: found.document, revision: `"${count}"` } : undefined;
    },
    async put(id, document, revision): Promise<Saved> {
      reach();
      const found = kept.get(id);
      if (revision !== undefined && revision !== `"${found?.revision ?? 0}"`) return { kind: 'seen before' };
      kept.set(id, { document, revision: (found?.revision ?? 0) + 1 });
      return { kind: 'saved', revision: `"${(found?.revision ?? 0) + 1}"` };
    },
  };
  return server;
}

export function testSummary(job: Job, fails = 0, ask = 0): PlanSummary {
  return { jobId: job.id, modules: 1, days: 1, tally: { fails, ask, meets: 3, unconfirmed: 0 } };
}
