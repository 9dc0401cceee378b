export * from './conductor/index.ts';
export * from './module/index.ts';
export * from './network/index.ts';
export * from './protection/index.ts';
export { finite, positive, Refusal, type RefusalFacts, within } from './refusal.ts';
export * from './series/index.ts';
export * from './sky/index.ts';
export * from './sun/index.ts';
export * from './thermal/index.ts';
