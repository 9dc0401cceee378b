import type { Job, Provenance } from '@eaveline/job';
import { factAt, seenAt, valueBelow } from '@eaveline/job';
import type { Change } from '@eaveline/plan';
import { createContext, useContext } from 'react';
import type { Draft } from './draft.ts';

/** What is taken in one step: values, and who found each, by their paths below `facts`. `undefined` takes one away. */
export interface Taking {
  readonly facts: Readonly<Record<string, unknown>>;
  readonly seen: Readonly<Record<string, Provenance | undefined>>;
}

/** Where answers go: into the job, or into a draft of a thing that is not whole yet. */
export interface FactDesk {
  readonly job: Job;
  readonly valueAt: (path: string) => unknown;
  readonly seenAt: (path: string) => Provenance | undefined;
  /** One step; gives back why not, in words. */
  readonly take: (taking: Taking, words: string) => string | undefined;
}

export const FactDeskContext = createContext<FactDesk | undefined>(undefined);

export function useFactDesk(): FactDesk {
  const desk = useContext(FactDeskContext);
  if (desk === undefined) throw new Error('Questions stand on a desk that takes their answers');
  return desk;
}

/** Facts with their provenance as changes of the job: one step forward, one step back. */
export function changesOf({ facts, seen }: Taking): Change[] {
  return [
    ...Object.entries(facts).map(([path, value]) => ({ path: ['facts', ...path.split('.')], value })),
    ...Object.entries(seen).map(([path, value]) => ({ path: ['facts', 'provenance', path], value })),
  ];
}

/** Answers go straight into the job. */
export function jobDesk(job: Job, edit: (changes: readonly Change[], words: string) => string | undefined): FactDesk {
  return {
    job,
    valueAt: (path) => factAt(job, path),
    seenAt: (path) => seenAt(job, path),
    take: (taking, words) => edit(changesOf(taking), words),
  };
}

/** Answers wait in a draft below a path that the job does not have yet. */
export function draftDesk(job: Job, at: string, draft: Draft, keep: (draft: Draft) => string | undefined): FactDesk {
  const inDraft = (path: string) => path.slice(at.length + 1);
  const merged = <T>(before: Readonly<Record<string, T>>, more: Readonly<Record<string, T | undefined>>) =>
    Object.fromEntries(
      Object.entries({
        ...before,
        ...Object.fromEntries(Object.entries(more).map(([path, value]) => [inDraft(path), value])),
      }).filter(([, value]) => value !== undefined),
    ) as Record<string, T>;
  return {
    job,
    valueAt: (path) => draft.facts[inDraft(path)] ?? valueBelow(draft.facts, inDraft(path)),
    seenAt: (path) => draft.seen[inDraft(path)],
    take: ({ facts, seen }) => keep({ facts: merged(draft.facts, facts), seen: merged(draft.seen, seen) }),
  };
}
