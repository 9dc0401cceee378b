export { type Chance, type ChanceInput, chanceBy, finishChance } from './chance.ts';
export {
  type DayPart,
  type DaysSchedule,
  type PlannedTask,
  type Schedule,
  type ScheduleInput,
  scheduleDays,
  scheduleTasks,
} from './schedule.ts';
export type { Crew, Hours, Task } from './task.ts';
