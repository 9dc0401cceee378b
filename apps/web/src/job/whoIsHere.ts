import { useSyncExternalStore } from 'react';

const WHO = 'eaveline.who';
const DEVICE = 'eaveline.device';
const listeners = new Set<() => void>();
let forgotten: Record<string, string> = {};

/** Nothing of a job is kept this way, only names: what a browser forgets of it can be said again. */
function remembered(key: string): string | undefined {
  try {
    return localStorage.getItem(key) ?? forgotten[key];
  } catch {
    return forgotten[key]; // a browser that remembers nothing: for as long as the page stands
  }
}

function remember(key: string, value: string): void {
  forgotten = { ...forgotten, [key]: value };
  try {
    localStorage.setItem(key, value);
  } catch {
    // as above
  }
}

/** As it is being typed. */
function typed(): string {
  return remembered(WHO) ?? '';
}

/** Name of the person at this device; empty until somebody says. */
export function whoIsHere(): string {
  return typed().trim();
}

export function sayWhoIsHere(name: string): void {
  remember(WHO, name);
  for (const listener of listeners) listener();
}

/** A name for this device, so that a step back here takes nothing back from another. */
export function thisDevice(): string {
  const known = remembered(DEVICE);
  if (known !== undefined) return known;
  const name = crypto.getRandomValues(new Uint32Array(2)).reduce((text, part) => text + part.toString(36), '');
  remember(DEVICE, name);
  return name;
}

/** Name of the person at this device, kept up to date on the screen; as it is typed, so that a space between two names can be. */
export function useWho(): string {
  return useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    typed,
    () => '',
  );
}
