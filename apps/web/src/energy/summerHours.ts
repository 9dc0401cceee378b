const HOUR_MS = 3_600_000;

/** How far the civil clock of a zone stands ahead of UTC at an instant, h. */
function aheadH(zone: string, instant: Date): number {
  const parts = new Intl.DateTimeFormat('en-GB', {
    timeZone: zone,
    hourCycle: 'h23',
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    minute: '2-digit',
  }).formatToParts(instant);
  const part = (type: string) => Number(parts.find((each) => each.type === type)?.value);
  const civil = Date.UTC(part('year'), part('month') - 1, part('day'), part('hour'), part('minute'));
  return (civil - Math.floor(instant.getTime() / 60_000) * 60_000) / HOUR_MS;
}

/**
 * Hours the clock of a place stands ahead of its standard time in the middle of each month, twelve of them:
 * 1 in Melbourne in January, 0 in July. Standard time is the least of the year.
 */
export function summerHours(zone: string, year = 2025): number[] {
  const ahead = Array.from({ length: 12 }, (_, m) => aheadH(zone, new Date(Date.UTC(year, m, 15, 12))));
  const standard = Math.min(...ahead);
  return ahead.map((hours) => hours - standard);
}
