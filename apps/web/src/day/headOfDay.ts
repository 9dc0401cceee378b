import type { Plan } from '@eaveline/plan';
import type { Head } from '../frame/head.ts';
import { clock } from '../words/clock.ts';
import { counted, sentence } from '../words/count.ts';
import { figure } from '../words/figure.ts';
import { hundredths } from './hundredths.ts';

const timesInHundred = (chance: number) => `${hundredths(chance)} times in 100`;

/** How many days with what chance; below it what done before would save one. */
export function headOfDay({ day }: Pick<Plan, 'day'>): Head {
  if (day.refusal !== undefined) return { sentence: day.refusal };
  if (day.tasks.length === 0) return { sentence: 'No work to lay out yet.' };
  const promised = day.chanceByDays.find(({ days }) => days === day.days);
  const saver = day.ahead.find(({ chanceOneDayLess }) => chanceOneDayLess >= day.wantedChance);
  const before = day.tasks.filter(({ doneBefore }) => doneBefore).length;
  const quiet = [
    `${figure(day.hours, 1)} hours of work for ${counted(day.crew.people, 'person', 'people')}`,
    before > 0 && `${sentence(counted(before, 'task'))} done before`,
    saver && `A day less, done before: ${saver.words.replace(/\.$/, '')}`,
    day.dusk && `Dusk at ${clock(day.dusk.setH)}`,
  ].filter((words) => words !== undefined && words !== false);
  return {
    sentence: `Done in ${counted(day.days, 'day')}${promised === undefined ? '' : `, ${timesInHundred(promised.chance)}`}.`,
    quiet: `${quiet.join('. ')}.`,
  };
}
