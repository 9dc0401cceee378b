import { clock, MONTHS } from '../words/clock.ts';

/** `09:41` of today, `12 May, 09:41` of this year, `12 May 2024, 09:41` before. */
export function when(at: Date | undefined, now: Date): string {
  if (at === undefined) return 'at first';
  const hour = clock(at.getHours() + at.getMinutes() / 60);
  if (at.toDateString() === now.toDateString()) return hour;
  const day = `${at.getDate()} ${MONTHS[at.getMonth()]}`;
  return at.getFullYear() === now.getFullYear() ? `${day}, ${hour}` : `${day} ${at.getFullYear()}, ${hour}`;
}
