import type { RemarkLog } from '../reading/remarkLog.ts';
import { HOUR_MS } from './calendar.ts';
import { type SunClock, sunClock } from './sunClock.ts';
import { energyCentreH } from './sunShift.ts';
import type { HourRow, WeatherPlace } from './weatherYear.ts';

/** Beyond this the clock or the place is wrong, not the labels, h. */
const CENTRE_LIMIT_H = 1.25;
/** Share of hours where sun and radiation may contradict each other: mountains, fog, snow on the sensor. */
const CONTRADICTION_LIMIT = 0.02;

/** How radiation and sun contradict each other, in numbers of hours. */
interface Contradictions {
  /** Sun above 10° and no radiation at all. */
  readonly litButNone: number;
  /** Sun below −6° and more than 5 W/m². */
  readonly darkButSome: number;
}

/** Counts the hours in which the sun and the radiation cannot both be right. */
export function contradictions(rows: readonly HourRow[], clock: SunClock, shiftH: number): Contradictions {
  let litButNone = 0;
  let darkButSome = 0;
  for (const [i, { ghi }] of rows.entries()) {
    if (ghi === undefined) continue;
    const sinUp = clock.cosZenith(i, shiftH);
    if (sinUp > 0.174 && ghi === 0) litButNone++; // sin 10°
    if (sinUp < -0.105 && ghi > 5) darkButSome++; // sin 6°
  }
  return { litButNone, darkButSome };
}

/** Whether the place and clock of the head can be right at all, given the radiation. */
function fits(rows: readonly HourRow[], clock: SunClock, shiftH: number): boolean {
  const centreH = energyCentreH(rows, clock);
  if (centreH === undefined) return true;
  const { litButNone, darkButSome } = contradictions(rows, clock, shiftH);
  return Math.abs(centreH) <= CENTRE_LIMIT_H && litButNone + darkButSome <= CONTRADICTION_LIMIT * rows.length;
}

/**
 * Says when the sun of the place in the head cannot have made this radiation, and which slip
 * in the head would explain it. Returns true when there is doubt.
 *
 * @param shiftH  Shift already measured, so that an honest half hour is not taken for a wrong place.
 */
export function placeDoubt(
  rows: readonly HourRow[],
  clock: SunClock,
  place: WeatherPlace,
  shiftH: number,
  log: RemarkLog,
): boolean {
  if (fits(rows, clock, shiftH)) return false;
  const slips = likelySlips(rows, place);
  const centreH = energyCentreH(rows, clock) ?? 0;
  const { litButNone, darkButSome } = contradictions(rows, clock, 0);
  const [when, says] = litButNone >= darkButSome ? ['up', 'says night'] : ['down', 'gives radiation'];
  const noon =
    Math.abs(centreH) > CENTRE_LIMIT_H
      ? ` Radiation is centred ${Math.abs(centreH).toFixed(1)} h from solar noon.`
      : '';
  log.add({
    severity: 'warn',
    code: 'place-doubtful',
    line: 1,
    field: 'place',
    found: `At ${placeWords(place)}, UTC${signed(place.utcOffsetH)}, the sun would be ${when} when the file ${says} (${Math.max(litButNone, darkButSome)} hours).${noon}`,
    wanted: 'Radiation should follow the sun.',
    done: 'The place was used as written; sun and unit were not checked further.',
    mend: slips.length > 0 ? `Check the head line. It fits if ${slips.join(', or if ')}.` : 'Check the head line.',
  });
  return true;
}

function likelySlips(rows: readonly HourRow[], place: WeatherPlace): string[] {
  const { latitudeDeg: lat, longitudeDeg: lon, utcOffsetH: offset } = place;
  const candidates: [string, WeatherPlace][] = [
    ['the longitude has lost its sign', { ...place, longitudeDeg: -lon }],
    ['the latitude has lost its sign', { ...place, latitudeDeg: -lat }],
    ['the offset from UTC has lost its sign', { ...place, utcOffsetH: -offset }],
    ['latitude and longitude both have the wrong sign', { ...place, latitudeDeg: -lat, longitudeDeg: -lon }],
  ];
  if (Math.abs(lon) <= 90) {
    candidates.push(['latitude and longitude are exchanged', { ...place, latitudeDeg: lon, longitudeDeg: lat }]);
  }
  return candidates.filter(([, other]) => fitsAt(rows, place, other)).map(([words]) => words);
}

function fitsAt(rows: readonly HourRow[], place: WeatherPlace, other: WeatherPlace): boolean {
  const movedMs = (place.utcOffsetH - other.utcOffsetH) * HOUR_MS;
  const moved = movedMs === 0 ? rows : rows.map((row) => ({ ...row, sunTimeMs: row.sunTimeMs + movedMs }));
  return fits(moved, sunClock(moved, other), 0);
}

function placeWords({ latitudeDeg, longitudeDeg }: WeatherPlace): string {
  const north = `${Math.abs(latitudeDeg)} ${latitudeDeg < 0 ? 'S' : 'N'}`;
  return `${north} ${Math.abs(longitudeDeg)} ${longitudeDeg < 0 ? 'W' : 'E'}`;
}

function signed(value: number): string {
  return value < 0 ? `−${-value}` : `+${value}`;
}
