export * from './conductor/index.ts';
export { finite, positive, Refusal, type RefusalFacts, within } from './refusal.ts';
export * from './sun/index.ts';
export * from './network/index.ts';
