import type { Plan } from '@eaveline/plan';
import type { Head } from '../frame/head.ts';
import { countWord, sentence } from '../words/count.ts';

const things = (count: number) => `${count === 1 ? 'One thing' : `${sentence(countWord(count))} things`}`;

/** What stops the job, what waits for an answer, and how many limits nobody has confirmed. */
export function headOfChecks({ checks }: Pick<Plan, 'checks'>): Head {
  const { tally, findings, unconfirmed } = checks;
  if (findings.length === 0) return { sentence: 'Nothing was judged. That is no pass.' };
  const stopping = findings.filter(({ state, stops }) => state === 'fails' && stops).length;
  const failing = tally.fails - stopping;
  const stops =
    stopping === 0 ? 'Nothing stops this job' : `${things(stopping)} ${stopping === 1 ? 'stops' : 'stop'} this job`;
  const waits =
    tally.ask === 0
      ? undefined
      : `${sentence(countWord(tally.ask))} ${tally.ask === 1 ? 'waits' : 'wait'} for an answer`;
  const quiet = [
    failing > 0 && `${things(failing)} more ${failing === 1 ? 'fails' : 'fail'} without stopping it`,
    unconfirmed.length > 0
      ? `${things(tally.unconfirmed)} ${tally.unconfirmed === 1 ? 'meets a limit' : 'meet limits'} from memory that a licensed person has yet to confirm`
      : 'Every limit behind a meets is confirmed',
  ].filter((words) => words !== false);
  return {
    sentence: [stops, waits]
      .filter((words) => words !== undefined)
      .join('. ')
      .concat('.'),
    quiet: `${quiet.join('. ')}.`,
  };
}
