import type { Finding } from '@eaveline/plan';
import { gap, headline, type Part, paragraph, type Sheet, table } from '../page/index.ts';
import { against, capital, civilTime, counted } from './figures.ts';
import type { Pack } from './packContext.ts';
import { headed, pagesOf } from './pagesOf.ts';
import { summaryRows } from './summaryRows.ts';

/** What the job is, what it comes to, what stops it, and what its limits rest on. */
export function coverPages(pack: Pack): Sheet[] {
  return pagesOf(pack, { no: '00', title: 'Cover' }, [
    headline(coverSentence(pack), pack.job.about),
    gap(3),
    facts(pack),
    gap(3),
    headed('What it comes to', summary(pack)),
    gap(3),
    ...weather(pack),
    ...findingParts(pack),
    ...missingParts(pack),
    ...unconfirmedParts(pack),
    gap(3),
    headed('Editions', editions(pack)),
    ...meetsParts(pack),
  ]);
}

function coverSentence({ fails, asks }: Pack): string {
  const stopping = fails.filter((finding) => finding.stops).length;
  if (fails.length === 0 && asks.length === 0) return 'Nothing stops this job.';
  const failing =
    fails.length === 0
      ? 'Nothing fails.'
      : `${counted(fails.length, 'figure')} ${fails.length === 1 ? 'fails' : 'fail'}${stopping > 0 ? `, ${stopping} of them stop the job` : ''}.`;
  const open =
    asks.length === 0 ? '' : ` ${counted(asks.length, 'thing')} ${asks.length === 1 ? 'waits' : 'wait'} for an answer.`;
  return failing + open;
}

function facts({ job, plan, drawnAt }: Pack): Part {
  const { site, supply, network } = job.facts;
  const rows: [string, string][] = [
    ['job', `${job.name}, ${job.id}`],
    ['firm', job.firm.name],
    ['address', site.address],
    ['drawn', `${civilTime(drawnAt, site.zone)}, clock of ${site.zone}`],
    ['supply', `${supply.system}, ${supply.nominalV} V line to neutral, ${supply.earthing}, ${supply.serviceA} A`],
    ['network', [network.name ?? 'not named', network.approvalNumber ?? 'no approval number yet'].join(', ')],
    ['survey', `${plan.site.survey.present} of ${plan.site.survey.wanted} facts present`],
  ];
  return table({
    label: 'the job',
    columns: [
      { head: 'fact', share: 1 },
      { head: '', share: 6, weight: 700 },
    ],
    rows: rows.map(([what, words]) => ({ cells: [{ words: what, ink: 'quiet' as const }, words] })),
  });
}

function summary(pack: Pack): Part {
  return table({
    label: 'summary figures',
    columns: [
      { head: 'figure', share: 3.6 },
      { head: 'value', share: 2.2, align: 'end', weight: 700 },
      { head: 'range or limit', share: 5.4 },
    ],
    rows: summaryRows(pack).map((row) => ({
      cells: [
        row.what,
        row.value,
        { words: row.bounds, ink: row.state === 'fails' ? ('fails' as const) : ('ink' as const) },
      ],
    })),
  });
}

function weather({ plan }: Pack): Part[] {
  const { climate } = plan.sun;
  const words = [
    `Weather: ${climate.kind}, ${climate.name}; the nearest is ${Math.round(climate.distanceKm)} km away${climate.far ? ', further than the method may carry: take yields as rough' : ''}.`,
    `${capital(climate.quality)}.`,
    ...climate.remarks,
    `Credit: ${climate.credit}.`,
  ];
  return [headed('Weather used', paragraph(words.join(' '))), gap(3)];
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
        [finding.title, ...finding.mends.slice(0, 1).map((mend) => `Mend: ${mend.words}`)].join('\n'),
        ofLimit(finding),
        { words: clauseOf(finding), ink: 'quiet' as const },
      ],
    })),
  });
}

function ofLimit({ value, limit, unit }: Finding): string {
  return value === undefined || limit === undefined ? '' : against(value, limit, unit ?? '');
}

/** Clause with its edition, and how the limit is known where nobody has seen the text. */
function clauseOf({ clause, edition, seen, unconfirmed }: Finding): string {
  return [clause, edition, unconfirmed ? 'from memory, unconfirmed' : seen].filter((words) => words !== '').join(', ');
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
      cells: [fact.what, fact.from, { words: fact.rules.join(', '), ink: 'quiet' as const }, { stroke: true as const }],
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
      { head: 'rule', share: 2.2, weight: 700 },
      { head: 'clause', share: 4 },
      { head: 'edition', share: 2.2 },
      { head: 'confirmed by, on', share: 3 },
    ],
    rows: unconfirmed.map((limit) => ({ cells: [limit.rule, limit.clause, limit.edition, { stroke: true as const }] })),
  });
  return [headed('Limits from memory, unconfirmed: read them before you rely on them', part), gap(3)];
}

function editions({ plan }: Pack): Part {
  const words = Object.entries(plan.checks.editions).map(([document, edition]) => `${document}: ${edition}`);
  return paragraph(words.length === 0 ? 'None named.' : `${words.join('.  ')}.`, { ink: 'quiet' });
}

function meetsParts({ plan }: Pack): Part[] {
  const meets = plan.checks.findings.filter((finding) => finding.state === 'meets');
  if (meets.length === 0) return [];
  const part = table({
    label: 'what meets',
    columns: [
      { head: 'stands', share: 1.4 },
      { head: 'what', share: 5.2 },
      { head: 'of its limit', share: 1.9, align: 'end', face: 'close' },
      { head: 'clause', share: 2.6, face: 'close' },
    ],
    rows: meets.map((finding) => ({
      of: finding.id,
      cells: [
        { state: 'meets' as const, words: finding.unconfirmed ? 'meets, limit unconfirmed' : 'meets' },
        finding.title,
        ofLimit(finding),
        { words: clauseOf(finding), ink: 'quiet' as const },
      ],
    })),
  });
  return [gap(3), headed('What meets', part)];
}
