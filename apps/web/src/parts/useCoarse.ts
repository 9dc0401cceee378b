import { useSyncExternalStore } from 'react';

const COARSE = '(pointer: coarse)';

function subscribe(listener: () => void): () => void {
  const query = matchMedia(COARSE);
  query.addEventListener('change', listener);
  return () => query.removeEventListener('change', listener);
}

/** True where one presses with a finger, and the keys are drawn on the glass. */
export function useCoarse(): boolean {
  return useSyncExternalStore(
    subscribe,
    () => matchMedia(COARSE).matches,
    () => false, // where there is no screen
  );
}
