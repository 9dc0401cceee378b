import type { Provenance } from '@eaveline/job';

/** Hour on the civil clock of the house: `14:32`, with the day where it is not today. */
export function hourAt(at: string, zone: string, now: Date): string {
  const part = (instant: Date, options: Intl.DateTimeFormatOptions) =>
    new Intl.DateTimeFormat('en-GB', { timeZone: zone, ...options }).format(instant);
  const then = new Date(at);
  const hour = part(then, { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' });
  const day = (instant: Date) => part(instant, { day: 'numeric', month: 'short', year: 'numeric' });
  if (day(then) === day(now)) return hour;
  return `${part(then, { day: 'numeric', month: 'short' })}, ${hour}`;
}

/** `14:32, loop tester 3, Nia`. */
export function seenWords({ at, by, with: instrument }: Provenance, zone: string, now: Date): string {
  return [hourAt(at, zone, now), instrument, by].filter((words) => words !== undefined && words !== '').join(', ');
}
