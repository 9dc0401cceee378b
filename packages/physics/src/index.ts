export { Refusal, type RefusalFacts, finite, positive, within } from './refusal.ts';
