import type { Head } from '../frame/head.ts';
import { counted, sentence } from '../words/count.ts';
import type { OpenEnds } from './openEnds.ts';
import { openCount } from './openLines.ts';

/** Whether the pack may be handed over, and how much is open where it may not. */
export function headOfHandover(ends: OpenEnds): Head {
  const open = openCount(ends);
  if (open === 0)
    return {
      sentence: 'Nothing is open. The pack can be handed over.',
      quiet: 'Every limit is confirmed, every test read, every unit on record.',
    };
  const stops =
    ends.stopping === 0 ? undefined : `${counted(ends.stopping, 'check')} ${ends.stopping === 1 ? 'stops' : 'stop'} it`;
  return {
    sentence: `Not to be handed over yet. ${sentence(counted(open, 'kind'))} of thing ${open === 1 ? 'is' : 'are'} open.`,
    quiet: `${stops === undefined ? 'No check stops it' : sentence(stops)}. Until all is closed the pack says so on every page.`,
  };
}
