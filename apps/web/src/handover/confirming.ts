import type { Confirmation } from '@eaveline/job';
import type { Change, Finding, Plan } from '@eaveline/plan';
import { withUnit } from '../words/figure.ts';

/** A limit from memory that something relies on, with what it says: nobody confirms a limit unseen. */
export interface LimitToConfirm {
  readonly rule: string;
  readonly clause: string;
  readonly edition: string;
  /** `Supply voltage`. */
  readonly name: string;
  /** `at most 253 V`, each value once; empty where the rule asks yes or no. */
  readonly says: readonly string[];
  /** What it judged, the titles of the findings. */
  readonly judges: readonly string[];
}

/** `supply-voltage` as words: Supply voltage. */
export function ruleWords(rule: string): string {
  const words = rule
    .replace(/-/g, ' ')
    .replace(/\bdc\b/g, 'd.c.')
    .replace(/\bac\b/g, 'a.c.');
  return words.charAt(0).toUpperCase() + words.slice(1);
}

function says({ limit, unit = '', sense }: Finding): string[] {
  return limit === undefined || sense === undefined ? [] : [`${sense} ${withUnit(limit, unit)}`];
}

/** Every unconfirmed limit with the values it judges by and what it judged. */
export function limitsToConfirm({ unconfirmed, findings }: Pick<Plan['checks'], 'unconfirmed' | 'findings'>) {
  return unconfirmed.map(({ rule, clause, edition }): LimitToConfirm => {
    const mine = findings.filter((finding) => finding.rule === rule && finding.unconfirmed);
    return {
      rule,
      clause,
      edition,
      name: ruleWords(rule),
      says: [...new Set(mine.flatMap(says))],
      judges: mine.map(({ title }) => title),
    };
  });
}

/** Who confirms, with what licence, on which day. */
export type Signer = Pick<Confirmation, 'by' | 'on'> & { readonly licence: string };

/** The change that puts a licensed person's word behind a limit, for its edition only. */
export function confirmationChange(
  { rule, edition }: Pick<LimitToConfirm, 'rule' | 'edition'>,
  signer: Signer,
): Change {
  const id = `${rule}-${edition}`
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
  const word: Confirmation = { rule, edition, ...signer };
  return { path: ['choices', 'confirmations', id], value: word };
}
