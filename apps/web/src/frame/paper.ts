import { useSyncExternalStore } from 'react';

/** The stocks of paper a sheet is shown on. */
export const PAPERS = ['day', 'dark', 'roof'] as const;
export type Paper = (typeof PAPERS)[number];

const KEPT_AS = 'eaveline-paper';
const listeners = new Set<() => void>();

function asPaper(text: string | null): Paper | undefined {
  return PAPERS.find((paper) => paper === text);
}

/** The paper on the root, which the styles read. */
function currentPaper(): Paper {
  return asPaper(document.documentElement.dataset.paper ?? null) ?? 'day';
}

/** Lays another paper and remembers it on this device. */
export function layPaper(paper: Paper): void {
  document.documentElement.dataset.paper = paper;
  localStorage.setItem(KEPT_AS, paper);
  for (const listener of listeners) listener();
}

/** Lays the paper of last time; where there was none, dark for eyes that ask for dark, else day. */
export function layRememberedPaper(): void {
  const asked = matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'day';
  document.documentElement.dataset.paper = asPaper(localStorage.getItem(KEPT_AS)) ?? asked;
}

/** The next paper, round and round. */
export function nextPaper(): void {
  layPaper(PAPERS[(PAPERS.indexOf(currentPaper()) + 1) % PAPERS.length] ?? 'day');
}

export function usePaper(): Paper {
  return useSyncExternalStore((listener) => {
    listeners.add(listener);
    return () => listeners.delete(listener);
  }, currentPaper);
}
