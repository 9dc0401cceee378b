import type { Facts } from '@eaveline/job';
import type { SunPlan } from '../sun/types.ts';
import type { EnergyPlan } from './types.ts';

/**
 * What the house uses: the year spread over the hours of the surveyed day, and a mean night from sunset to sunrise
 * over the 15th of every month. No night where the sun does not rise or set in some month.
 */
export function houseLoads(
  { annualKwh, dayShape }: Pick<Facts['loads'], 'annualKwh' | 'dayShape'>,
  daylight: SunPlan['daylight'],
): EnergyPlan['loads'] {
  if (annualKwh === undefined || dayShape === undefined) return annualKwh === undefined ? {} : { annualKwh };
  const hourlyW = dayShape.map((share) => (share * annualKwh * 1000) / 365);
  const nights = daylight.map(({ riseH, setH }) =>
    riseH === undefined || setH === undefined ? undefined : nightKwh(hourlyW, riseH, setH),
  );
  const sum = nights.reduce<number | undefined>(
    (all, one) => (all === undefined || one === undefined ? undefined : all + one),
    0,
  );
  return { annualKwh, hourlyW, ...(sum !== undefined && { nightKwh: sum / nights.length }) };
}

/** Energy of the hours, and parts of hours, before sunrise and after sunset. */
function nightKwh(hourlyW: readonly number[], riseH: number, setH: number): number {
  return hourlyW.reduce((sum, watts, h) => {
    const day = Math.max(0, Math.min(h + 1, setH) - Math.max(h, riseH));
    return sum + (watts * (1 - day)) / 1000;
  }, 0);
}
