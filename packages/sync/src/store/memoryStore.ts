import { type JobStore, type KeptJob, putOver, type StoredChange } from './jobStore.ts';
import { together } from './together.ts';

/** A store that forgets when the page goes: for tests, and where a browser keeps nothing. */
export function memoryStore(): JobStore {
  const jobs = new Map<string, KeptJob>();
  const snapshots = new Map<string, Uint8Array>();
  const changes = new Map<string, Map<string, StoredChange>>();
  const laidAside = new Map<string, { at: string; bytes: Uint8Array }[]>();
  const changesOf = (id: string) => changes.get(id) ?? new Map<string, StoredChange>();
  const historyOf = (id: string) => ({ snapshot: snapshots.get(id), changes: [...changesOf(id).values()] });

  return {
    async list() {
      return [...jobs.values()].sort((a, b) => a.id.localeCompare(b.id));
    },
    async kept(id) {
      return jobs.get(id);
    },
    async history(id) {
      return historyOf(id);
    },
    async addNew(kept) {
      const there = jobs.get(kept.id) ?? kept;
      jobs.set(kept.id, there);
      return there;
    },
    async begin(id, first) {
      const { snapshot, changes: there } = historyOf(id);
      if (snapshot === undefined && there.length === 0)
        changes.set(id, new Map(first.map((each) => [each.hash, each])));
      return historyOf(id);
    },
    async add(kept, added, taken = []) {
      jobs.set(kept.id, putOver(jobs.get(kept.id), kept, taken));
      const here = changesOf(kept.id);
      for (const change of added) here.set(change.hash, change);
      changes.set(kept.id, here);
    },
    async fold(id, snapshotOf) {
      snapshots.set(id, snapshotOf(historyOf(id)));
      changes.delete(id);
    },
    async setAside(id, at, isDamaged) {
      if (!isDamaged(historyOf(id))) return;
      laidAside.set(id, [...(laidAside.get(id) ?? []), { at, bytes: together(historyOf(id)) }]);
      snapshots.delete(id);
      changes.delete(id);
    },
    async aside(id) {
      return laidAside.get(id) ?? [];
    },
    async remove(id, isAsSeen) {
      if (!isAsSeen(jobs.get(id))) return false;
      jobs.delete(id);
      snapshots.delete(id);
      changes.delete(id);
      laidAside.delete(id);
      return true;
    },
  };
}
