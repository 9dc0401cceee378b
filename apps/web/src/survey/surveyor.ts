import type { Instrument } from '@eaveline/job';
import { useSyncExternalStore } from 'react';

const KEPT_AS = 'eaveline.instruments';
export type Bag = Readonly<Partial<Record<Instrument, string>>>;

const listeners = new Set<() => void>();
let bag: Bag | undefined;

/** Names of instruments are no part of a job: what a browser forgets of them can be said again. */
function remembered(): Bag {
  try {
    const read: unknown = JSON.parse(localStorage.getItem(KEPT_AS) ?? '{}');
    return typeof read === 'object' && read !== null ? (read as Bag) : {};
  } catch {
    return {}; // nothing remembered, or by something else: the bag is named anew
  }
}

/** Which instruments are in the bag, by what they are for. */
export function instrumentsHere(): Bag {
  bag ??= remembered();
  return bag;
}

/** Names one instrument on this device: what it is and its number. */
export function sayInstrument(kind: Instrument, name: string): void {
  bag = { ...instrumentsHere(), [kind]: name };
  try {
    localStorage.setItem(KEPT_AS, JSON.stringify(bag));
  } catch {
    // a browser that remembers nothing: for as long as the page stands
  }
  for (const listener of listeners) listener();
}

/** The bag, kept up to date on the screen. */
export function useBag(): Bag {
  return useSyncExternalStore((listener) => {
    listeners.add(listener);
    return () => listeners.delete(listener);
  }, instrumentsHere);
}

/** What a reading is said to be taken with: the one in the bag. One that is not named is not made up. */
export function withWhat(kind: Instrument | undefined, here: Bag): string | undefined {
  if (kind === undefined) return undefined;
  const named = here[kind]?.trim();
  return named === '' ? undefined : named;
}
