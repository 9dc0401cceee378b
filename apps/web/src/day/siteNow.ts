import { civilTimeAt, type DayTask } from '@eaveline/plan';

/** Where an instant falls in the days of a job: which day, and hours from its start. */
export interface SiteNow {
  readonly day: number;
  readonly atH: number;
}

/**
 * Which day of the job it is at the place, and how far into it; undefined without a date, before and after the job.
 * Days follow one another without a gap, as the plan counts them.
 */
export function siteNow(
  job: { readonly date: string | undefined; readonly startH: number; readonly days: number; readonly zone: string },
  instant: Date,
): SiteNow | undefined {
  if (job.date === undefined) return undefined;
  const civil = civilTimeAt(job.zone, instant.getTime());
  const midnightMs = Date.UTC(civil.year, civil.month - 1, civil.day);
  const day = Math.round((midnightMs - Date.parse(job.date)) / 86_400_000) + 1;
  return day < 1 || day > job.days ? undefined : { day, atH: civil.hour + civil.minute / 60 - job.startH };
}

/** The task at work at a moment; of several at once the one begun last. */
export function taskAt<T extends Pick<DayTask, 'parts'>>(tasks: readonly T[], { day, atH }: SiteNow): T | undefined {
  const begun = (task: T) => task.parts.find((part) => part.day === day && part.startH <= atH && atH < part.endH);
  return tasks
    .filter((task) => begun(task) !== undefined)
    .sort((a, b) => (begun(b)?.startH ?? 0) - (begun(a)?.startH ?? 0))[0];
}
