export { Refusal, type RefusalFacts, finite, positive, within } from './refusal.ts';
export * from './conductor/index.ts';
