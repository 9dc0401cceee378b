import { positive, Refusal } from '../refusal.ts';
import { leastHours } from './bound.ts';
import { byPriority, finishOf, place, seeded, tails } from './place.ts';
import { type Crew, prepare, type Task, type Work } from './task.ts';

export interface PlannedTask {
  readonly id: string;
  readonly startH: number;
  readonly finishH: number;
}

export interface Schedule {
  /** In order of start, h of working time from the beginning. */
  readonly tasks: readonly PlannedTask[];
  readonly finishH: number;
  /** No crew of this size is done sooner: the longest chain, or work over hands between any head and tail. */
  readonly lowerBoundH: number;
  readonly proven: boolean;
  /** The longest chain of waits by likely hours. */
  readonly chain: readonly string[];
}

export interface ScheduleInput {
  readonly tasks: readonly Task[];
  readonly crew: Crew;
  /** Default 1. */
  readonly seed?: number;
  /** Orders tried beyond the first. Default 400. */
  readonly tries?: number;
}

export interface FoundSchedule {
  readonly work: Work;
  readonly order: Int32Array;
  readonly start: Float64Array;
  readonly finishH: number;
  readonly boundH: number;
}

/**
 * The best order found: by longest tail first, then by seeded tries. Stops at the bound. With `dayH` tasks are kept
 * inside days.
 */
export function findSchedule({ tasks, crew, seed = 1, tries = 400 }: ScheduleInput, dayH?: number): FoundSchedule {
  const work = prepare(tasks, crew);
  const tail = tails(work, work.likely);
  const boundH = leastHours(work, crew);
  const random = seeded(seed);
  let priority: ArrayLike<number> = tail;
  let order = byPriority(work, tail);
  let start = place(work, crew, work.likely, order, dayH);
  let finishH = finishOf(start, work.likely);
  for (let t = 0; t < tries && finishH > boundH + 1e-9; t++) {
    const other = nextPriority(t, tail, priority, random);
    const otherOrder = byPriority(work, other);
    const otherStart = place(work, crew, work.likely, otherOrder, dayH);
    const otherFinish = finishOf(otherStart, work.likely);
    // an equal finish is taken too: it lets the search drift along a plateau
    if (otherFinish > finishH + 1e-9) continue;
    [priority, order, start, finishH] = [other, otherOrder, otherStart, otherFinish];
  }
  return { work, order, start, finishH, boundH };
}

/** In turn: anything at all, something near the longest tail, and twice the best so far with a task or two moved. */
function nextPriority(turn: number, tail: Float64Array, best: ArrayLike<number>, random: () => number): Float64Array {
  const longest = Math.max(...tail);
  if (turn % 4 === 0) return tail.map(() => random() * longest);
  if (turn % 4 === 1) return tail.map((h) => h * (0.6 + 0.8 * random()));
  const moved = Float64Array.from(best);
  for (let k = 0; k < (turn % 4) - 1; k++) moved[Math.floor(random() * moved.length)] = random() * longest;
  return moved;
}

function longestChain(work: Work): string[] {
  const tail = tails(work, work.likely);
  const longest = (of: readonly number[]) => of.reduce((a, b) => (tail[b] > tail[a] ? b : a));
  const chain: string[] = [];
  let open = work.ids.map((_, i) => i).filter((i) => work.before[i].length === 0);
  while (open.length > 0) {
    const task = longest(open);
    chain.push(work.ids[task]);
    open = [...work.next[task]];
  }
  return chain;
}

function planned(work: Work, start: Float64Array): PlannedTask[] {
  return work.ids
    .map((id, i) => ({ id, startH: start[i], finishH: start[i] + work.likely[i] }))
    .sort((a, b) => a.startH - b.startH || a.finishH - b.finishH);
}

/**
 * Who does what when, with likely hours: short, feasible, with a bound on how much shorter it could be.
 *
 * Serial generation by longest tail, improved by seeded random priorities and by moving tasks in the best order. The gap to the bound is not proof of
 * waste: where tasks lock each other the bound itself is low.
 *
 * @throws {Refusal} what `prepare` refuses: first of all a task the crew cannot do.
 *
 * Source: Kolisch and Hartmann 1999.
 */
export function scheduleTasks(input: ScheduleInput): Schedule {
  const { work, start, finishH, boundH } = findSchedule(input);
  return {
    tasks: planned(work, start),
    finishH,
    lowerBoundH: boundH,
    proven: finishH <= boundH + 1e-9,
    chain: longestChain(work),
  };
}

export interface DayPart {
  readonly id: string;
  /** From the start of the day. */
  readonly startH: number;
  readonly finishH: number;
  /** False when the task goes on the next day. */
  readonly ends: boolean;
}

export interface DaysSchedule {
  readonly days: readonly (readonly DayPart[])[];
  /** Working time to the end of the last task, whole days before it counted in full. */
  readonly finishH: number;
  readonly lowerBoundDays: number;
  readonly proven: boolean;
}

/**
 * The same over working days: no task starts that cannot end the same day, unless it is marked splittable.
 *
 * @throws {Refusal} `outside-range` for a task longer than a day that may not be split.
 */
export function scheduleDays(input: ScheduleInput & { readonly hoursPerDay: number }): DaysSchedule {
  const dayH = positive(input.hoursPerDay, 'hoursPerDay', 'Give the working hours of a day.');
  for (const t of input.tasks) {
    if (t.splittable || t.hours.likely <= dayH) continue;
    throw new Refusal({
      code: 'outside-range',
      at: `${t.id}.hours.likely`,
      got: t.hours.likely,
      want: `at most ${dayH} h, the length of a day`,
      mend: 'Mark the task splittable, or divide it.',
    });
  }
  const { work, start, finishH, boundH } = findSchedule(input, dayH);
  const days: DayPart[][] = [];
  planned(work, start).forEach((t) => {
    for (const part of byDay(t, dayH)) {
      while (days.length <= part.day) days.push([]);
      days[part.day].push({ id: t.id, startH: part.startH, finishH: part.finishH, ends: part.ends });
    }
  });
  const lowerBoundDays = Math.ceil(boundH / dayH - 1e-9);
  return { days, finishH, lowerBoundDays, proven: days.length === lowerBoundDays };
}

function byDay({ startH, finishH }: PlannedTask, dayH: number) {
  const parts: { day: number; startH: number; finishH: number; ends: boolean }[] = [];
  let at = startH;
  while (at < finishH - 1e-9) {
    const day = Math.floor((at + 1e-9) / dayH);
    const until = Math.min(finishH, (day + 1) * dayH);
    parts.push({
      day,
      startH: Math.max(0, at - day * dayH),
      finishH: until - day * dayH,
      ends: until >= finishH - 1e-9,
    });
    at = until;
  }
  return parts;
}
