import type { SurveyHole, SurveyStanding } from '@eaveline/plan';
import type { Head } from '../frame/head.ts';
import { counted, listed, sentence } from '../words/count.ts';
import { figure } from '../words/figure.ts';
import { ruleWords } from '../words/ruleWords.ts';

/** `Fault loop and bus need it.`; where no rule does, the sheet, paper or step that does, and why. */
export function neededBy({ rules, goesInto, because }: Pick<SurveyHole, 'rules' | 'goesInto' | 'because'>): string {
  if (rules.length === 0) return `Needed for ${goesInto}: ${because}.`;
  const [first = '', ...others] = rules.map(ruleWords);
  const small = (name: string) => name.charAt(0).toLowerCase() + name.slice(1);
  // one rule may be named in the plural: free ways
  if (others.length === 0) return `The rule on ${small(first)} needs it.`;
  return `${listed([first, ...others.map(small)])} need it.`;
}

/** `16 800 and 16 420: more than 1 in 100 apart. Which is right?`, in whole millimetres. */
export function apartWords({ firstM, secondM }: NonNullable<SurveyHole['measures']>): string {
  const mm = (metres: number) => figure(Math.round(metres * 1000), 0);
  return `${mm(firstM)} and ${mm(secondM)}: more than 1 in 100 apart. Which is right?`;
}

/** Holes of one step. */
export const openAt = ({ holes }: Pick<SurveyStanding, 'holes'>, step: string) =>
  holes.filter((hole) => hole.step === step);

/** What the survey counts as open: said where the count first stands. */
const COUNTED = 'Counted are facts, readings, photographs and looks the house still owes.';

/** Sheet 01 has two counts: the survey's, and the facts of the plan nobody has brought. This tells them apart. */
export const TWO_COUNTS =
  'Open at the house: facts, readings, photographs and looks this survey takes. Not known: facts the plan has a use for, whoever brings them.';

/** The sentence over the whole survey. */
export function headOfSurvey(name: string, holes: number, closed: { by: string; at: string } | undefined): Head {
  if (closed !== undefined)
    return {
      sentence: `The survey of ${name} is closed.`,
      quiet: holes === 0 ? `${closed.by}, ${closed.at}.` : `${closed.by}, ${closed.at}. ${openWords(holes)} since.`,
    };
  if (holes === 0) return { sentence: `Nothing is open at ${name}. The survey can close.` };
  return {
    sentence: `${sentence(counted(holes, 'thing is', 'things are'))} open at ${name}.`,
    quiet: `${COUNTED} In walking order, photograph first; it can be left and taken up at any place.`,
  };
}

/** `7 open`, `whole`. */
export function openWords(holes: number): string {
  return holes === 0 ? 'whole' : `${holes} open`;
}

/** Why the survey does not close: how much, and the first of it with the rule that needs it. */
export function refusalToClose(holes: readonly SurveyHole[]): string {
  const [first] = holes;
  if (first === undefined) throw new Error('A survey without a hole is not refused');
  const count = sentence(counted(holes.length, 'thing is', 'things are'));
  return `Not closed. ${count} open. The first: ${first.what}. ${neededBy(first)}`;
}

/** What the way into the survey says: `Go on with the survey: 7 open at the house`. */
export function entryWords(holes: number, closedBy: string | undefined, changed: number): string {
  if (closedBy === undefined)
    return holes === 0 ? 'Survey: nothing open' : `Go on with the survey: ${holes} open at the house`;
  const since = [
    ...(changed === 0 ? [] : [`${changed} changed since`]),
    ...(holes === 0 ? [] : [`${holes} open at the house`]),
  ];
  return `Survey, closed by ${closedBy}${since.length === 0 ? '' : `: ${since.join(', ')}`}`;
}
