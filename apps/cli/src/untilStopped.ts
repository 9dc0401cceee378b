import process from 'node:process';

/** Settles at the first request to stop; a second one ends the process at once, as the system does it. */
export function untilStopped(): Promise<void> {
  return new Promise((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(signal, () => resolve());
  });
}
