import type { Plan } from '@eaveline/plan';
import type { Head } from '../frame/head.ts';
import { counted, countWord, listed, sentence } from '../words/count.ts';
import { figure } from '../words/figure.ts';

/** How long a night stays lit without sun; below it, which start is too much and what stays dark. */
export function headOfBackup({ backup }: Pick<Plan, 'backup'>): Head {
  if (!backup.present) return { sentence: 'No backup in this job. In an outage the house goes dark.' };
  const { night, starts, leftDark, circuits, lines } = backup;
  const fed = circuits.filter(({ fed: isFed, shed }) => isFed && !shed).length;
  const head =
    night === undefined
      ? `${sentence(counted(fed, 'circuit'))} stay on. How long is not known.`
      : `Full, the battery lights the night for ${figure(night.fullH, night.fullH < 10 ? 1 : 0)} hours.`;
  const willNot = starts.filter(({ verdict }) => verdict === 'will not').map(({ name }) => name);
  const unknown = starts.filter(({ verdict }) => verdict === 'plate missing' || verdict === 'ask').length;
  const parts = [
    willNot.length > 0
      ? `${sentence(listed(willNot))} will not start on it`
      : starts.length > 0 && unknown === 0 && 'Every motor starts on it',
    unknown > 0 && `${sentence(countWord(unknown))} ${unknown === 1 ? 'start is' : 'starts are'} not known`,
    leftDark.length > 0 &&
      `${sentence(counted(leftDark.length, 'circuit'))} wanted ${leftDark.length === 1 ? 'stays' : 'stay'} dark`,
    `It stands on ${listed(lines)}`,
  ].filter((words) => words !== false);
  return { sentence: head, quiet: `${parts.join('. ')}.` };
}
