export type { PlansAtHand } from './jobRoutes.ts';
export { makeServer, type ServerParts } from './makeServer.ts';
export type { Problem, Validated } from './problem.ts';
export type { JobEntry, JobStore, JobToSave, SavedState, StoredJob } from './store/jobStore.ts';
export { memoryStore } from './store/memoryStore.ts';
export { sqliteStore } from './store/sqliteStore.ts';
