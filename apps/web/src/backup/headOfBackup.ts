import type { Finding, Plan } from '@eaveline/plan';
import type { Head } from '../frame/head.ts';
import { counted, listed, sentence } from '../words/count.ts';
import { figure } from '../words/figure.ts';

/** How long a night stays lit without sun; below it, which start is too much and what stays dark. */
export function headOfBackup({ backup, checks }: Pick<Plan, 'backup' | 'checks'>): Head {
  if (!backup.present) return { sentence: 'No backup in this job. In an outage the house goes dark.' };
  const { night, leftDark, circuits, lines } = backup;
  const fed = circuits.filter(({ fed: isFed, shed }) => isFed && !shed).length;
  const head =
    night === undefined
      ? `${sentence(counted(fed, 'circuit'))} stay on. How long is not known.`
      : `Full, the battery carries the night’s load for ${figure(night.fullH, night.fullH < 10 ? 1 : 0)} hours.`;
  const judged = checks.findings.filter(({ rule }) => rule === 'backup-start');
  const named = (state: Finding['state']) =>
    judged.filter((finding) => finding.state === state).map(({ about }) => about.name);
  const [fails, asks] = [named('fails'), named('ask')];
  const parts = [
    fails.length > 0 && `${sentence(listed(fails))} ${fails.length === 1 ? 'asks' : 'ask'} more than it gives to start`,
    asks.length > 0 && `${sentence(listed(asks))} may not start`,
    judged.length > 0 && fails.length + asks.length === 0 && 'Every motor starts on it',
    leftDark.length > 0 &&
      `${sentence(counted(leftDark.length, 'circuit'))} wanted ${leftDark.length === 1 ? 'stays' : 'stay'} dark`,
    `It stands on ${listed(lines)}`,
  ].filter((words) => words !== false);
  return { sentence: head, quiet: `${parts.join('. ')}.` };
}
