import type { Choices, Facts, Job } from '@eaveline/job';
import { type Crew, chanceBy, finishChance, Refusal, scheduleDays, scheduleTasks, type Task } from '@eaveline/physics';
import type { Stage } from '../stage.ts';
import type { SunPlan } from '../sun/types.ts';
import { worked } from '../working.ts';
import { aheadOf, daysFor, WANTED_CHANCE } from './aheadOf.ts';
import { type DayTrunk, type TaskDraft, tasksOf } from './tasksOf.ts';
import { trialsFor } from './trials.ts';
import type { DayPlan, DayTask } from './types.ts';

interface View {
  readonly planes: Facts['roof']['planes'];
  readonly units: Choices['units'];
  readonly trunks: readonly DayTrunk[];
  readonly batteries: number;
  readonly backup: boolean;
  readonly crew: Choices['crew'];
  readonly day: Choices['day'];
}

/** Simulated jobs behind a chance, in a house. Enough for a 95 % interval of 5 % of one or better. */
const TRIALS = 400;
/** Orders looked through for a shorter one, in a house. */
const ORDERS = 60;

const LEAVES_OUT = [
  'Hours are common practice. The firm’s own records replace them.',
  'Weather, the network’s appointment and travel are not in the hours.',
  'Nobody plans again during a simulated job, so its chances lean to the late side.',
  'Two people a roof task; a third pair of hands is not counted as faster.',
];

/** Tasks, who does them in which order, how many days with what chance, and what done before would save. */
export const dayStage: Stage<'day', 'sun' | 'array', View> = {
  name: 'day',
  before: ['sun', 'array'],
  view: (job: Job): View => ({
    planes: job.facts.roof.planes,
    units: job.choices.units,
    trunks: trunksOf(job.choices),
    batteries: Object.keys(job.choices.batteries).length,
    backup: job.choices.backup !== undefined,
    crew: job.choices.crew,
    day: job.choices.day,
  }),

  run(view, { sun, array }): DayPlan {
    const people = Object.values(view.crew);
    const crew = {
      electricians: people.filter(({ role }) => role !== 'roof hand').length,
      people: people.length,
    };
    const drafts = tasksOf({ ...view, array, doneBefore: view.day.doneBefore });
    const base = { drafts, crew: { ...crew, names: people.map(({ name }) => name) }, dusk: duskOf(view, sun) };
    try {
      return planned(base, crew, view.day.hoursPerDay);
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      return refused(base, error.message);
    }
  },
};

function trunksOf({ trunks, units }: Choices): readonly DayTrunk[] {
  return Object.entries(trunks)
    .map(([id, { name, feedDrop }]) => {
      const used = Object.values(units).flatMap((unit) => (unit.trunkId === id ? [unit.drop] : []));
      return { id, name, drops: Math.max(1, feedDrop, ...used) };
    })
    .sort((a, b) => (a.name < b.name ? -1 : 1));
}

interface Base {
  readonly drafts: readonly TaskDraft[];
  readonly crew: DayPlan['crew'];
  readonly dusk: DayPlan['dusk'] | undefined;
}

