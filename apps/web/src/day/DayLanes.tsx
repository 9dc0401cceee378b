import type { DayPlan, DayTask } from '@eaveline/plan';
import { Drawing } from '../drawing/Drawing.tsx';
import { Thing } from '../drawing/Thing.tsx';
import { useWidth } from '../drawing/useWidth.ts';
import { clock } from '../words/clock.ts';
import { laneRows } from './laneRows.ts';

export interface DayLanesProps {
  readonly day: DayPlan;
  readonly startH: number;
  readonly hoursPerDay: number;
  readonly selected: string | undefined;
  readonly onSelect: (id: string) => void;
}

const LEFT = 58;
const BAR = 26;
const LANES: readonly DayTask['place'][] = ['roof', 'board', 'battery', 'ground', 'all'];

/** Each day on its own clock: tasks in lanes by where they are done, hold points as double strokes, dusk as night. */
export function DayLanes({ day, startH, hoursPerDay, selected, onSelect }: DayLanesProps) {
  const { ref, width } = useWidth<HTMLDivElement>();
  const days = Math.max(1, ...day.tasks.flatMap(({ parts }) => parts.map((part) => part.day)));
  const lastH = Math.max(hoursPerDay, ...day.tasks.flatMap(({ parts }) => parts.map(({ endH }) => endH)));
  const to = Math.ceil(Math.max(startH + lastH, day.dusk?.setH ?? 0) + 0.25);
  const from = Math.floor(startH);
  const x = (hour: number) => LEFT + ((hour - from) / (to - from)) * (width - LEFT - 14);
  const lanesOn = (on: number) =>
    LANES.map((place) => {
      const tasks = day.tasks.filter((task) => task.place === place && task.parts.some((part) => part.day === on));
      return { place, rows: laneRows(tasks) };
    }).filter(({ rows }) => rows.length > 0);
  const dayList = Array.from({ length: days }, (_, d) => lanesOn(d + 1));
  const laneHigh = (rows: number) => rows * (BAR + 4) + 8;
  const highs = dayList.map((lanes) => lanes.reduce((sum, { rows }) => sum + laneHigh(rows.length), 0) + 48);
  const height = highs.reduce((sum, high) => sum + high, 0);
  const every = to - from > 9 && width < 500 ? 3 : 1;
  return (
    <div ref={ref}>
      <Drawing width={width} height={height} label={`${days} days of work as lanes`}>
        {dayList.map((lanes, d) => {
          const dayHigh = highs[d] ?? 0;
          const top = highs.slice(0, d).reduce((sum, high) => sum + high, 0) + 18;
          let y = top;
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: days keep their order
            <g key={d}>
              <text className="bold" x="0" y={top - 5}>
                Day {d + 1}
              </text>
              {day.dusk && day.dusk.setH < to && (
                <rect
                  className="on-deep"
                  x={x(day.dusk.setH)}
                  y={top}
                  width={x(to) - x(day.dusk.setH)}
                  height={dayHigh - 48}
                />
              )}
              {day.outage && day.outage.day === d + 1 && (
                <>
                  <rect
                    className="on-tint"
                    x={x(startH + day.outage.fromH)}
                    y={top}
                    width={x(startH + day.outage.toH) - x(startH + day.outage.fromH)}
                    height={dayHigh - 48}
                  />
                  <text className="qt close" x={x(startH + day.outage.fromH) + 3} y={top - 5}>
                    house without power
                  </text>
                </>
              )}
              {lanes.map(({ place, rows }) => {
                const laneTop = y;
                y += laneHigh(rows.length);
                return (
                  <g key={place}>
                    <path className="pen18 in-rule" d={`M0 ${y - 4}H${x(to)}`} />
                    <text className="qt" x="0" y={laneTop + 18}>
                      {place === 'all' ? 'together' : place}
                    </text>
                    {rows.flatMap((row, r) =>
                      row.flatMap((task) =>
                        task.parts
                          .filter((part) => part.day === d + 1)
                          .map((part) => (
                            <TaskBar
                              key={`${task.id}-${part.startH}`}
                              task={task}
                              x={x(startH + part.startH)}
                              wide={x(startH + part.endH) - x(startH + part.startH)}
                              y={laneTop + r * (BAR + 4)}
                              when={`day ${d + 1}, ${clock(startH + part.startH)} to ${clock(startH + part.endH)}`}
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
              <path className="pen50" d={`M${LEFT} ${y}H${x(to)}`} />
              {Array.from({ length: to - from + 1 }, (_, i) => from + i).map((hour) => (
                <g key={hour}>
                  <path className="pen25" d={`M${x(hour)} ${y}v5`} />
                  {(hour - from) % every === 0 && (
                    <text x={x(hour)} y={y + 18} textAnchor="middle">
                      {hour}
                    </text>
                  )}
                </g>
              ))}
            </g>
          );
        })}
      </Drawing>
    </div>
  );
}

interface TaskBarProps {
  readonly task: DayTask;
  readonly x: number;
  readonly wide: number;
  readonly y: number;
  readonly when: string;
  readonly critical: boolean;
  readonly selected: boolean;
  readonly onSelect: (id: string) => void;
}

function TaskBar({ task, x, wide, y, when, critical, selected, onSelect }: TaskBarProps) {
  const room = Math.floor((wide - 8) / 6);
  const name = task.name.length <= room ? task.name : room > 6 ? `${task.name.slice(0, room - 1)}…` : '';
  return (
    <Thing
      id={`task:${task.id}`}
      label={`${task.name}, ${task.place}, ${task.who}, ${when}${task.hold === undefined ? '' : `, then hold: ${task.hold}`}`}
      selected={selected}
      onSelect={onSelect}
    >
      <rect
        className={`${critical ? 'pen50' : 'pen25'} ${selected ? 'on-wash' : 'on-film'}`}
        x={x}
        y={y}
        width={Math.max(wide, 2)}
        height={BAR}
      />
      <text className={`close ${selected ? 'bold' : ''}`} x={x + 5} y={y + 17}>
        {name}
      </text>
      {task.hold !== undefined && (
        <path d={`M${x + wide - 1.5} ${y - 3}v${BAR + 6}`} stroke="var(--ink)" strokeWidth="4" />
      )}
      <rect className="ring" x={x} y={y} width={Math.max(wide, 2)} height={BAR} />
      <title>{`${task.name}, ${when}`}</title>
    </Thing>
  );
}
