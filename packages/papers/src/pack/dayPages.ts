import type { DayPlan, DayTask } from '@eaveline/plan';
import { box, disc, group, type Item, line, type Point, text } from '../drawing/index.ts';
import { gap, headline, type Part, paragraph, picture, type Sheet, table } from '../page/index.ts';
import { metrics } from '../type/index.ts';
import { capital, civilDay, clock, counted, figure, perCent, withUnit } from './figures.ts';
import type { Pack } from './packContext.ts';
import { headed, pagesOf } from './pagesOf.ts';

const CLOSE = { capMm: 2.1, weight: 400, face: 'close' } as const;
const PLACES: readonly DayTask['place'][] = ['all', 'roof', 'ground', 'board', 'battery'];
/** Left of the lanes, and one bar's height with the space above it. */
const LANE_LEFT = 17;
const BAR = 5;
const PITCH = 6.2;

/** How the days run: lanes by place with their hold points, the tasks with their hours, the chance, what would save. */
export function dayPages(pack: Pack): Sheet[] {
  const { day } = pack.plan;
  if (day.refusal !== undefined) return pagesOf(pack, { no: '10', title: 'Day plan' }, [headline(day.refusal)]);
  const numbers = new Map(day.tasks.map((task, k) => [task.id, k + 1]));
  const days = Array.from({ length: day.likelyDays }, (_, k) => k + 1);
  return pagesOf(pack, { no: '10', title: 'Day plan' }, [
    headline(daySentence(day), crewLine(pack)),
    gap(3),
    ...days.flatMap((one) => [dayPart(pack, one, numbers), gap(2)]),
    paragraph(
      'A point at its end marks a task with a hold point: nobody goes past it unsigned. Heavy frame: the longest chain.',
      {
        capMm: 2.1,
        ink: 'quiet',
      },
    ),
    gap(3),
    headed('How sure', chanceTable(day)),
    paragraph(
      `${counted(day.trials, 'trial')} with hours drawn between low and high. The interval holds the true chance 19 times in 20.`,
      {
        capMm: 2.1,
        ink: 'quiet',
      },
    ),
    gap(3),
    ...aheadParts(day),
    headed('Tasks, with their hours', taskTable(pack, numbers)),
  ]);
}

function daySentence(day: DayPlan): string {
  const own = day.chanceByDays.find((one) => one.days === day.days);
  const chance = own === undefined ? '' : `, chance ${perCent(own.chance)}`;
  return `${counted(day.days, 'day')}${chance}. By likely hours it fills ${figure(day.likelyDays, 0)}.`;
}

function crewLine({ job, plan }: Pack): string {
  const { crew, hours, boundHours, outage, dusk } = plan.day;
  const { date, startsAt } = job.choices.day;
  return [
    `${date === undefined ? 'Date open' : civilDay(date)}, from ${startsAt}.`,
    `Crew ${counted(crew.people, 'person', 'people')}, ${counted(crew.electricians, 'electrician')}: ${crew.names.join(', ')}.`,
    `${withUnit(hours, 'h', 1)} of working day; no order is shorter than ${withUnit(boundHours, 'h', 1)}.`,
    ...(outage === undefined
      ? []
      : [
          `House without supply on day ${outage.day}, ${atClock(job.choices.day.startsAt, outage.fromH)} to ${atClock(startsAt, outage.toH)}.`,
        ]),
    ...(dusk === undefined ? [] : [`Dusk at ${clock(dusk.setH)}.`]),
  ].join(' ');
}

/** Hours after the start of the day on the wall clock. */
function atClock(startsAt: string, hours: number): string {
  const [h = 0, m = 0] = startsAt.split(':').map(Number);
  return clock(h + m / 60 + hours);
}

interface Bar {
  readonly task: DayTask;
  readonly startH: number;
  readonly endH: number;
  readonly last: boolean;
  readonly lane: number;
}

/** Bars of one day in lanes by place; what runs at the same time in one place gets lanes below each other. */
function barsOf(day: DayPlan, dayNo: number) {
  const bars: Bar[] = [];
  const lanes: { readonly place: DayTask['place']; readonly from: number; readonly count: number }[] = [];
  let next = 0;
  for (const place of PLACES) {
    const parts = day.tasks
      .filter((task) => task.place === place)
      .flatMap((task) =>
        task.parts
          .filter((part) => part.day === dayNo)
          .map((part) => ({ task, ...part, last: part === task.parts.at(-1) })),
      )
      .sort((a, b) => a.startH - b.startH);
    if (parts.length === 0) continue;
    const ends: number[] = [];
    for (const part of parts) {
      const free = ends.findIndex((end) => end <= part.startH + 1e-6);
      const lane = free < 0 ? ends.length : free;
      ends[lane] = part.endH;
      bars.push({ task: part.task, startH: part.startH, endH: part.endH, last: part.last, lane: next + lane });
    }
    lanes.push({ place, from: next, count: ends.length });
    next += ends.length;
  }
  return { bars, lanes, count: next };
}

