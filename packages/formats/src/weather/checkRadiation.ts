import type { RemarkLog } from '../reading/remarkLog.ts';
import type { SunClock } from './sunClock.ts';
import type { HourRow } from './weatherYear.ts';

/** Kilojoules in a watt-hour. */
const KJ_PER_WH = 3.6;

/** Day by day: global radiation over what arrives outside the air. Only days with all their hours. */
export function dailyClearness(rows: readonly HourRow[], clock: SunClock, shiftH: number): number[] {
  const days = new Map<number, { hours: number; ghi: number; outside: number }>();
  for (const [i, { month, day, ghi }] of rows.entries()) {
    const sum = days.get(month * 32 + day) ?? { hours: 0, ghi: 0, outside: 0 };
    if (ghi !== undefined) {
      sum.hours++;
      sum.ghi += ghi;
      sum.outside += Math.max(0, clock.cosZenith(i, shiftH)) * (clock.etrNormal[i] as number);
    }
    days.set(month * 32 + day, sum);
  }
  return [...days.values()].filter(({ hours, outside }) => hours >= 23 && outside > 100).map((d) => d.ghi / d.outside);
}

/** Factors that turn the radiation columns into W/m². */
export interface RadiationFactors {
  readonly global: number;
  readonly parts: number;
}

/**
 * 1, or 1/3.6 where whole days exceed what the sun gives outside the air and would be ordinary
 * days in kJ/m². Direct and diffuse are scaled too unless they already add up to the scaled global.
 */
export function radiationFactors(
  rows: readonly HourRow[],
  clock: SunClock,
  shiftH: number,
  chosen: 'Wh/m2' | 'kJ/m2' | undefined,
  log: RemarkLog,
): RadiationFactors {
  const clearest = Math.max(0, ...dailyClearness(rows, clock, shiftH));
  const looksKj = clearest > 1.05 && clearest / KJ_PER_WH < 0.9;
  const unit = chosen ?? (looksKj ? 'kJ/m2' : 'Wh/m2');
  const onlyGlobal = unit === 'kJ/m2' && (partsOverGlobal(rows, clock, shiftH) ?? 1) < 0.5;
  if (looksKj) {
    log.add({
      severity: 'warn',
      code: 'radiation-in-kj',
      field: 'radiation',
      found: `Radiation reaches ${clearest.toFixed(1)} times what the sun can give over a day: the unit looks like kJ/m².`,
      wanted: 'Wh/m² is the unit of this format.',
      done:
        unit === 'Wh/m2'
          ? 'The columns were left as they are.'
          : `${onlyGlobal ? 'The global column was' : 'All three columns were'} divided by 3.6.`,
    });
    log.assume({ key: 'radiationUnit', value: unit, choices: ['Wh/m2', 'kJ/m2'], says: `Radiation is in ${unit}.` });
  } else remarkAbove(hoursAboveOutside(rows, clock, shiftH), log);
  if (unit === 'Wh/m2') return { global: 1, parts: 1 };
  return { global: 1 / KJ_PER_WH, parts: onlyGlobal ? 1 : 1 / KJ_PER_WH };
}

function remarkAbove(hours: number, log: RemarkLog): void {
  if (hours < 5) return;
  log.add({
    severity: 'warn',
    code: 'above-extraterrestrial',
    field: 'global horizontal radiation',
    found: `In ${hours} hours radiation is above what the sun gives outside the air.`,
    wanted: 'No hour can be.',
    done: 'They were used as they are.',
  });
}

function hoursAboveOutside(rows: readonly HourRow[], clock: SunClock, shiftH: number): number {
  return rows.filter(({ ghi }, i) => {
    const cosZ = clock.cosZenith(i, shiftH);
    return cosZ > 0.15 && (ghi ?? 0) > 1.05 * cosZ * (clock.etrNormal[i] as number);
  }).length;
}

/** Direct on the horizontal and diffuse over global, hours with the sun well up; undefined without any. */
function partsOverGlobal(rows: readonly HourRow[], clock: SunClock, shiftH: number): number | undefined {
  let parts = 0;
  let whole = 0;
  for (const [i, { ghi, dni, dhi }] of rows.entries()) {
    const cosZ = clock.cosZenith(i, shiftH);
    if (cosZ <= 0.15 || ghi === undefined || dni === undefined || dhi === undefined) continue;
    parts += dni * cosZ + dhi;
    whole += ghi;
  }
  return whole > 0 ? parts / whole : undefined;
}

/** Says when direct and diffuse do not add up to global over the hours with the sun well up. */
export function checkBalance(rows: readonly HourRow[], clock: SunClock, shiftH: number, log: RemarkLog): void {
  const ratio = partsOverGlobal(rows, clock, shiftH);
  if (ratio === undefined || (ratio >= 0.97 && ratio <= 1.03)) return;
  log.add({
    severity: 'warn',
    code: 'columns-disagree',
    field: 'radiation',
    found: `Direct and diffuse together are ${ratio.toFixed(2)} of global.`,
    wanted: '0.97 to 1.03 is usual.',
    done: 'The columns were used as they are; a tilted plane may be off by about as much.',
  });
}

/**
 * Says when a whole year has no dark days although it is not a desert: a radiation made by a
 * model that does not see clouds. Files of measured or well-founded radiation have 4 to 51 in a
 * hundred days under a clearness of 0.4 and a spread of at least 0.085 (nine files, our own count).
 */
export function checkDarkDays(clearness: readonly number[], log: RemarkLog): void {
  if (clearness.length < 300) return;
  const mean = clearness.reduce((sum, k) => sum + k, 0) / clearness.length;
  const spread = Math.sqrt(clearness.reduce((sum, k) => sum + (k - mean) ** 2, 0) / clearness.length);
  const dark = clearness.filter((k) => k < 0.4).length / clearness.length;
  if (dark >= 0.01 || spread >= 0.065) return;
  log.add({
    severity: 'warn',
    code: 'no-dark-days',
    field: 'global horizontal radiation',
    found: `Hardly a day is dark: clearness ${mean.toFixed(2)} on average with a spread of ${spread.toFixed(2)}.`,
    wanted: 'A real year has dark days.',
    done: 'It was used as it is; the yield may be read 5 to 35 % high.',
    mend: 'Compare with another source for this place.',
  });
}
