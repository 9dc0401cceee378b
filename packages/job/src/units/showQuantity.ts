import { gaugeOfArea, gaugeWords } from './gauge.ts';
import { kindOf, unitOf } from './kinds.ts';

/** How a region is used to see quantities. */
export type Habit = 'metric' | 'us';

const THIN = '\u202f';
const INCH_M = 0.0254;
/** A length is shown in feet only where it is a sixteenth of an inch to this: then the tape it came from was in feet. */
const SAME_M = 0.00005;

/**
 * A quantity as text that `readQuantity` reads back as the same value: true minus, thin space in thousands.
 *
 * By the American habit a length that is a whole sixteenth of an inch is shown as feet and inches, and an area that is
 * a gauge as that gauge; what is neither stays metric, because the nearest fraction would not be what was measured.
 *
 * @param value   in the unit it is kept in.
 * @param keptIn  symbol of that unit.
 */
export function showQuantity(value: number, keptIn: string, habit: Habit = 'metric'): string {
  const own = habit === 'us' ? american(value, keptIn) : undefined;
  if (own !== undefined) return own;
  const digits = plainFigures(value);
  if (keptIn === '') return digits;
  return keptIn === '°' ? `${digits}°` : `${digits}\u00a0${keptIn}`;
}

/** A number with all the figures it has, up to twelve: `−16 800.5`. */
export function plainFigures(value: number): string {
  const text = String(Number(Math.abs(value).toPrecision(12)));
  const [whole = '0', rest] = text.split('.');
  const grouped = /^\d{4,}$/.test(whole) ? whole.replace(/\B(?=(\d{3})+$)/g, THIN) : whole;
  return `${value < 0 ? '\u2212' : ''}${grouped}${rest === undefined ? '' : `.${rest}`}`;
}

function american(value: number, keptIn: string): string | undefined {
  const kind = kindOf(keptIn);
  if (kind.name === 'a length') return feetAndInches(value * unitOf(kind, keptIn).per);
  if (keptIn !== 'mm²') return undefined;
  const n = gaugeOfArea(value);
  return n === undefined ? undefined : gaugeWords(n);
}

/** `6′ 4 1/2″`; undefined where it is no whole sixteenth. */
function feetAndInches(lengthM: number): string | undefined {
  const sixteenths = Math.round((Math.abs(lengthM) / INCH_M) * 16);
  if (sixteenths === 0 || Math.abs((sixteenths / 16) * INCH_M - Math.abs(lengthM)) > SAME_M) return undefined;
  const feet = Math.floor(sixteenths / 192);
  const inches = Math.floor((sixteenths % 192) / 16);
  const part = sixteenths % 16;
  const by = part % 8 === 0 ? 8 : part % 4 === 0 ? 4 : part % 2 === 0 ? 2 : 1;
  const fraction = part === 0 ? '' : `${part / by}/${16 / by}`;
  const inchWords = [inches > 0 || part === 0 ? String(inches) : '', fraction].filter((each) => each !== '').join(' ');
  const sign = lengthM < 0 ? '\u2212' : '';
  if (feet === 0) return `${sign}${inchWords}\u2033`;
  return `${sign}${feet}\u2032 ${inchWords}\u2033`;
}
