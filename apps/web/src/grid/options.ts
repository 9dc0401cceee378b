import type { Answer, Job } from '@eaveline/job';
import type { Option } from './column.ts';

/** Options of a question of the survey, in the words it is asked in. */
export function asAsked(questions: readonly { readonly at: string; readonly answer: Answer }[], at: string): Option[] {
  const answer = questions.find((question) => question.at === at)?.answer;
  if (answer?.kind !== 'pick') throw new Error(`The survey offers nothing to pick at ${at}`);
  return answer.options.map(({ value, words }) => ({ value, words }));
}

/** Options that are shown in the words the job keeps. */
export function same(values: readonly string[]): Option[] {
  return values.map((value) => ({ value, words: value }));
}

const byName = new Intl.Collator('en', { numeric: true });

/** Equipment of one kind, by its names: sizes in their order, 2.5 before 10. */
export function sheetsOfKind({ choices }: Pick<Job, 'choices'>, kind: string): Option[] {
  return Object.entries(choices.equipment)
    .filter(([, sheet]) => sheet.kind === kind)
    .map(([value, sheet]) =>
      'conductor' in sheet ? { value, words: sheet.name, size: sheet.conductor } : { value, words: sheet.name },
    )
    .sort((a, b) => byName.compare(a.words, b.words));
}

/** Lines a thing may stand on, by what the house is fed with. */
export function lineOptions({ facts }: Pick<Job, 'facts'>): Option[] {
  const sets = {
    'single-phase': [['L1']],
    'split-phase': [['L1'], ['L2'], ['L1', 'L2']],
    'three-phase': [['L1'], ['L2'], ['L3'], ['L1', 'L2'], ['L2', 'L3'], ['L1', 'L3'], ['L1', 'L2', 'L3']],
  }[facts.supply.system];
  return sets.map((value) => ({ value, words: value.join(' ') }));
}
