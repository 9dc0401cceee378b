import { type DesignSignature, designSignature } from '@eaveline/job';
import { howFar } from '@eaveline/plan';
import { gap, headline, type Part, paragraph, type Sheet, table } from '../page/index.ts';
import { capital, civilTime, counted } from './figures.ts';
import type { Pack } from './packContext.ts';
import { headed, pagesOf } from './pagesOf.ts';
import { summaryRows } from './summaryRows.ts';

/** What the job is, what it comes to, and what weather it was worked out with. */
export function coverPages(pack: Pack): Sheet[] {
  return pagesOf(pack, { no: '00', title: 'Cover' }, [
    headline(coverSentence(pack), pack.job.about),
    gap(3),
    facts(pack),
    gap(3),
    headed('What it comes to', summary(pack)),
    gap(3),
    ...weather(pack),
  ]);
}

function coverSentence({ fails, asks }: Pack): string {
  const stopping = fails.filter((finding) => finding.stops).length;
  if (fails.length === 0 && asks.length === 0) return 'Nothing stops this job.';
  const failing = fails.length === 0 ? 'Nothing fails.' : failSentence(fails.length, stopping);
  const open =
    asks.length === 0 ? '' : ` ${counted(asks.length, 'thing')} ${asks.length === 1 ? 'waits' : 'wait'} for an answer.`;
  return failing + open;
}

function failSentence(count: number, stopping: number): string {
  const failing = `${counted(count, 'figure')} ${count === 1 ? 'fails' : 'fail'}`;
  if (stopping === 0) return `${failing}.`;
  if (stopping === count) return `${failing} and ${count === 1 ? 'stops' : 'stop'} the job.`;
  return `${failing}, ${stopping} of them ${stopping === 1 ? 'stops' : 'stop'} the job.`;
}

function facts({ job, plan, drawnAt }: Pack): Part {
  const { site, supply, network } = job.facts;
  const rows: [string, string][] = [
    ['firm', job.firm.name],
    ['address', site.address],
    ['drawn', `${civilTime(drawnAt, site.zone)}, clock of ${site.zone}`],
    ['supply', `${supply.system}, ${supply.nominalV} V line to neutral, ${supply.earthing}, ${supply.serviceA} A`],
    ['network', [network.name ?? 'not named', network.approvalNumber ?? 'no approval number yet'].join(', ')],
    ['survey', `${plan.site.survey.present} of ${plan.site.survey.wanted} facts present`],
    ['design', signatureWords(designSignature(job))],
  ];
  return table({
    label: 'the job',
    columns: [
      { head: 'job', share: 1 },
      { head: `${job.name}, ${job.id}`, share: 6, weight: 700 },
    ],
    rows: rows.map(([what, words]) => ({ cells: [{ words: what, ink: 'quiet' as const }, words] })),
  });
}

/** `Signed by Nia, licence E 1234, on 2026-05-12, as it stands.` */
function signatureWords(signature: DesignSignature | undefined): string {
  if (signature === undefined) return 'Not signed.';
  const { name, licence, on, of } = signature;
  const who = `${name}${licence === undefined ? '' : `, licence ${licence},`} on ${on}`;
  const standing = {
    'this design': ', as it stands.',
    earlier: ' for an earlier design. It needs a new signature.',
    'not said': '. The record does not say for which design: it needs a new signature.',
  };
  return `Signed by ${who}${standing[of]}`;
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
    `Weather: ${climate.kind}, ${climate.name}, ${howFar(climate)}${climate.far ? ': take yields as rough' : ''}.`,
    `${capital(climate.quality)}.`,
    ...climate.remarks,
    `Credit: ${climate.credit}.`,
  ];
  return [headed('Weather used', paragraph(words.join(' '))), gap(3)];
}