function planned({ drafts, crew: named, dusk }: Base, crew: Crew, hoursPerDay: number): DayPlan {
  const open = drafts.filter((draft) => !draft.doneBefore);
  const ids = new Set(open.map(({ id }) => id));
  const toTask = (draft: TaskDraft): Task => ({
    id: draft.id,
    hours: draft.hours,
    electricians: draft.electricians,
    people: draft.people,
    after: draft.after.filter((id) => ids.has(id)),
    allHands: draft.allHands,
    splittable: draft.splittable,
  });
  const tasks = open.map(toTask);
  const trials = trialsFor(tasks.length, TRIALS);
  const { schedule, chance } = steadiest({ tasks, crew, hoursPerDay }, trials);
  const { lowerBoundH, chain } = scheduleTasks({ tasks, crew, tries: 0 });
  const likelyDays = schedule.days.length;
  const days = daysFor(WANTED_CHANCE, chance, hoursPerDay);
  const placedTasks = placeAll(drafts, schedule.days);
  return {
    tasks: placedTasks,
    crew: named,
    days,
    wantedChance: WANTED_CHANCE,
    likelyDays,
    chanceByDays: [Math.max(1, Math.min(days, likelyDays) - 1), likelyDays, days, days + 1]
      .filter((d, k, all) => all.indexOf(d) === k)
      .sort((x, y) => x - y)
      .map((d) => {
        const by = chanceBy(chance, d * hoursPerDay);
        return { days: d, chance: by.share, interval: [by.low, by.high] as const };
      }),
    trials,
    hours: schedule.finishH,
    boundHours: lowerBoundH,
    ahead: aheadOf({ drafts, toTask, crew, hoursPerDay, days, finishH: schedule.finishH }),
    ...(dusk === undefined ? {} : { dusk }),
    ...outageOf(placedTasks),
    critical: chain,
    workings: [
      worked(
        'Working time',
        schedule.finishH,
        'h',
        'the steadier of two orders, whole days before the last counted in full',
        'Kolisch and Hartmann 1999',
        [
          {
            name: 'no order is shorter than',
            value: lowerBoundH,
            unit: 'h',
            source: 'longest chain, and work over hands',
          },
          { name: 'crew', value: crew.people, unit: 'people', source: 'the job' },
          {
            name: 'hours a day',
            value: hoursPerDay,
            unit: 'h',
            source: 'the job',
            at: 'choices.day.hoursPerDay',
          },
        ],
        {
          decimals: 1,
          // no range of this figure: every task is in it at its likely time, and tasks run late further than early
          note: `with every task at its likely time; tasks run late further than early: of ${trials} trials one in ten ends within ${chance.p10H.toFixed(1)} h, nine in ten within ${chance.p90H.toFixed(1)} h`,
        },
      ),
    ],
    leavesOut: LEAVES_OUT,
  };
}

/**
 * The steadier of two orders: longest tail first, and the shortest that a search by likely hours finds. A search gains
 * minutes on paper and may lose them to the first task that runs late, so the chance decides.
 */
function steadiest(
  input: { readonly tasks: readonly Task[]; readonly crew: Crew; readonly hoursPerDay: number },
  samples: number,
) {
  const [plain, searched] = [0, trialsFor(input.tasks.length, ORDERS)].map((tries) => ({
    schedule: scheduleDays({ ...input, tries }),
    chance: finishChance({ ...input, tries, samples }),
  })) as [Order, Order];
  const late = ({ chance }: Order) => chance.finishH[Math.ceil(WANTED_CHANCE * samples) - 1] ?? 0;
  return late(searched) < late(plain) ? searched : plain;
}

interface Order {
  readonly schedule: ReturnType<typeof scheduleDays>;
  readonly chance: ReturnType<typeof finishChance>;
}

/** A crew that cannot do the work: the tasks stand, the days do not. */
function refused({ drafts, crew, dusk }: Base, refusal: string): DayPlan {
  return {
    tasks: placeAll(drafts, []),
    crew,
    days: 0,
    wantedChance: WANTED_CHANCE,
    likelyDays: 0,
    chanceByDays: [],
    trials: 0,
    hours: 0,
    boundHours: 0,
    ahead: [],
    ...(dusk === undefined ? {} : { dusk }),
    critical: [],
    refusal,
    workings: [],
    leavesOut: LEAVES_OUT,
  };
}

type Days = ReturnType<typeof scheduleDays>['days'];

function placeAll(drafts: readonly TaskDraft[], days: Days): DayTask[] {
  return drafts.map(({ splittable: _s, allHands: _a, ...draft }) => {
    const parts = days.flatMap((day, k) =>
      day.filter(({ id }) => id === draft.id).map(({ startH, finishH }) => ({ day: k + 1, startH, endH: finishH })),
    );
    const first = parts[0];
    const last = parts.at(-1);
    return first === undefined || last === undefined
      ? { ...draft, parts }
      : { ...draft, parts, day: first.day, startH: first.startH, endH: last.endH };
  });
}

/** House dark from the first touch of the board to the last circuit moved that day. */
function outageOf(tasks: readonly DayTask[]): Pick<DayPlan, 'outage'> {
  const board = tasks.find(({ id }) => id === 'board');
  if (board?.day === undefined || board.startH === undefined || board.endH === undefined) return {};
  const changeover = tasks.find(({ id }) => id === 'changeover');
  const toH = changeover?.day === board.day ? (changeover.endH ?? board.endH) : board.endH;
  return { outage: { day: board.day, fromH: board.startH, toH } };
}

function duskOf({ day }: View, sun: SunPlan): DayPlan['dusk'] | undefined {
  if (day.date === undefined) return undefined;
  const setH = sun.daylight[Number(day.date.slice(5, 7)) - 1]?.setH;
  return setH === undefined ? undefined : { date: day.date, setH };
}
