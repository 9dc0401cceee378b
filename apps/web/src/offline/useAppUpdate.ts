import { useSyncExternalStore } from 'react';
import { type AppUpdate, appUpdate, onAppUpdate } from './appUpdate.ts';

/** Whether a newer app waits for a word, or has been taken. */
export function useAppUpdate(): AppUpdate {
  return useSyncExternalStore(onAppUpdate, appUpdate);
}
