import type { Choices, Facts } from '@eaveline/job';
import type { ArrayPlan } from '../array/types.ts';
import { type Working, worked } from '../working.ts';
import { RATES, type Rate, type TaskKind, WORDS } from './taskTable.ts';
import type { DayTask } from './types.ts';

/** A task before the plan has placed it. */
export type TaskDraft = Omit<DayTask, 'day' | 'startH' | 'endH' | 'parts'> & {
  readonly splittable: boolean;
  readonly allHands: boolean;
};

/** All the day needs to know of a trunk: a longer cable changes nothing here. */
export interface DayTrunk {
  readonly id: string;
  readonly name: string;
  readonly drops: number;
}

export interface TaskInput {
  readonly planes: Facts['roof']['planes'];
  readonly array: ArrayPlan;
  /** Trunks by name with the drops they have. */
  readonly trunks: readonly DayTrunk[];
  readonly units: Choices['units'];
  readonly batteries: number;
  readonly backup: boolean;
  readonly doneBefore: Readonly<Record<string, boolean>>;
}

/** Tasks of the job: what it takes and what waits for what. Counts come from the drawing, rates from the table. */
export function tasksOf(input: TaskInput): readonly TaskDraft[] {
  const planes = planesWithModules(input);
  const trunkIds = input.trunks.map(({ id }) => id);
  const make = (
    kind: TaskKind,
    count: number,
    rate: Rate,
    after: readonly string[],
    part?: { id: string; name: string },
  ) => task(kind, count, rate, after, input.doneBefore, part);

  const roofTasks = planes.flatMap((plane) => planeTasks(plane, input, make));
  const trunkTasks = input.trunks.flatMap((trunk) => {
    const part = { id: trunk.id, name: `trunk ${trunk.name}` };
    const unitTasks = planes.filter((plane) => plane.trunkIds.has(trunk.id)).map((plane) => `units:${plane.id}`);
    return [
      make('trunk', trunk.drops, RATES.drop, unitTasks, part),
      make('homeRun', 1, RATES.homeRun, ['isolate'], part),
      make('deadTrunk', 1, RATES.deadTrunk, [`trunk:${trunk.id}`, `homeRun:${trunk.id}`], part),
    ];
  });
  const modules = planes.map(({ id, name, moduleCount, trunkIds: on }) =>
    make(
      'modules',
      moduleCount,
      RATES.module,
      [...on].map((trunk) => `deadTrunk:${trunk}`),
      { id, name },
    ),
  );

  const roofDone = modules.map(({ id }) => id);
  const boardDone = ['board', ...(input.batteries > 0 ? ['battery'] : []), ...(input.backup ? ['changeover'] : [])];
  return [
    make('talk', 1, RATES.talk, []),
    make('edge', planes.length, RATES.edge, ['talk']),
    make('isolate', 1, RATES.isolate, ['talk']),
    ...roofTasks,
    ...trunkTasks,
    ...modules,
    make('board', 1, RATES.board, ['isolate']),
    ...(input.batteries > 0 ? [make('battery', input.batteries, RATES.battery, ['talk'])] : []),
    ...(input.backup ? [make('changeover', 1, RATES.changeover, ['board'])] : []),
    make('labels', 1, RATES.labels, boardDone),
    make('deadAll', 1, RATES.deadAll, [...roofDone, ...boardDone, ...trunkIds.map((id) => `deadTrunk:${id}`)]),
    make('powerUp', 1, RATES.powerUp, ['deadAll', 'labels']),
    make('liveTests', 1, RATES.liveTests, ['powerUp']),
    ...(input.backup ? [make('backupTest', 1, RATES.backupTest, ['liveTests'])] : []),
    make('network', 1, RATES.network, ['powerUp']),
    make('strip', 1, RATES.strip, roofDone),
    make('handover', 1, RATES.handover, ['liveTests', 'strip', ...(input.backup ? ['backupTest'] : [])]),
  ];
}

interface PlaneWork {
  readonly id: string;
  readonly name: string;
  readonly moduleCount: number;
  readonly unitCount: number;
  readonly feet: number;
  readonly railM: number;
  readonly openCovering: boolean;
  readonly trunkIds: ReadonlySet<string>;
}

function planesWithModules({ planes, array, units }: TaskInput): readonly PlaneWork[] {
  return Object.entries(planes)
    .map(([id, plane]): PlaneWork => {
      const modules = array.modules.filter((module) => module.planeId === id);
      const rails = array.rails.filter((rail) => rail.planeId === id);
      const unitIds = new Set(modules.map(({ unitId }) => unitId));
      return {
        id,
        name: `${plane.name.toLowerCase()} plane`,
        moduleCount: modules.length,
        unitCount: unitIds.size,
        feet: rails.reduce((sum, rail) => sum + rail.feet.length, 0),
        railM: rails.reduce((sum, rail) => sum + rail.lengthMm / 1000, 0),
        openCovering: plane.covering === 'metal-sheet' || plane.covering === 'asphalt-shingle',
        trunkIds: new Set([...unitIds].flatMap((unitId) => units[unitId]?.trunkId ?? [])),
      };
    })
    .filter(({ moduleCount }) => moduleCount > 0);
}

type Make = (
  kind: TaskKind,
  count: number,
  rate: Rate,
  after: readonly string[],
  part?: { id: string; name: string },
) => TaskDraft;

function planeTasks(plane: PlaneWork, _input: TaskInput, make: Make): TaskDraft[] {
  const part = { id: plane.id, name: plane.name };
  return [
    make('setOut', 1, RATES.setOut, ['edge'], part),
    make(
      'feet',
      plane.feet,
      plane.openCovering ? RATES.footOpen : RATES.footTile,
      [`setOut:${plane.id}`, 'isolate'],
      part,
    ),
    make('rails', plane.railM, RATES.rail, [`feet:${plane.id}`], part),
    make('units', plane.unitCount, RATES.unit, [`rails:${plane.id}`], part),
  ].filter((draft) => draft.hours.likely > 0);
}

function task(
  kind: TaskKind,
  count: number,
  rate: Rate,
  after: readonly string[],
  doneBefore: TaskInput['doneBefore'],
  part?: { id: string; name: string },
): TaskDraft {
  const words = WORDS[kind];
  const id = part === undefined ? kind : `${kind}:${part.id}`;
  const name = part === undefined ? words.name : `${words.name}, ${part.name}`;
  return {
    id,
    name,
    place: words.place,
    who: words.who,
    electricians: words.electricians,
    people: words.people,
    splittable: words.splittable,
    allHands: kind === 'talk',
    hours: { low: rate.low * count, likely: rate.likely * count, high: rate.high * count },
    after: [...after],
    ...('hold' in words ? { hold: words.hold } : {}),
    ...('caution' in words ? { caution: words.caution } : {}),
    steps: words.steps,
    doneBefore: doneBefore[id] === true,
    working: hoursWorking(name, count, rate),
  };
}

function hoursWorking(name: string, count: number, rate: Rate): Working {
  return worked(
    name,
    rate.likely * count,
    'h',
    'count × hours of one',
    'common practice, no source; replace it by your own records',
    [
      { name: `count of: ${rate.per}`, value: count, unit: '', source: 'the drawing' },
      { name: 'likely, one', value: rate.likely, unit: 'h', source: 'common practice, no source' },
    ],
    { range: [rate.low * count, rate.high * count], decimals: 1 },
  );
}
