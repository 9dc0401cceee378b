export { type BrowserStoreParts, browserStore } from './store/browserStore.ts';
export {
  type JobStore,
  type KeptJob,
  type ServerMark,
  type StoredChange,
  type StoredHistory,
  StoreFull,
  StoreNewer,
} from './store/jobStore.ts';
export { memoryStore } from './store/memoryStore.ts';
