import { keepApp } from './appUpdate.ts';

const WITHIN_MS = 5000;

/** Fetching a copy of the whole app comes after the first sheet and its figures. */
export function keepAppWhenIdle(): void {
  const begin = () => {
    if (typeof requestIdleCallback === 'function') requestIdleCallback(() => void keepApp(), { timeout: WITHIN_MS });
    else setTimeout(() => void keepApp(), WITHIN_MS);
  };
  if (document.readyState === 'complete') begin();
  else addEventListener('load', begin, { once: true });
}
