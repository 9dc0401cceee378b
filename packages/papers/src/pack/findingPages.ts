import type { Finding } from '@eaveline/plan';
import { gap, headline, type Part, paragraph, type Sheet, table } from '../page/index.ts';
import { against, civilDay, counted } from './figures.ts';
import type { Pack } from './packContext.ts';
import { headed, pagesOf } from './pagesOf.ts';

/** What fails, what is open, what its limits rest on, and what meets. */
export function findingPages(pack: Pack): Sheet[] {
  const { meets } = pack.plan.checks.tally;
  const sentence = `${counted(pack.fails.length, 'figure')} ${pack.fails.length === 1 ? 'fails' : 'fail'}, ${pack.asks.length} open, ${meets} meet.`;
  return pagesOf(pack, { no: '08', title: 'Findings' }, [
    headline(sentence, 'Limits are judged unrounded. How each open figure came about stands on sheet 08.W.'),
    gap(3),
    ...findingParts(pack),
    ...missingParts(pack),
    ...unconfirmedParts(pack),
    ...confirmedParts(pack),
    headed('Editions', editions(pack)),
    ...meetsParts(pack),
  ]);
}

function findingParts(pack: Pack): Part[] {
  const open = [...pack.fails, ...pack.asks];
  if (open.length === 0) return [];
  return [headed('What fails, and what is open', findingTable(open)), gap(3)];
}

/** Findings with their value against their limit, the clause, and the first way out. */
function findingTable(findings: readonly Finding[]): Part {
  return table({
    label: 'findings',
    columns: [
      { head: 'stands', share: 1.3 },
      { head: 'what', share: 5, weight: 700 },
      { head: 'of its limit', share: 2, align: 'end', face: 'close' },
      { head: 'clause, edition', share: 2.7, face: 'close' },
    ],
    rows: findings.map((finding) => ({
      of: finding.id,
      cells: [
        { state: finding.state, words: finding.state },
        whatOf(finding),
        ofLimit(finding),
        { words: clauseOf(finding), ink: 'quiet' as const },
      ],
    })),
  });
}

/** What was found, and under it the first way out. */
function whatOf({ title, mends }: Finding) {
  const first = mends[0];
  return first === undefined ? title : { words: title, below: `Mend: ${first.words}` };
}

function ofLimit({ value, limit, unit, state }: Finding): string {
  return value === undefined || limit === undefined ? '' : against(value, limit, unit ?? '', state !== 'meets');
}

/** Clause with its edition, and how the limit is known where nobody has seen the text. */
function clauseOf({ clause, edition, seen, unconfirmed }: Finding): string {
  const words = [clause, edition, unconfirmed ? 'from memory, unconfirmed' : seen];
  return [...new Set(words)].filter((one) => one !== '').join(', ');
}

function missingParts({ plan }: Pack): Part[] {
  const { missing } = plan.site;
  if (missing.length === 0) return [];
  const part = table({
    label: 'missing facts',
    columns: [
      { head: 'fact not known', share: 4, weight: 700 },
      { head: 'from', share: 1.2 },
      { head: 'waiting for it', share: 4 },
      { head: 'found', share: 3 },
    ],
    rows: missing.map((fact) => ({
      of: fact.at,
      cells: [
        fact.what,
        fact.from,
        { words: fact.rules.map(inWords).join(', '), ink: 'quiet' as const },
        { stroke: true as const },
      ],
    })),
  });
  return [headed('Not known yet', part), gap(3)];
}

/** Limits from memory behind a `meets`, each with a line for the licensed person who confirms it. */
function unconfirmedParts({ plan }: Pack): Part[] {
  const { unconfirmed } = plan.checks;
  if (unconfirmed.length === 0) return [];
  const part = table({
    label: 'limits unconfirmed',
    columns: [
      { head: 'rule', share: 2.2, weight: 700, face: 'close' },
      { head: 'clause', share: 4 },
      { head: 'edition', share: 2.2 },
      { head: 'confirmed by, on', share: 3 },
    ],
    rows: unconfirmed.map((limit) => ({
      cells: [inWords(limit.rule), limit.clause, limit.edition, { stroke: true as const }],
    })),
  });
  return [headed('Limits from memory, unconfirmed: read them before you rely on them', part), gap(3)];
}

/** Limits from memory that a licensed person has read and put a name to. */
function confirmedParts({ job }: Pack): Part[] {
  const words = Object.values(job.choices.confirmations);
  if (words.length === 0) return [];
  const part = table({
    label: 'limits confirmed',
    columns: [
      { head: 'rule', share: 2.2, weight: 700, face: 'close' },
      { head: 'edition', share: 3 },
      { head: 'confirmed by', share: 4 },
      { head: 'on', share: 2.2 },
    ],
    rows: words.map(({ rule, edition, by, licence, on }) => ({
      cells: [inWords(rule), edition, licence === undefined ? by : `${by}, licence ${licence}`, civilDay(on)],
    })),
  });
  return [headed('Limits confirmed, each for its edition', part), gap(3)];
}

/** A rule's name without its hyphens. */
function inWords(rule: string): string {
  return rule.replaceAll('-', ' ');
}

function editions({ plan }: Pack): Part {
  const words = Object.entries(plan.checks.editions).map(([document, edition]) => `${document}: ${edition}`);
  return paragraph(words.length === 0 ? 'None named.' : `${words.join('.  ')}.`, { ink: 'quiet' });
}

/** One line a rule: the thing nearest its limit, and how many more keep it. */
function meetsParts({ plan }: Pack): Part[] {
  const meets = plan.checks.findings.filter((finding) => finding.state === 'meets');
  const rules = [...new Set(meets.map((finding) => finding.rule))];
  if (rules.length === 0) return [];
  const part = table({
    label: 'what meets',
    columns: [
      { head: 'stands', share: 2.1, face: 'close' },
      { head: 'what, the nearest to its limit', share: 5 },
      { head: 'of its limit', share: 1.9, align: 'end', face: 'close' },
      { head: 'clause', share: 2.6, face: 'close' },
    ],
    rows: rules.map((rule) => {
      const own = meets.filter((finding) => finding.rule === rule);
      const [nearest] = own as [Finding, ...Finding[]];
      const open = own.some((finding) => finding.unconfirmed);
      return {
        of: nearest.id,
        cells: [
          { state: 'meets' as const, words: open ? 'meets, limit unconfirmed' : 'meets' },
          own.length === 1 ? nearest.title : { words: nearest.title, below: `and ${own.length - 1} more by this rule` },
          ofLimit(nearest),
          { words: clauseOf(nearest), ink: 'quiet' as const },
        ],
      };
    }),
  });
  return [gap(3), headed('What meets', part)];
}
