import { type Job, parseJob, remarkLine, writeJob } from '@eaveline/job';
import type { KeptJob } from '@eaveline/sync/store';
import type { ListedJob } from '../job/jobServer.ts';
import type { Where } from './entry.ts';

/** One copy of a job, read; or what stops it. */
export interface Copy {
  readonly document: unknown;
  readonly job: Job | undefined;
  readonly stops: readonly string[];
}

/** What is known of a job, here and there. */
export interface Copies {
  readonly id: string;
  readonly device?: Copy;
  /** As the device's store says it; there whenever `device` is. */
  readonly kept?: KeptJob;
  /** As the server's list says it. */
  readonly listed?: ListedJob;
  /** Fetched where the device has none, or may have another state. */
  readonly server?: Copy;
}

/** Reads a copy as strictly as a job file. What cannot be read is said and left alone. */
export function readCopy(id: string, document: unknown): Copy {
  let text: string;
  try {
    text = JSON.stringify(document) ?? '';
  } catch (error) {
    // what a browser's database holds need not be JSON
    return { document, job: undefined, stops: [`It is no job document: ${String(error)}`] };
  }
  const { job, remarks } = parseJob(text);
  if (job === undefined) {
    const stops = remarks.filter(({ severity }) => severity === 'stop').map(remarkLine);
    return { document, job: undefined, stops };
  }
  if (job.id === id) return { document, job, stops: [] };
  return { document, job: undefined, stops: [`It is kept as ${id} and calls itself ${job.id}.`] };
}

/** Whether two states of a job are one and the same, whatever order their fields were set in. */
export function sameState(a: Job, b: Job): boolean {
  return writeJob(a) === writeJob(b);
}

/** The copy that is shown: the device's, for it has the newest edits made here; the server's where that does not open. */
export function shownCopy({
  device,
  server,
}: Copies): { readonly job: Job; readonly from: 'device' | 'server' } | undefined {
  if (device?.job !== undefined) return { job: device.job, from: 'device' };
  if (server?.job !== undefined) return { job: server.job, from: 'server' };
  return undefined;
}

export function whereKept({ kept, listed }: Copies): Where {
  if (kept === undefined) return 'server';
  return listed === undefined && kept.server === undefined ? 'device' : 'both';
}

/** Whether the server may hold another state than the one this device last agreed with it. */
export function mayDiffer({ kept, device }: Copies, { updated }: ListedJob): boolean {
  // one that does not open here is shown by the server's, whenever that was saved
  return device?.job === undefined || kept?.server === undefined || updated > kept.server.at;
}
