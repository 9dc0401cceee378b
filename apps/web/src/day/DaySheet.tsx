import type { SheetProps } from '../desk/sheetView.ts';
import { NumberField } from '../parts/NumberField.tsx';
import { Part } from '../parts/Part.tsx';
import { TickField } from '../parts/TickField.tsx';
import fields from '../trunks/TrunkFields.module.css';
import { AheadList } from './AheadList.tsx';
import { ChanceRule } from './ChanceRule.tsx';
import { CrewList } from './CrewList.tsx';
import { DayLanes } from './DayLanes.tsx';
import { TaskList } from './TaskList.tsx';

/** Sheet 10: the day as lanes, its hold points, its chance, and what done before would save. */
export function DaySheet({ plan, job, selected, onSelect }: SheetProps) {
  const { day } = plan;
  const startH = startOf(job.choices.day.startsAt);
  return (
    <>
      {day.tasks.length > 0 && (
        <DayLanes
          day={day}
          startH={startH}
          hoursPerDay={job.choices.day.hoursPerDay}
          selected={selected}
          onSelect={onSelect}
        />
      )}
      {day.chanceByDays.length > 0 && (
        <Part title="Chance that it is done" aside={`${day.trials} tries of the same tasks`}>
          <ChanceRule chances={day.chanceByDays} days={day.days} />
        </Part>
      )}
      {day.ahead.length > 0 && (
        <Part title="Done the day before" ruled>
          <AheadList ahead={day.ahead} days={day.days} />
        </Part>
      )}
      <Part title="Tasks and hold points" count={day.tasks.length} ruled>
        <TaskList day={day} startH={startH} selected={selected} onSelect={onSelect} />
      </Part>
      <Part title="Crew and hours">
        <CrewList crew={job.choices.crew} />
        <div className={fields.fields}>
          <NumberField label="Hours a day" path={['choices', 'day', 'hoursPerDay']} unit="h" />
        </div>
        <div className={fields.fields}>
          {day.tasks.map(({ id, name }) => (
            <TickField
              key={id}
              label={`Before the first day: ${name}`}
              path={['choices', 'day', 'doneBefore', id]}
              off={undefined}
            />
          ))}
        </div>
      </Part>
    </>
  );
}

/** `07:30` as hours. */
function startOf(startsAt: string): number {
  const [h = 0, m = 0] = startsAt.split(':').map(Number);
  return h + m / 60;
}
