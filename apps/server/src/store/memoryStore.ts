import type { JobEntry, JobStore, JobToSave, SavedState, StoredJob } from './jobStore.ts';

interface Kept {
  readonly entry: JobEntry;
  readonly json: string;
}

interface KeptState {
  readonly revision: number;
  readonly savedAt: string;
  readonly json: string;
}

/** Jobs in memory only: for tests, and for trying the server without a trace on disk. */
export function memoryStore(): JobStore {
  const jobs = new Map<string, Kept>();
  const histories = new Map<string, KeptState[]>();

  function put({ id, name, region, document, savedAt }: JobToSave, seen?: number): JobEntry | undefined {
    const before = jobs.get(id);
    // text, not the object: what is read back can never be changed behind the store's back
    const json = JSON.stringify(document);
    // the same again is no quarrel: an answer that was lost on the way makes a saver ask twice
    if (before !== undefined && before.json === json) return before.entry;
    if (seen !== undefined && seen !== (before?.entry.revision ?? 0)) return undefined;
    const history = histories.get(id) ?? [];
    const revision = (history.at(-1)?.revision ?? 0) + 1;
    const updated = savedAt.toISOString();
    histories.set(id, [...history, { revision, savedAt: updated, json }]);
    const entry = { id, name, region, updated, revision };
    jobs.delete(id); // so that insertion order is the order of saving
    jobs.set(id, { entry, json });
    return entry;
  }

  function get(id: string): StoredJob | undefined {
    const kept = jobs.get(id);
    return kept && { ...kept.entry, document: JSON.parse(kept.json) };
  }

  const asState = ({ json, ...rest }: KeptState): SavedState => ({ ...rest, document: JSON.parse(json) });

  return {
    list: async () => [...jobs.values()].reverse().map(({ entry }) => entry),
    get: async (id) => get(id),
    put: async (job, seen) => put(job, seen),
    remove: async (id) => jobs.delete(id),
    history: async (id) => (histories.get(id) ?? []).map(asState),
    async stateAt(id, wanted) {
      const kept = (histories.get(id) ?? []).find(({ revision }) => revision === wanted);
      return kept && asState(kept);
    },
    isUntouched: async () => histories.size === 0,
    close: async () => {},
  };
}
