import { Refusal } from '@eaveline/physics';

const formats = new Map<string, Intl.DateTimeFormat>();

/** A clock of one zone, made once: making one costs far more than reading it. */
function clockOf(zone: string): Intl.DateTimeFormat {
  const known = formats.get(zone);
  if (known) return known;
  try {
    const made = new Intl.DateTimeFormat('en-GB', {
      timeZone: zone,
      hourCycle: 'h23',
      year: 'numeric',
      month: '2-digit',
      day: '2-digit',
      hour: '2-digit',
      minute: '2-digit',
      second: '2-digit',
    });
    formats.set(zone, made);
    return made;
  } catch {
    throw new Refusal({
      code: 'unknown-name',
      at: 'facts.site.zone',
      got: zone,
      want: 'an IANA name such as Europe/London',
      mend: 'Give the area and the city.',
    });
  }
}

/** What the civil clock of a zone shows; months from one. */
export interface CivilTime {
  readonly year: number;
  readonly month: number;
  readonly day: number;
  readonly hour: number;
  readonly minute: number;
  readonly second: number;
}

/**
 * What the civil clock of a zone shows at an instant: 15 January 2025, 11:00 in Melbourne at midnight UTC.
 *
 * @throws {Refusal} `unknown-name` for a zone nobody knows.
 */
export function civilTimeAt(zone: string, timeMs: number): CivilTime {
  const part: Partial<Record<Intl.DateTimeFormatPartTypes, number>> = {};
  for (const { type, value } of clockOf(zone).formatToParts(timeMs)) part[type] = Number(value);
  const { year = 0, month = 1, day = 1, hour = 0, minute = 0, second = 0 } = part;
  return { year, month, day, hour, minute, second };
}

/**
 * How far the civil clock of a zone stands ahead of UTC at an instant, h: 11 in Melbourne in January.
 *
 * @throws {Refusal} `unknown-name` for a zone nobody knows.
 */
export function zoneOffsetH(zone: string, timeMs: number): number {
  const { year, month, day, hour, minute, second } = civilTimeAt(zone, timeMs);
  const civilMs = Date.UTC(year, month - 1, day, hour, minute, second);
  // the clock shows whole seconds
  return (civilMs - Math.floor(timeMs / 1000) * 1000) / 3_600_000;
}

/** Offset of the zone's standard time, h: the smaller of January and July, for summer time only ever adds. */
export function standardOffsetH(zone: string, year: number): number {
  return Math.min(zoneOffsetH(zone, Date.UTC(year, 0, 15)), zoneOffsetH(zone, Date.UTC(year, 6, 15)));
}
