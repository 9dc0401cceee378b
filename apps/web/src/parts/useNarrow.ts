import { useSyncExternalStore } from 'react';

/** Paper is as narrow as a phone, and is printed as a sheet all the same. */
const PHONE = 'screen and (max-width: 760px)';

function subscribe(listener: () => void): () => void {
  const query = matchMedia(PHONE);
  query.addEventListener('change', listener);
  return () => query.removeEventListener('change', listener);
}

/** True in the phone frame, for the few things that are arranged and not only styled another way there. */
export function useNarrow(): boolean {
  return useSyncExternalStore(
    subscribe,
    () => matchMedia(PHONE).matches,
    () => false,
  );
}
