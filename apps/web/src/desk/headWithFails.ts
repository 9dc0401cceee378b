import type { Finding, SheetNo } from '@eaveline/plan';
import type { Head } from '../frame/head.ts';
import { counted, sentence } from '../words/count.ts';
import { findingName } from './allSubjects.ts';

/** These two speak of nothing else. */
const OF_FINDINGS: readonly SheetNo[] = ['08', '12'];
const MOST_NAMED = 2;

/** A sheet's head never sounds better than its checks: what fails on it is named below the sentence, before all else. */
export function headWithFails(no: SheetNo, head: Head, findings: readonly Finding[]): Head {
  const fails = findings.filter(({ sheet, state }) => sheet === no && state === 'fails');
  if (fails.length === 0 || OF_FINDINGS.includes(no)) return head;
  const named = fails
    .slice(0, MOST_NAMED)
    .map((finding) => findingName(finding).replace(/^./, (one) => one.toLowerCase()));
  const more = fails.length > MOST_NAMED ? `, and ${fails.length - MOST_NAMED} more` : '';
  const said = `${sentence(counted(fails.length, 'check'))} ${fails.length === 1 ? 'fails' : 'fail'} here: ${named.join('; ')}${more}.`;
  return { ...head, quiet: head.quiet === undefined ? said : `${said} ${head.quiet}` };
}
