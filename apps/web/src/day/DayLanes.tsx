import type { DayPlan, DayTask } from '@eaveline/plan';
import { useWidth } from '../drawing/useWidth.ts';
import { LaneClock } from './LaneClock.tsx';
import { laneRows } from './laneRows.ts';
import type { SiteNow } from './siteNow.ts';
import { TaskBar } from './TaskBar.tsx';
import type { NumberedTask } from './taskOrder.ts';

export interface DayLanesProps {
  readonly day: DayPlan;
  readonly tasks: readonly NumberedTask<DayTask>[];
  /** Which days are drawn, one under another. */
  readonly shown: readonly number[];
  readonly startH: number;
  readonly hoursPerDay: number;
  readonly now: SiteNow | undefined;
  readonly selected: string | undefined;
  readonly onSelect: (id: string) => void;
}

const LEFT = 58;
const BAR = 26;
const HEAD = 22;
const FOOT = 28;
const DUSK_WITHIN_H = 3;
const LANES: readonly DayTask['place'][] = ['roof', 'board', 'battery', 'ground', 'all'];

/** Each day on its own clock: tasks in lanes by where they are done, hold points as heavy strokes, dusk as night. */
export function DayLanes({ day, tasks, shown, startH, hoursPerDay, now, selected, onSelect }: DayLanesProps) {
  const { ref, width } = useWidth<HTMLDivElement>();
  const numbers = new Map(tasks.map(({ number, task }) => [task.id, number]));
  const lastH = Math.max(hoursPerDay, ...day.tasks.flatMap(({ parts }) => parts.map(({ endH }) => endH)));
  // dusk long after the work is done says nothing about the day, and would only squeeze it
  const duskH = day.dusk !== undefined && day.dusk.setH < startH + lastH + DUSK_WITHIN_H ? day.dusk.setH : 0;
  const to = Math.ceil(Math.max(startH + lastH, duskH) + 0.25);
  const from = Math.floor(startH);
  const x = (hour: number) => LEFT + ((hour - from) / (to - from)) * (width - LEFT - 14);
  const lanesOn = (on: number) =>
    LANES.map((place) => {
      const here = day.tasks.filter((task) => task.place === place && task.parts.some((part) => part.day === on));
      return { place, rows: laneRows(here) };
    }).filter(({ rows }) => rows.length > 0);
  const laneHigh = (rows: number) => rows * (BAR + 4) + 8;
  let foot = 0;
  const drawn = shown.map((on) => {
    const lanes = lanesOn(on);
    const top = foot + HEAD;
    const bottom = top + lanes.reduce((sum, { rows }) => sum + laneHigh(rows.length), 0);
    foot = bottom + FOOT;
    return { on, lanes, top, bottom };
  });
  return (
    <div ref={ref}>
      {/* biome-ignore lint/a11y/useSemanticElements: a drawing is a group of the things in it, and no fieldset can be drawn on */}
      <svg
        width={width}
        height={foot}
        viewBox={`0 0 ${width} ${foot}`}
        role="group"
        aria-label="The work in lanes by place, along the clock"
      >
        {drawn.map(({ on, lanes, top, bottom }) => (
          <g key={on}>
            <LaneClock
              day={day}
              on={on}
              left={LEFT}
              startH={startH}
              hours={{ from, to }}
              x={x}
              top={top}
              bottom={bottom}
              now={now}
            />
            {lanes.map(({ place, rows }, i) => {
              const laneTop = top + lanes.slice(0, i).reduce((sum, lane) => sum + laneHigh(lane.rows.length), 0);
              return (
                <g key={place}>
                  {i > 0 && <path className="pen18 in-rule" d={`M0 ${laneTop - 4}H${x(to)}`} />}
                  <text className="qt" x="0" y={laneTop + 18}>
                    {place === 'all' ? 'all' : place}
                  </text>
                  {rows.flatMap((row, r) =>
                    row.flatMap((task) =>
                      task.parts
                        .filter((part) => part.day === on)
                        .map((part) => (
                          <TaskBar
                            key={`${task.id}-${part.startH}`}
                            task={task}
                            number={numbers.get(task.id) ?? 0}
                            part={part}
                            x={x(startH + part.startH)}
                            wide={x(startH + part.endH) - x(startH + part.startH)}
                            y={laneTop + r * (BAR + 4)}
                            high={BAR}
                            startH={startH}
                            critical={day.critical.includes(task.id)}
                            selected={selected === `task:${task.id}`}
                            onSelect={onSelect}
                          />
                        )),
                    ),
                  )}
                </g>
              );
            })}
            {now?.day === on && (
              <g>
                <path className="pen70" d={`M${x(startH + now.atH)} ${top - 8}V${bottom}`} />
                <path className="on-ink" d={`M${x(startH + now.atH)} ${top}l-6-12h12Z`} />
              </g>
            )}
          </g>
        ))}
      </svg>
    </div>
  );
}
