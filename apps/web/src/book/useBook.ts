import { parseJob } from '@eaveline/job';
import { useEffect, useState } from 'react';
import { jobServer } from '../job/jobServer.ts';
import { planDesk } from '../plan/planDesk.ts';
import type { BookEntry } from './entry.ts';

export interface Book {
  readonly entries: readonly BookEntry[];
  /** Jobs that did not open, in words. */
  readonly closed: readonly string[];
  /** Why there is no list. */
  readonly away: string | undefined;
  readonly listed: boolean;
}

/** All jobs of the server, then their plans one after another as they are worked out. */
export function useBook(): Book {
  const [book, setBook] = useState<Book>({ entries: [], closed: [], away: undefined, listed: false });
  useEffect(() => {
    let left = false;
    const amend = (id: string, more: Partial<BookEntry>) =>
      setBook((now) => ({
        ...now,
        entries: now.entries.map((each) => (each.job.id === id ? { ...each, ...more } : each)),
      }));

    async function read() {
      const listed = await jobServer.list();
      const served = await Promise.all(listed.map(async ({ id, name }) => ({ name, served: await jobServer.get(id) })));
      const opened = served.map(({ name, served: each }) => ({
        name,
        ...parseJob(JSON.stringify(each?.document ?? null)),
      }));
      if (left) return;
      const entries = opened
        .flatMap(({ job }) => (job === undefined ? [] : [{ job, summary: undefined, notWorkedOut: undefined }]))
        .sort((a, b) => a.job.name.localeCompare(b.job.name));
      const closed = opened
        .filter(({ job }) => job === undefined)
        .map(({ name }) => `${name} does not open. It is kept as it is.`);
      setBook({ entries, closed, away: undefined, listed: true });
      for (const { job } of entries) {
        if (left) return;
        try {
          amend(job.id, { summary: await planDesk().sumUp(job) });
        } catch (error) {
          amend(job.id, { notWorkedOut: error instanceof Error ? error.message : String(error) });
        }
      }
    }
    read().catch((error: unknown) => {
      if (!left)
        setBook((now) => ({ ...now, away: error instanceof Error ? error.message : String(error), listed: true }));
    });
    return () => {
      left = true;
    };
  }, []);
  return book;
}
