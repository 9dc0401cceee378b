import { positive, Refusal, within } from '../refusal.ts';

export interface Hours {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** A piece of work. Skills are nested: an electrician can do a hand's work, so `people` counts everybody needed. */
export interface Task {
  readonly id: string;
  readonly hours: Hours;
  /** Licensed electricians among the people needed. Default 0. */
  readonly electricians?: number;
  /** Everybody needed, electricians counted. Default: the electricians, at least one. */
  readonly people?: number;
  /** Tasks that are done before this one starts; a hold point is an ordinary one of these. */
  readonly after?: readonly string[];
  /** Takes the whole crew, whoever that is. */
  readonly allHands?: boolean;
  /** May be broken off at the end of a day and taken up the next. */
  readonly splittable?: boolean;
}

export interface Crew {
  readonly electricians: number;
  /** Everybody, electricians counted. */
  readonly people: number;
}

/** Tasks in flat form, in an order in which every task comes after those it waits for. */
export interface Work {
  readonly ids: readonly string[];
  readonly low: Float64Array;
  readonly likely: Float64Array;
  readonly high: Float64Array;
  readonly electricians: Int32Array;
  readonly people: Int32Array;
  readonly splittable: readonly boolean[];
  readonly before: readonly (readonly number[])[];
  readonly next: readonly (readonly number[])[];
}

/**
 * Checks tasks against the crew and puts them in order.
 *
 * @throws {Refusal} `outside-range` for hours that do not rise, or a task no crew of this size can do;
 *                   `unknown-name` for a task that waits for nobody; `inconsistent` for a circle or two of one id.
 */
export function prepare(tasks: readonly Task[], crew: Crew): Work {
  within(crew.people, 1, 1000, 'crew.people', 'Count everybody.');
  within(crew.electricians, 0, crew.people, 'crew.electricians', 'Electricians are counted among the people.');
  const sorted = inOrder(tasks);
  const place = new Map(sorted.map((t, i) => [t.id, i]));
  const before = sorted.map((t) => (t.after ?? []).map((id) => place.get(id) as number));
  const next: number[][] = sorted.map(() => []);
  before.forEach((list, i) => {
    for (const j of list) next[j].push(i);
  });
  const needs = sorted.map((t) => needOf(t, crew));
  const hours = sorted.map((t) => checkedHours(t));
  return {
    ids: sorted.map((t) => t.id),
    low: Float64Array.from(hours, (h) => h.low),
    likely: Float64Array.from(hours, (h) => h.likely),
    high: Float64Array.from(hours, (h) => h.high),
    electricians: Int32Array.from(needs, (n) => n.electricians),
    people: Int32Array.from(needs, (n) => n.people),
    splittable: sorted.map((t) => t.splittable ?? false),
    before,
    next,
  };
}

function checkedHours({ id, hours }: Task): Hours {
  positive(hours.likely, `${id}.hours.likely`, 'Give the likely hours.');
  within(hours.low, 0, hours.likely, `${id}.hours.low`, 'Low is at most likely.');
  within(hours.high, hours.likely, 10_000, `${id}.hours.high`, 'High is at least likely.');
  return hours;
}

function needOf(task: Task, crew: Crew): { electricians: number; people: number } {
  const electricians = within(task.electricians ?? 0, 0, 1000, `${task.id}.electricians`, 'Count them.');
  const asked = Math.max(within(task.people ?? 1, 0, 1000, `${task.id}.people`, 'Count everybody.'), electricians, 1);
  const people = task.allHands ? crew.people : asked;
  if (electricians > crew.electricians || asked > crew.people) {
    throw new Refusal({
      code: 'outside-range',
      at: task.id,
      got: `${asked} people, ${electricians} of them electricians`,
      want: `at most ${crew.people} people, ${crew.electricians} of them electricians`,
      mend: 'Bring a larger crew, or do the task another way.',
    });
  }
  return { electricians, people };
}

function inOrder(tasks: readonly Task[]): Task[] {
  const known = new Map(tasks.map((t) => [t.id, t]));
  if (known.size !== tasks.length) {
    const twice = tasks.find((t, i) => tasks.findIndex((o) => o.id === t.id) !== i) as Task;
    throw new Refusal({
      code: 'inconsistent',
      at: 'tasks',
      got: twice.id,
      want: 'one task of each id',
      mend: 'Rename one.',
    });
  }
  const sorted: Task[] = [];
  const state = new Map<string, 'open' | 'done'>();
  const visit = (task: Task): void => {
    if (state.get(task.id) === 'done') return;
    if (state.get(task.id) === 'open') {
      throw new Refusal({
        code: 'inconsistent',
        at: task.id,
        got: 'waits for itself',
        want: 'no circle',
        mend: 'Cut one of the waits.',
      });
    }
    state.set(task.id, 'open');
    for (const id of task.after ?? []) {
      const earlier = known.get(id);
      if (!earlier) {
        throw new Refusal({
          code: 'unknown-name',
          at: `${task.id}.after`,
          got: id,
          want: 'the id of a task',
          mend: 'Correct the id.',
        });
      }
      visit(earlier);
    }
    state.set(task.id, 'done');
    sorted.push(task);
  };
  for (const t of tasks) visit(t);
  return sorted;
}
