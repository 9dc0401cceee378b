import { keepApp } from './appUpdate.ts';

/** Fetching the whole app takes as long as working out a first plan, and would take turns with it. */
const AFTER_MS = 4000;
const IDLE_WITHIN_MS = 5000;

/** Calls back when the page has nothing else to do, or after five seconds all the same. */
export function whenIdle(call: () => void): void {
  if (typeof requestIdleCallback === 'function') requestIdleCallback(call, { timeout: IDLE_WITHIN_MS });
  else call();
}

/** Keeps a copy of the app once the first sheet has had its time. */
export function keepAppWhenIdle(): void {
  const wait = () => setTimeout(() => whenIdle(() => void keepApp()), AFTER_MS);
  if (document.readyState === 'complete') wait();
  else addEventListener('load', wait, { once: true });
}
