import type { RemarkLog } from '../reading/remarkLog.ts';
import type { SunClock } from './sunClock.ts';
import { closureShiftH, envelopeShiftH } from './sunShift.ts';
import type { HourRow } from './weatherYear.ts';

/** Within this the labels mean what they should, h. */
const FINE_H = 0.2;
/** Up to this a shift is a habit of the maker and is mended; beyond it something else may be wrong, h. */
const MENDED_H = 0.75;
/** Two measures of one shift that differ by more than this are not of one shift, h. */
const AGREE_H = 0.3;

/** What the two measures of the shift say together. */
export interface ShiftFound {
  /** Move of the sun that fits the radiation, h; negative is earlier (the radiation is late). */
  readonly shiftH: number;
  /** The direct column follows another clock than the global one and has to be made anew. */
  readonly rebuildDirect: boolean;
}

/**
 * The shift by closure (sharp, needs three independent columns) and by the clear edge of the
 * global column (needs most of a year, good to some minutes). Where they agree, closure counts;
 * where they do not, the global column's own clock counts and the direct column is rebuilt.
 * Undefined when neither can be measured.
 */
export function measureShift(rows: readonly HourRow[], clock: SunClock): ShiftFound | undefined {
  const closureH = closureShiftH(rows, clock);
  const edgeH = envelopeShiftH(rows, clock);
  if (closureH === undefined || edgeH === undefined) {
    const shiftH = closureH ?? edgeH;
    return shiftH === undefined ? undefined : { shiftH, rebuildDirect: false };
  }
  const agree = Math.abs(closureH - edgeH) <= AGREE_H;
  return { shiftH: agree ? closureH : edgeH, rebuildDirect: !agree };
}

/** How the reader uses a measured shift. */
export interface ShiftUse {
  /** Applied to the sun, h. */
  readonly appliedH: number;
  readonly rebuildDirect: boolean;
}

/**
 * Decides what to do with a measured shift and says so.
 *
 * @param anchored  False when the file does not say where in the hour its values stand, so that
 *                  a small shift is no fault but the missing information.
 */
export function useShift(
  found: ShiftFound | undefined,
  chosenH: number | undefined,
  anchored: boolean,
  log: RemarkLog,
): ShiftUse {
  const shiftH = found?.shiftH ?? 0;
  const rounded = Math.round(shiftH * 60) / 60;
  const small = Math.abs(shiftH) <= FINE_H;
  const mend = Math.abs(shiftH) <= MENDED_H && (!small || (!anchored && found !== undefined));
  const appliedH = chosenH ?? (mend ? rounded : 0);
  if (!small) remarkShift(shiftH, appliedH, log);
  if (!small || appliedH !== 0 || !anchored) {
    log.assume({
      key: 'sunShiftH',
      value: appliedH,
      choices: [0, rounded],
      says: `The sun is taken ${hourWords(appliedH)} against the labels of the file.`,
    });
  }
  const rebuildDirect = found?.rebuildDirect ?? false;
  if (rebuildDirect) {
    log.add({
      severity: 'warn',
      code: 'direct-rebuilt',
      field: 'direct normal radiation',
      found: 'Direct and global radiation follow different clocks.',
      wanted: 'Global is diffuse plus direct times the cosine of the zenith distance.',
      done: 'The direct column was made anew from global less diffuse.',
    });
  }
  return { appliedH, rebuildDirect };
}

function remarkShift(shiftH: number, appliedH: number, log: RemarkLog): void {
  const side = shiftH < 0 ? 'behind' : 'ahead of';
  const minutes = Math.round(Math.abs(shiftH) * 60);
  const long = minutes >= 40 && minutes <= 75 ? `about an hour (${minutes} minutes)` : `${minutes} minutes`;
  const words = minutes >= 25 && minutes <= 35 ? 'half an hour' : long;
  const large = Math.abs(shiftH) > MENDED_H;
  log.add({
    severity: large ? 'warn' : 'note',
    code: 'sun-shift',
    found: `Radiation in this file runs ${words} ${side} the sun.`,
    wanted: 'An hour’s label is the end of that hour.',
    done:
      appliedH === 0
        ? 'It was left as it is.'
        : `The sun is taken ${hourWords(appliedH)}; the annual sum does not change.`,
    ...(large && { mend: 'Check the offset from UTC and the numbering of hours, or accept the shift.' }),
  });
}

function hourWords(shiftH: number): string {
  if (shiftH === 0) return 'as it stands';
  return `${Math.round(Math.abs(shiftH) * 60)} minutes ${shiftH < 0 ? 'earlier' : 'later'}`;
}
