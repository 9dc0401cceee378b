import type { DayTask } from '@eaveline/plan';

/** A task with its number on the sheet: the same number on its bar and in the list. */
export interface NumberedTask<T> {
  readonly number: number;
  readonly task: T;
}

type Placed = Pick<DayTask, 'day' | 'startH' | 'doneBefore'>;

/** Tasks in the order they are begun, numbered from one; what is done before comes first. */
export function taskOrder<T extends Placed>(tasks: readonly T[]): NumberedTask<T>[] {
  const begins = ({ day = 0, startH = 0, doneBefore }: Placed) => (doneBefore ? -1 : day * 100 + startH);
  return [...tasks].sort((a, b) => begins(a) - begins(b)).map((task, i) => ({ number: i + 1, task }));
}

/** Names of a task from the longest to the shortest: whole, without its middle, its head alone. */
function namesOf(name: string): string[] {
  const parts = name.split(', ');
  const [head = '', ...rest] = parts;
  const last = rest.at(-1);
  return [...new Set([name, last === undefined ? head : `${head}, ${last}`, head, head.split(/[:,] /)[0] ?? head])];
}

/** What fits on a bar of so many letters: number and name, or the number alone; nothing where not even that fits. */
export function barWords(number: number, name: string, letters: number): string {
  const long = namesOf(name)
    .map((each) => `${number} ${each}`)
    .find((words) => words.length <= letters);
  if (long !== undefined) return long;
  return String(number).length <= letters ? String(number) : '';
}
