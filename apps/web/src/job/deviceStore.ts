import { browserStore, type JobStore } from '@eaveline/sync/store';
import { useSyncExternalStore } from 'react';

/** How the device's database stands to this page. */
export type DeviceState =
  | 'ours'
  /** A newer version of the app in another tab has taken it over. */
  | 'newer store'
  /** An older version of the app in another tab does not let go of it. */
  | 'held';

let store: JobStore | undefined;
let state: DeviceState = 'ours';
const listeners = new Set<() => void>();

function become(next: DeviceState): void {
  state = next;
  for (const listener of listeners) listener();
}

/** The one place jobs are kept at on this device. */
export function deviceStore(): JobStore {
  store ??= browserStore({
    page: crypto.randomUUID(),
    onNewer: () => become('newer store'),
    onHeld: () => become('held'),
    // a page that let go for a newer version does not get it back
    onOpen: () => {
      if (state === 'held') become('ours');
    },
  });
  return store;
}

export function useDeviceState(): DeviceState {
  return useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    () => state,
    () => 'ours',
  );
}
