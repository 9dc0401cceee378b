import { keepApp } from './appUpdate.ts';

/** Fetching the whole app takes as long as working out a first plan, and would take turns with it. */
const AFTER_MS = 4000;
const IDLE_WITHIN_MS = 5000;

/** Keeps a copy of the app once the first sheet has had its time. */
export function keepAppWhenIdle(): void {
  const begin = () => {
    if (typeof requestIdleCallback === 'function')
      requestIdleCallback(() => void keepApp(), { timeout: IDLE_WITHIN_MS });
    else void keepApp();
  };
  const wait = () => setTimeout(begin, AFTER_MS);
  if (document.readyState === 'complete') wait();
  else addEventListener('load', wait, { once: true });
}