function dayPart(pack: Pack, dayNo: number, numbers: ReadonlyMap<string, number>): Part {
  const { plan, job } = pack;
  const { bars, lanes, count } = barsOf(plan.day, dayNo);
  const last = Math.max(job.choices.day.hoursPerDay, ...bars.map((bar) => bar.endH));
  const heightMm = 8 + count * PITCH + 6;
  return picture(heightMm, ([x, y], widthMm): Item[] => {
    const left = x + LANE_LEFT;
    const perHour = (widthMm - LANE_LEFT - 3) / last;
    const top = y + heightMm - 7;
    const foot = top - count * PITCH;
    const hours = Array.from({ length: Math.floor(last + 1e-9) + 1 }, (_, k) => k);
    const critical = new Set(plan.day.critical);
    const items: Item[] = [
      text(`day ${dayNo}`, [x, top + 2], { capMm: 3, weight: 700 }),
      line([left, foot], [left + last * perHour, foot], { layer: 'SIZE', pen: 0.5 }),
      ...hours.flatMap((h) => [
        line([left + h * perHour, foot], [left + h * perHour, foot - 1.2], { layer: 'SIZE', pen: 0.25 }),
        text(atClock(job.choices.day.startsAt, h), [left + h * perHour, foot - 4.2], { ...CLOSE, anchor: 'middle' }),
      ]),
      ...lanes.flatMap((lane, k) => [
        text(
          lane.place === 'all' ? 'everybody' : lane.place,
          [x, top - (lane.from + lane.count / 2) * PITCH - 1],
          CLOSE,
        ),
        ...(k === 0
          ? []
          : [
              line([x, top - lane.from * PITCH + 0.3], [left + last * perHour, top - lane.from * PITCH + 0.3], {
                layer: 'SIZE',
                pen: 0.18,
                ink: 'rule',
              }),
            ]),
      ]),
      ...bars.flatMap((bar) => barItems(bar, [left, top], perHour, critical, numbers)),
    ];
    return [group(`day ${dayNo}`, items, { role: 'figure', label: `Day ${dayNo}: ${counted(bars.length, 'task')}` })];
  });
}

function barItems(
  { task, startH, endH, last, lane }: Bar,
  [left, top]: Point,
  perHour: number,
  critical: ReadonlySet<string>,
  numbers: ReadonlyMap<string, number>,
): Item[] {
  const [from, to] = [left + startH * perHour, left + endH * perHour];
  const y = top - (lane + 1) * PITCH + 0.9;
  const number = String(numbers.get(task.id) ?? '');
  const room = to - from - 1;
  const words = [`${number}  ${task.name}`, `${number}  ${shortName(task.name)}`, number].find(
    (one) => metrics.widthMm(one, CLOSE) <= room,
  );
  const pen = critical.has(task.id) ? 0.7 : 0.25;
  return [
    box([from, y], to - from, BAR - 0.6, {
      layer: 'ROOF-IN',
      pen,
      of: task.id,
      label: `${task.name}, ${task.hold ?? 'no hold point'}`,
    }),
    ...(words === undefined ? [] : [text(words, [from + 0.8, y + 1.2], CLOSE)]),
    ...(last && task.hold !== undefined ? [disc([to, y + BAR - 0.6], 0.8)] : []),
  ];
}

function shortName(name: string): string {
  return name.split(',')[0] ?? name;
}

function chanceTable(day: DayPlan): Part {
  return table({
    label: 'chance by days',
    columns: [
      { head: 'days', share: 1, align: 'end', weight: 700 },
      { head: 'chance to be done', share: 2, align: 'end' },
      { head: 'interval', share: 3, align: 'end' },
      { head: '', share: 5 },
    ],
    rows: day.chanceByDays.map((one) => ({
      cells: [
        figure(one.days, 0),
        perCent(one.chance),
        `${perCent(one.interval[0])} to ${perCent(one.interval[1])}`,
        one.days === day.days ? `   promised here: the fewest with at least ${perCent(day.wantedChance)}` : '',
      ],
    })),
  });
}

/** What done the day before would save, from the most hours down. */
function aheadParts(day: DayPlan): Part[] {
  if (day.ahead.length === 0) return [];
  const lines = day.ahead.map(
    (one) =>
      `${one.words}: saves ${withUnit(one.savesHours, 'h', 1)}; done in ${counted(day.days - 1, 'day')} with chance ${perCent(one.chanceOneDayLess)}.`,
  );
  return [headed('Done the day before', stackedLines(lines)), gap(3)];
}

function stackedLines(lines: readonly string[]): Part {
  return (at, widthMm, roomMm) => paragraph(lines.map(capital).join('\n'))(at, widthMm, roomMm);
}

function taskTable({ plan, job }: Pack, numbers: ReadonlyMap<string, number>): Part {
  return table({
    label: 'tasks',
    columns: [
      { head: '', share: 0.8, align: 'end' },
      { head: 'task', share: 3.6, weight: 700 },
      { head: 'who', share: 2.6, face: 'close' },
      { head: 'low', share: 0.95, align: 'end', face: 'close' },
      { head: 'likely', share: 1.15, align: 'end', face: 'close' },
      { head: 'high', share: 1, align: 'end', face: 'close' },
      { head: 'day', share: 0.9, align: 'end', face: 'close' },
      { head: 'from', share: 1.35, align: 'end', face: 'close' },
      { head: 'after', share: 1.4, face: 'close' },
      { head: 'hold point', share: 2.9, face: 'close' },
      { head: 'done', share: 1.2, face: 'close' },
    ],
    rows: plan.day.tasks.map((task) => ({
      of: task.id,
      cells: [
        String(numbers.get(task.id) ?? ''),
        task.name,
        task.who,
        ...[task.hours.low, task.hours.likely, task.hours.high].map((hours) => figure(hours, 1)),
        task.doneBefore ? 'before' : String(task.day ?? ''),
        task.doneBefore || task.startH === undefined ? '' : atClock(job.choices.day.startsAt, task.startH),
        { words: task.after.map((id) => numbers.get(id) ?? '').join(' '), ink: 'quiet' },
        task.hold ?? '',
        { boxes: 1 },
      ],
    })),
  });
}
