import { browserStore, type JobStore } from '@eaveline/sync/store';

let store: JobStore | undefined;

/** The page's one store of jobs on this device, opened when first asked for. */
export function deviceStore(): JobStore {
  store ??= browserStore();
  return store;
}
