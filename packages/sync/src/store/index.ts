/** Keeping alone, without the core of the documents: it travels with the page. */
export { type BrowserStoreParts, browserStore } from './browserStore.ts';
export {
  type JobStore,
  type KeptJob,
  type LooseEdits,
  laterKnown,
  type SentState,
  type ServerMark,
  type StoredChange,
  type StoredHistory,
  StoreFull,
  StoreNewer,
} from './jobStore.ts';
export { memoryStore } from './memoryStore.ts';
