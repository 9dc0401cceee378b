import { zoneOffsetH } from '@eaveline/plan';

/**
 * Hours the clock of a place stands ahead of its standard time in the middle of each month, twelve of them:
 * 1 in Melbourne in January, 0 in July. Standard time is the least of the year.
 */
export function summerHours(zone: string, year = 2025): number[] {
  const ahead = Array.from({ length: 12 }, (_, m) => zoneOffsetH(zone, Date.UTC(year, m, 15, 12)));
  const standard = Math.min(...ahead);
  return ahead.map((hours) => hours - standard);
}
