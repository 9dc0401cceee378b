import type { DesignSignature, Job } from '@eaveline/job';
import { type Judged, rule } from '../rule.ts';

/** Before these nobody has reason to sign: the design still moves with every visit. */
const TOO_EARLY: readonly Job['state'][] = ['survey', 'design'];

/**
 * Design sign-off: has a licensed person signed the design as it stands now?
 *
 * A signature is put to one design. A mend taken after it makes another, and that one is signed by nobody. Where
 * nobody has signed, it is asked for once the letter is out, and missing once the job is handed over.
 */
export const designSignOff = rule({
  id: 'design-sign-off',
  sheet: '12',
  stops: false,
  question: 'Has a licensed person signed the design as it stands now?',
  judge({ designSigned, state }): readonly Judged[] {
    if (designSigned !== undefined) return [judgeSigned(designSigned)];
    if (TOO_EARLY.includes(state)) return [];
    return [
      {
        about,
        state: state === 'handed over' ? 'fails' : 'ask',
        title: `Nobody has signed the design, and the job is ${inWords[state]}.`,
        needs,
        mends: [{ words: 'Sign it on sheet 12.' }],
      },
    ];
  },
});

const about = { kind: 'document', id: 'design', name: 'The design' } as const;
const needs = ['records.signatures, design'];
const inWords: Readonly<Record<Job['state'], string>> = {
  survey: 'at the survey',
  design: 'being designed',
  letter: 'at the network’s letter',
  booked: 'booked',
  'on site': 'on site',
  tested: 'tested',
  'handed over': 'handed over',
};

function judgeSigned({ name, licence, on, of, changed }: DesignSignature): Judged {
  const who = `${name}${licence === undefined ? '' : `, licence ${licence},`} on ${on}`;
  switch (of) {
    case 'this design':
      return { about, state: 'meets', title: `Signed by ${who}, as it stands.`, seen: 'job' };
    case 'earlier':
      return {
        about,
        state: 'ask',
        title: `Signed by ${who} for an earlier design.`,
        detail: `${sinceThen(changed)}It needs a new signature.`,
        needs,
        mends: [{ words: 'Look at what changed, and sign it again on sheet 12.' }],
      };
    case 'not said':
      return {
        about,
        state: 'ask',
        title: `Signed by ${who}. The record does not say for which design.`,
        detail: 'It needs a new signature.',
        needs,
        mends: [{ words: 'Sign it again on sheet 12.' }],
      };
  }
}

const COUNTS = ['', 'One part', 'Two parts', 'Three parts', 'Four parts', 'Five parts'];

/** `Two parts changed since: export limit, trunks. `; nothing where the record does not tell. */
function sinceThen(changed: readonly string[]): string {
  if (changed.length === 0) return '';
  return `${COUNTS[changed.length] ?? `${changed.length} parts`} changed since: ${changed.map(partName).join(', ')}. `;
}

const NAMES: Readonly<Record<string, string>> = {
  'facts.existing': 'what stood there before',
  'choices.rules': 'rule editions',
  'choices.equipment': 'equipment sheets',
  'choices.wind': 'wind figures',
  'choices.exportLimitSetVA': 'export limit set',
};

/** `choices.trunks` is trunks, `facts.supply` supply as surveyed. */
function partName(path: string): string {
  const [section, name = path] = path.split('.');
  return NAMES[path] ?? (section === 'facts' ? `${name} as surveyed` : name);
}
