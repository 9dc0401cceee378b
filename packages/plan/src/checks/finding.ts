import type { Confirmation } from '@eaveline/job';
import { type Finding, isMendChange, type Mend } from '../finding.ts';
import type { Limit } from '../rules/pack.ts';
import { type CheckContext, editionName, editionOf } from './context.ts';
import { type Judged, type Rule, stateOf } from './rule.ts';

/**
 * A finding from what a rule said: state from unrounded figures, margin, edition, and whether a `meets` stands on a
 * limit known only from memory that no licensed person has confirmed for this edition.
 */
export function finding(
  rule: Pick<Rule, 'id' | 'sheet' | 'stops'>,
  limit: Pick<Limit<unknown>, 'clause' | 'document' | 'seen'>,
  context: Pick<CheckContext, 'pack' | 'choices' | 'wordFor'>,
  judged: Judged,
): Finding {
  const state = stateOf(judged);
  const from = judged.from ?? limit;
  const seen = judged.seen ?? from.seen;
  const word = context.wordFor(rule.id, from.document);
  const measured = 'value' in judged ? judged : undefined;
  return {
    rule: rule.id,
    id: `${rule.id}:${judged.about.id}`,
    about: judged.about,
    title: judged.title,
    ...(judged.detail === undefined ? {} : { detail: judged.detail }),
    state,
    unconfirmed: state === 'meets' && seen === 'memory' && word === undefined,
    ...(word === undefined ? {} : { confirmed: confirmedBy(word) }),
    ...(measured === undefined
      ? {}
      : {
          value: measured.value,
          limit: measured.limit,
          unit: measured.unit,
          sense: measured.sense,
          margin: measured.sense === 'at most' ? measured.limit - measured.value : measured.value - measured.limit,
        }),
    clause: from.clause,
    edition: editionName(from.document, editionOf(context.choices.rules, context.pack, from.document)),
    seen,
    ...(judged.working === undefined ? {} : { working: judged.working }),
    ...(judged.limitWorking === undefined ? {} : { limitWorking: judged.limitWorking }),
    mends: state === 'meets' ? [] : (judged.mends ?? []).map((mend) => choicesOnly(mend, rule.id)),
    needs: state === 'ask' ? (judged.needs ?? []) : [],
    sheet: rule.sheet,
    stops: state !== 'meets' && rule.stops && seen !== 'practice',
  };
}

/** A mend that reaches past the choices is a fault of its rule. */
function choicesOnly(mend: Mend, rule: string): Mend {
  const past = mend.changes?.find((change) => !isMendChange(change));
  if (past === undefined) return mend;
  throw new Error(`${rule}: “${mend.words}” changes ${past.path.join('.')}. A mend changes choices only.`);
}

function confirmedBy({ by, licence, on }: Confirmation): NonNullable<Finding['confirmed']> {
  return { by, ...(licence === undefined ? {} : { licence }), on };
}
