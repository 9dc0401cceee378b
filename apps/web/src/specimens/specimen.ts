import type { ReactNode } from 'react';

/** How a state that only a hand makes is shown on a page that nobody touches. */
export type Touch = 'focus' | 'pressed';

/** One state of a component. */
export interface Shown {
  /** `rest`, `focus`, `refused`, `missing fact`, `stale`. */
  readonly state: string;
  readonly show: ReactNode;
  readonly touch?: Touch;
}

/** A component in all its states. */
export interface Specimen {
  /** As it is exported: a test looks for every component's name here. */
  readonly name: string;
  readonly group:
    | 'Doing and choosing'
    | 'Filling in'
    | 'State'
    | 'Figures'
    | 'The pad'
    | 'Findings'
    | 'Drawing'
    | 'Frame';
  /** One sentence: what it is for. */
  readonly says: string;
  readonly states: readonly Shown[];
  /** Needs the width of a sheet: its papers lie one below the other. */
  readonly wide?: boolean;
}
