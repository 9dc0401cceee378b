import type { Provenance } from '@eaveline/job';
import { useState } from 'react';

/**
 * A thing that is begun and not whole: a plane whose pitch is still to be read. The job holds whole things only, so it
 * waits on this device. Paths are of the thing, with dots.
 */
export interface Draft {
  readonly facts: Readonly<Record<string, unknown>>;
  readonly seen: Readonly<Record<string, Provenance>>;
}

const EMPTY: Draft = { facts: {}, seen: {} };
const keyOf = (jobId: string, at: string) => `eaveline.survey-draft.${jobId}.${at}`;

/** The draft kept for a list of a job; undefined where nothing is begun. */
export function keptDraft(jobId: string, at: string): Draft | undefined {
  try {
    const text = localStorage.getItem(keyOf(jobId, at));
    return text === null ? undefined : { ...EMPTY, ...(JSON.parse(text) as Partial<Draft>) };
  } catch {
    return undefined; // this browser keeps nothing: `keepDraft` has said so
  }
}

/** Keeps a draft on this device, or says in words why not. */
export function keepDraft(jobId: string, at: string, draft: Draft): string | undefined {
  try {
    if (Object.keys(draft.facts).length === 0) localStorage.removeItem(keyOf(jobId, at));
    else localStorage.setItem(keyOf(jobId, at), JSON.stringify(draft));
    return undefined;
  } catch (error) {
    return `This device keeps no more: ${error instanceof Error ? error.message : String(error)}. Write it on paper.`;
  }
}

export function dropDraft(jobId: string, at: string): void {
  keepDraft(jobId, at, EMPTY);
}

/** The draft of a list, on the screen and on this device. */
export function useDraft(jobId: string, at: string): readonly [Draft, (draft: Draft) => string | undefined] {
  const [draft, setDraft] = useState(() => keptDraft(jobId, at) ?? EMPTY);
  const keep = (next: Draft) => {
    setDraft(next);
    return keepDraft(jobId, at, next);
  };
  return [draft, keep];
}

/** The thing a draft describes: `{ 'rafters.widthMm': 45 }` is `{ rafters: { widthMm: 45 } }`. */
export function thingOf({ facts }: Draft): Record<string, unknown> {
  const thing: Record<string, unknown> = {};
  for (const [path, value] of Object.entries(facts)) {
    const steps = path.split('.');
    const last = steps.pop() as string;
    let group = thing;
    for (const step of steps) {
      group[step] ??= {};
      group = group[step] as Record<string, unknown>;
    }
    group[last] = value;
  }
  return thing;
}

/** An id of small letters and hyphens that the list does not have: `garage-wall`, `garage-wall-2`. */
export function freshId(name: string, taken: readonly string[]): string {
  const plain = name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
  // `new` is the address of a draft
  const first = plain === '' || plain === 'new' ? 'thing' : plain;
  let id = first;
  for (let n = 2; taken.includes(id); n++) id = `${first}-${n}`;
  return id;
}
