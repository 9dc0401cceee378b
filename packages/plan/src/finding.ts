import type { Choices } from '@eaveline/job';
import type { Working } from './working.ts';

export type SheetNo = '01' | '02' | '03' | '04' | '05' | '06' | '07' | '08' | '09' | '10' | '11' | '12';

/** A change of the job: one value at one place. */
export interface Change {
  /** `['choices', 'trunks', 'a', 'feedDrop']`. */
  readonly path: readonly string[];
  /** New value; `undefined` takes the field away. */
  readonly value: unknown;
}

/**
 * A smallest change that would mend a finding. It changes choices only: never a fact, never a record, and never a
 * licensed person's word for a limit, which stands among the choices and is nobody else's to give.
 */
export interface MendChange extends Change {
  readonly path: readonly ['choices', Exclude<keyof Choices, 'confirmations'>, ...string[]];
}

/** Whether a mend may make a change. Asked where mends are made, and again where one is taken. */
export function isMendChange({ path: [part, group] }: Change): boolean {
  return part === 'choices' && group !== undefined && group !== 'confirmations';
}

export interface Mend {
  /** `Feed it at the fifth drop.` */
  readonly words: string;
  /** What the judged figure would be then, where it was worked out. */
  readonly value?: number;
  /** Left out where the mend is an act on site or a question to somebody. */
  readonly changes?: readonly MendChange[];
}

/** What a finding is about. */
export interface About {
  readonly kind:
    | 'job'
    | 'site'
    | 'plane'
    | 'row'
    | 'module'
    | 'unit'
    | 'trunk'
    | 'circuit'
    | 'board'
    | 'battery'
    | 'backup'
    | 'rail'
    | 'fixing'
    | 'wall'
    | 'network'
    | 'document'
    | 'day';
  readonly id: string;
  /** `Trunk A`, `N1·7`. */
  readonly name: string;
}

/** How a limit is known. */
export type Seen = 'public text' | 'memory' | 'equipment sheet' | 'network letter' | 'job' | 'practice';

/** One rule applied to one thing. */
export interface Finding {
  /** `trunk-rise`: the rule. */
  readonly rule: string;
  /** `trunk-rise:a`: the rule and the thing; steady from one plan to the next. */
  readonly id: string;
  readonly about: About;
  /** `Trunk A rises 5.32 V. The limit is 4.60 V.` Short main clause, the thing first. */
  readonly title: string;
  /** One quiet line below it. */
  readonly detail?: string;
  readonly state: 'meets' | 'fails' | 'ask';
  /** True where it meets a limit known only from memory that no licensed person has confirmed for this edition. */
  readonly unconfirmed: boolean;
  /** Whose word stands behind the limit, for this edition. */
  readonly confirmed?: { readonly by: string; readonly licence?: string; readonly on: string };
  readonly value?: number;
  readonly limit?: number;
  readonly unit?: string;
  readonly sense?: 'at most' | 'at least';
  /** What is left to the limit, in its unit; negative where it fails. */
  readonly margin?: number;
  readonly clause: string;
  readonly edition: string;
  readonly seen: Seen;
  /** How the value came about. */
  readonly working?: Working;
  /** How the limit came about, where it was worked out rather than read. */
  readonly limitWorking?: Working;
  readonly mends: readonly Mend[];
  /** Job paths of the facts an `ask` waits for. */
  readonly needs: readonly string[];
  /** Sheet beside whose thing it is shown; sheet 08 shows all. */
  readonly sheet: SheetNo;
  /** True where the job may not go on to site while this fails or is open. */
  readonly stops: boolean;
}

/** `meets`, `fails`, `ask`, or `meets, limit unconfirmed`. */
export function stateWords(finding: Pick<Finding, 'state' | 'unconfirmed'>): string {
  return finding.state === 'meets' && finding.unconfirmed ? 'meets, limit unconfirmed' : finding.state;
}

/** `Limit confirmed by Nia Rees, licence 4711, 2026-05-02.` */
export function confirmedWords({ confirmed }: Pick<Finding, 'confirmed'>): string | undefined {
  if (confirmed === undefined) return undefined;
  const licence = confirmed.licence === undefined ? '' : `, licence ${confirmed.licence}`;
  return `Limit confirmed by ${confirmed.by}${licence}, ${confirmed.on}.`;
}

/** How many of each state. */
export interface Tally {
  readonly fails: number;
  readonly ask: number;
  readonly meets: number;
  readonly unconfirmed: number;
}

export function tally(findings: readonly Finding[]): Tally {
  const of = (state: Finding['state']) => findings.filter((f) => f.state === state).length;
  return {
    fails: of('fails'),
    ask: of('ask'),
    meets: of('meets'),
    unconfirmed: findings.filter((f) => f.state === 'meets' && f.unconfirmed).length,
  };
}
