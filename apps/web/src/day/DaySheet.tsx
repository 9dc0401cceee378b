import { FindingsHere } from '../checks/FindingsHere.tsx';
import type { SheetProps } from '../desk/sheetView.ts';
import { NumberField } from '../parts/NumberField.tsx';
import { Part } from '../parts/Part.tsx';
import { useNarrow } from '../parts/useNarrow.ts';
import fields from '../trunks/TrunkFields.module.css';
import { counted } from '../words/count.ts';
import { figure } from '../words/figure.ts';
import { AheadList } from './AheadList.tsx';
import { ChanceRule } from './ChanceRule.tsx';
import { CrewList } from './CrewList.tsx';
import { DayLanes } from './DayLanes.tsx';
import { DayOnPhone } from './DayOnPhone.tsx';
import { hoursOf } from './hoursOf.ts';
import { TaskList } from './TaskList.tsx';
import { taskOrder } from './taskOrder.ts';
import { useSiteNow } from './useSiteNow.ts';

/** Sheet 10: the days as lanes, the tasks with their holds, the chance, and what done before would save. */
export function DaySheet({ plan, job, selected, onSelect }: SheetProps) {
  const narrow = useNarrow();
  const { day, site } = plan;
  const { startsAt, hoursPerDay, date } = job.choices.day;
  const startH = hoursOf(startsAt);
  const days = Math.max(1, ...day.tasks.flatMap(({ parts }) => parts.map((part) => part.day)));
  const now = useSiteNow({ date, startH, days, zone: site.zone });
  const tasks = taskOrder(day.tasks);
  // on a phone the task chosen stands above the list
  const selectAbove = (id: string) => {
    onSelect(id);
    document.getElementById('sheet')?.scrollTo({ top: 0 });
  };
  const drawing = { day, tasks, startH, hoursPerDay, now, selected, onSelect };
  return (
    <>
      {tasks.length > 0 && narrow && <DayOnPhone {...drawing} days={days} />}
      {tasks.length > 0 && !narrow && <DayLanes {...drawing} shown={Array.from({ length: days }, (_, i) => i + 1)} />}
      {day.likelyDays < day.days && (
        <p className="quiet small">
          Drawn by likely hours, which fill {counted(day.likelyDays, 'day')}. Work that runs late is why{' '}
          {counted(day.days, 'day')} {day.days === 1 ? 'is' : 'are'} promised.
        </p>
      )}
      {day.chanceByDays.length > 0 && (
        <Part title="Chance that it is done" aside={`${day.trials} tries of the same tasks`}>
          <ChanceRule day={day} />
        </Part>
      )}
      {day.ahead.length > 0 && day.days > 1 && (
        <Part title="What done before would save" ruled>
          <AheadList day={day} />
        </Part>
      )}
      <TaskList
        tasks={tasks}
        startH={startH}
        selected={narrow ? undefined : selected}
        onSelect={narrow ? selectAbove : onSelect}
      />
      <Part
        title="Crew and hours"
        ruled
        aside={`${figure(day.hours, 1)} h; no order is shorter than ${figure(day.boundHours, 1)} h`}
      >
        <CrewList crew={job.choices.crew} />
        <div className={fields.fields}>
          <NumberField label="Hours a day" path={['choices', 'day', 'hoursPerDay']} unit="h" />
        </div>
      </Part>
      <FindingsHere findings={plan.checks.findings} sheet="10" selected={selected} onSelect={onSelect} />
    </>
  );
}
