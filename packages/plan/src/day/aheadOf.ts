import { type Chance, type Crew, chanceBy, finishChance, scheduleDays, type Task } from '@eaveline/physics';
import type { TaskDraft } from './tasksOf.ts';
import { trialsFor } from './trials.ts';
import type { DayPlan } from './types.ts';

/** What can be done before the first day without the roof open or the house dark. */
const AHEAD_KINDS = ['talk', 'edge', 'setOut', 'isolate', 'homeRun', 'battery'];

export interface AheadInput {
  readonly drafts: readonly TaskDraft[];
  readonly toTask: (draft: TaskDraft) => Task;
  readonly crew: Crew;
  readonly hoursPerDay: number;
  readonly days: number;
  readonly finishH: number;
}

/** Four in five: the chance at which a firm books the days. Common practice, no source. */
export const WANTED_CHANCE = 0.8;

/** Fewest whole days by which a share of the simulated jobs is done. */
export function daysFor(wanted: number, chance: Chance, hoursPerDay: number): number {
  const index = Math.min(chance.finishH.length - 1, Math.ceil(wanted * chance.finishH.length) - 1);
  return Math.max(1, Math.ceil((chance.finishH[index] ?? 0) / hoursPerDay - 1e-9));
}

/** Trials of the chance in a what-if, in a house: fewer than for the plan itself. */
const TRIALS = 120;

/**
 * What done the day before would save: each group of like tasks by itself, then the smallest set that saves a whole
 * day. Worked out by planning the rest again; nothing here is set to an answer.
 *
 * A set is left out when it waits for a task that would still be open. Every set, and the job as it stands, goes by
 * the same rule (longest tail first) and the same luck, so that what differs is what was done before.
 */
export function aheadOf(input: AheadInput): DayPlan['ahead'] {
  const groups = AHEAD_KINDS.map((kind) => input.drafts.filter((draft) => draft.id.split(':')[0] === kind)).filter(
    (group) => group.length > 0 && !group.every((draft) => draft.doneBefore),
  );
  const talk = groups.find((group) => group[0]?.id === 'talk') ?? [];
  const others = groups.filter((group) => group !== talk);
  const asItStands = tryAhead([], input);
  const days = Math.min(input.days, asItStands.days);
  const compare = (set: readonly TaskDraft[]) => {
    const tried = tryAhead(set, input);
    return { ...tried, savesHours: tried.savesHours - asItStands.savesHours };
  };

  const singles = [[], ...others.map((group) => [group])]
    .map((set) => [...talk, ...set.flat()])
    .filter((set) => set.length > 0 && closed(set, input.drafts))
    .map(compare);
  const saves = [1, 2, 3, 4, 5].map((size) => smallestThatSaves(size, singles)).find((found) => found !== undefined);
  const kept = singles
    .filter((one) => one !== saves && one.savesHours > 0.05)
    .sort((a, b) => b.savesHours - a.savesHours);
  if (saves !== undefined) return [saves, ...kept];
  // nothing saves a day with the wanted chance: say what all of it together would do for the chance of one day less
  const all = [...talk, ...others.flat()];
  return all.length > 0 && closed(all, input.drafts) ? [compare(all), ...kept] : kept;

  function smallestThatSaves(size: number, one: typeof singles): (typeof singles)[number] | undefined {
    const tried =
      size === 1
        ? one
        : subsets(others, size)
            .map((set) => [...talk, ...set.flat()])
            .filter((set) => closed(set, input.drafts))
            .map(compare);
    return tried
      .filter((candidate) => candidate.days < days)
      .sort((a, b) => hoursOf(a.taskIds, input) - hoursOf(b.taskIds, input) || b.chance - a.chance)[0];
  }
}

function hoursOf(ids: readonly string[], { drafts }: AheadInput): number {
  return drafts.reduce((sum, draft) => sum + (ids.includes(draft.id) ? draft.hours.likely : 0), 0);
}

/** Sets of a size. */
function subsets<T>(groups: readonly T[], size: number): readonly T[][] {
  if (size === 0) return [[]];
  return groups.flatMap((first, k) => subsets(groups.slice(k + 1), size - 1).map((rest) => [first, ...rest]));
}

function closed(set: readonly TaskDraft[], all: readonly TaskDraft[]): boolean {
  const done = new Set([...set, ...all.filter((draft) => draft.doneBefore)].map(({ id }) => id));
  return set.every((draft) => draft.after.every((id) => done.has(id)));
}

function tryAhead(set: readonly TaskDraft[], input: AheadInput): DayPlan['ahead'][number] {
  const gone = new Set(set.map(({ id }) => id));
  const rest = input.drafts.filter((draft) => !draft.doneBefore && !gone.has(draft.id)).map(input.toTask);
  const tasks = rest.map((task) => ({ ...task, after: (task.after ?? []).filter((id) => !gone.has(id)) }));
  const schedule = { tasks, crew: input.crew, hoursPerDay: input.hoursPerDay, tries: 0 };
  const { finishH } = scheduleDays(schedule);
  const trials = finishChance({ ...schedule, samples: trialsFor(tasks.length, TRIALS) });
  const days = daysFor(WANTED_CHANCE, trials, input.hoursPerDay);
  const chance = chanceBy(trials, days * input.hoursPerDay).share;
  const kinds = [...new Set(set.map(({ name }) => name.split(',')[0] ?? name))];
  return {
    taskIds: set.map(({ id }) => id),
    words: kinds.join(', '),
    savesHours: input.finishH - finishH,
    days,
    chance,
    chanceOneDayLess: chanceBy(trials, (input.days - 1) * input.hoursPerDay).share,
  };
}
