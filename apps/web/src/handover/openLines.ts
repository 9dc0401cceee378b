import type { Finding, SheetNo } from '@eaveline/plan';
import { counted, sentence } from '../words/count.ts';
import type { OpenEnds } from './openEnds.ts';

/** One kind of thing a handover waits for: how much of it is open, and the sheet it is closed on. */
export interface OpenLine {
  readonly open: number;
  readonly state: Finding['state'];
  readonly words: string;
  readonly sheet?: SheetNo;
}

/** Says a count and what it is of, or that none is left. */
function line(open: number, state: 'fails' | 'ask', words: string, done: string, sheet?: SheetNo): OpenLine {
  return {
    open,
    state: open > 0 ? state : 'meets',
    words: open > 0 ? words : done,
    ...(sheet === undefined ? {} : { sheet }),
  };
}

/** What a handover waits for, a line a kind, in the order it is closed. */
export function openLines(ends: OpenEnds): OpenLine[] {
  const { stopping, failing, asking, facts, testsUnread, testsPast, unitsUnscanned, unconfirmed, signed } = ends;
  const many = (n: number, one: string, does: string, do_: string) =>
    `${sentence(counted(n, one))} ${n === 1 ? does : do_}`;
  return [
    line(stopping, 'fails', `${many(stopping, 'check', 'stops', 'stop')} the job.`, 'No check stops the job.', '08'),
    line(
      failing - stopping,
      'fails',
      `${many(failing - stopping, 'check', 'fails', 'fail')} without stopping it.`,
      'Nothing else fails.',
      '08',
    ),
    line(asking, 'ask', `${many(asking, 'question', 'waits', 'wait')} for an answer.`, 'No question is open.', '08'),
    line(facts, 'ask', `${many(facts, 'fact', 'is', 'are')} not known.`, 'Every fact is known.', '01'),
    line(
      testsPast,
      'fails',
      `${many(testsPast, 'reading', 'is', 'are')} not as the limit or the drawing wants.`,
      'No reading on record misses.',
      '11',
    ),
    line(testsUnread, 'ask', `${many(testsUnread, 'test', 'has', 'have')} no reading.`, 'Every test is read.', '11'),
    line(
      unitsUnscanned,
      'ask',
      `${many(unitsUnscanned, 'unit', 'has', 'have')} no serial on record.`,
      'Every unit has its serial on record.',
    ),
    line(
      unconfirmed.length,
      'ask',
      `${many(unconfirmed.length, 'limit', 'is', 'are')} from memory, confirmed by nobody.`,
      'Every limit relied on is confirmed or was read.',
    ),
    line(signed ? 0 : 1, 'ask', 'Nobody has signed the design as it stands.', 'The design is signed as it stands.'),
  ];
}

/** How many kinds of thing are open. */
export function openCount(ends: OpenEnds): number {
  return openLines(ends).filter(({ open }) => open > 0).length;
}
