import type { DayPlan, DayTask } from '@eaveline/plan';
import { useState } from 'react';
import { DayLanes } from './DayLanes.tsx';
import { DayPick } from './DayPick.tsx';
import { type SiteNow, taskAt } from './siteNow.ts';
import { TaskCard } from './TaskCard.tsx';
import type { NumberedTask } from './taskOrder.ts';

export interface DayOnPhoneProps {
  readonly day: DayPlan;
  readonly tasks: readonly NumberedTask<DayTask>[];
  readonly days: number;
  readonly startH: number;
  readonly hoursPerDay: number;
  readonly now: SiteNow | undefined;
  readonly selected: string | undefined;
  readonly onSelect: (id: string) => void;
}

/** One day at a time: its lanes, then the task chosen, or the one the clock says is at work, else the first. */
export function DayOnPhone({ day, tasks, days, startH, hoursPerDay, now, selected, onSelect }: DayOnPhoneProps) {
  const [looked, setLooked] = useState<number>();
  const working = now && taskAt(day.tasks, now);
  const chosen = tasks.find(({ task }) => selected === `task:${task.id}`);
  const first = tasks.find(({ task }) => !task.doneBefore) ?? tasks[0];
  const of = chosen ?? tasks.find(({ task }) => task === working) ?? first;
  const on = looked ?? of?.task.day ?? now?.day ?? 1;
  const look = (to: number) => {
    setLooked(to);
    const begins = tasks.find(({ task }) => task.day === to);
    if (begins !== undefined) onSelect(`task:${begins.task.id}`);
  };
  const select = (id: string) => {
    setLooked(undefined);
    onSelect(id);
  };
  const shared = { day, tasks, startH, hoursPerDay, now };
  return (
    <>
      {days > 1 && <DayPick days={days} on={on} onPick={look} />}
      <DayLanes {...shared} shown={[on]} selected={of && `task:${of.task.id}`} onSelect={select} />
      {of && (
        <TaskCard
          of={of}
          next={tasks[tasks.indexOf(of) + 1]}
          startH={startH}
          now={of.task === working}
          onSelect={select}
        />
      )}
    </>
  );
}
