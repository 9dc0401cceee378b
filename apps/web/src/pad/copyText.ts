import type { Finding, Working } from '@eaveline/plan';
import { apart } from '../words/figure.ts';
import { putIn } from './putIn.ts';
import { seenWords } from './seenWords.ts';
import { sourceWords } from './sourceWords.ts';
import type { Subject } from './subject.ts';
import { rangeWords, valueWords } from './valueWords.ts';

/** Whose figure is copied, and from when. */
export interface CopiedFrom {
  readonly job: string;
  /** `04.2`. */
  readonly page: string;
  /** `2 May 2026, 09:41`; left out where it is not known. */
  readonly workedOut?: string | undefined;
  /** `au-nz/au: AS/NZS 3000 2018, AS/NZS 4777.1 2024`. */
  readonly rules?: string | undefined;
  readonly invented: boolean;
}

/**
 * A working as plain text for a letter: what it is and comes to; the formula, and below it the figures put in; where
 * it comes from; then the figures it was made of, each two signs further in.
 */
export function workingText(working: Working, depth = 0): string {
  const indent = '  '.repeat(depth);
  const range = rangeWords(working);
  const { name, symbol, formula, note, source, inputs = [] } = working;
  const lines = [
    `${name}${symbol === undefined ? '' : `, ${symbol}`}: ${valueWords(working)}${range === undefined ? '' : ` (${range})`}`,
  ];
  const figures = putIn(working);
  if (formula !== undefined) lines.push(`  ${formula}`);
  if (figures !== undefined) lines.push(`  = ${figures}`, `  = ${valueWords(working)}`);
  if (note !== undefined) lines.push(`  ${note}`);
  lines.push(`  Source: ${sourceWords(source)}`);
  const own = lines.map((line) => indent + line).join('\n');
  return [own, ...inputs.map((input) => workingText(input, depth + 1))].join('\n');
}

/** How a rule judged it, in lines of a letter. */
export function findingText(finding: Finding): string {
  const { state, unconfirmed, title, detail, value, limit, unit = '', sense, clause, edition } = finding;
  const pair = value !== undefined && limit !== undefined ? apart(value, limit) : undefined;
  const figures = pair === undefined ? '' : ` ${pair.value} ${unit}, ${sense} ${pair.limit} ${unit}.`;
  const word = { meets: unconfirmed ? 'Meets, limit unconfirmed.' : 'Meets.', fails: 'Fails.', ask: 'Ask.' }[state];
  return [
    `${word}${figures} ${title}`,
    ...(detail === undefined ? [] : [detail]),
    `${clause}${edition === '' ? '' : `. Edition: ${edition}`}. ${seenWords(finding)}`,
  ].join('\n');
}

/** All the pad says of a subject, as it reads in an e-mail. */
export function copyText({ name, working, finding, words = [] }: Subject, from: CopiedFrom): string {
  const main = working ?? finding?.working;
  const parts = [
    name,
    ...(words.length > 0 ? [words.join('\n')] : []),
    ...(main === undefined ? [] : [workingText(main)]),
    ...(finding?.limitWorking === undefined ? [] : [`The limit\n${workingText(finding.limitWorking)}`]),
    ...(finding === undefined ? [] : [findingText(finding)]),
    fromText(from),
  ];
  return parts.join('\n\n').replaceAll('\u202f', ' ').replaceAll('\u00a0', ' ');
}

function fromText({ job, page, workedOut, rules, invented }: CopiedFrom): string {
  return [
    `${job}, page ${page}.${workedOut === undefined ? '' : ` Worked out ${workedOut}.`}`,
    ...(rules === undefined ? [] : [`Rules ${rules}.`]),
    invented
      ? 'Invented job, not for construction. Local codes and the licensed person decide.'
      : 'Local codes and the licensed person decide.',
  ].join('\n');
}
