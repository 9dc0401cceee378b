export { type Edit, editsBetween, valueAt, withAt } from './document/edit.ts';
export {
  beginDocument,
  HistoryUnreadable,
  type JobDocument,
  openDocument,
  type SteppedEdits,
} from './document/jobDocument.ts';
export type { Moment } from './document/jobHistory.ts';
export type { Reason } from './document/reason.ts';
export { startDocuments } from './document/startDocuments.ts';
export type { StepsBackAndForth } from './document/steps.ts';
export { type BrowserStoreParts, browserStore } from './store/browserStore.ts';
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
} from './store/jobStore.ts';
export { memoryStore } from './store/memoryStore.ts';
