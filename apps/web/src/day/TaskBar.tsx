import type { DayTask } from '@eaveline/plan';
import { Thing } from '../drawing/Thing.tsx';
import { clock } from '../words/clock.ts';
import { barWords } from './taskOrder.ts';

export interface TaskBarProps {
  readonly task: DayTask;
  readonly number: number;
  readonly part: DayTask['parts'][number];
  readonly x: number;
  readonly wide: number;
  readonly y: number;
  readonly high: number;
  readonly startH: number;
  readonly critical: boolean;
  readonly selected: boolean;
  readonly onSelect: (id: string) => void;
}

const LETTER = 5.7;

/** A stretch of one task on the clock; a heavy stroke at its end is a hold: nobody passes. */
export function TaskBar({ task, number, part, x, wide, y, high, startH, critical, selected, onSelect }: TaskBarProps) {
  const when = `day ${part.day}, ${clock(startH + part.startH)} to ${clock(startH + part.endH)}`;
  const last = task.parts.at(-1);
  const held = task.hold !== undefined && part === last;
  const words = barWords(number, task.name, Math.floor((wide - (held ? 10 : 6)) / LETTER));
  const width = Math.max(wide, 2);
  return (
    <Thing
      id={`task:${task.id}`}
      label={`${number} ${task.name}, ${task.place}, ${task.who}, ${when}${task.hold === undefined ? '' : `, then hold: ${task.hold}`}`}
      selected={selected}
      onSelect={onSelect}
    >
      <rect
        className={`${critical ? 'pen50' : 'pen25'} ${selected ? 'on-wash' : 'on-film'}`}
        x={x}
        y={y}
        width={width}
        height={high}
      />
      <text className={`close ${selected ? 'bold' : ''}`} x={x + 4} y={y + 17}>
        {words}
      </text>
      {held && <path d={`M${x + wide - 1.5} ${y - 3}v${high + 6}`} stroke="var(--ink)" strokeWidth="4" />}
      <rect className="ring" x={x} y={y} width={width} height={high} />
      <title>{`${task.name}, ${when}`}</title>
    </Thing>
  );
}
