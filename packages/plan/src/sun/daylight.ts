import { sunTimes } from '@eaveline/physics';
import { zoneOffsetH } from './civilClock.ts';
import type { SunPlan } from './types.ts';

/** A year without 29 February for what does not hang on the year; from one to the next the times move by a minute. */
export const SUN_YEAR = 2025;

/** Sunrise, noon and sunset on the 15th of each month by the civil clock, h, summer time kept. */
export function daylight(latitudeDeg: number, longitudeDeg: number, zone: string): SunPlan['daylight'] {
  return Array.from({ length: 12 }, (_, m) => {
    const dateLocal = `${SUN_YEAR}-${String(m + 1).padStart(2, '0')}-15`;
    const noonUtc = Date.UTC(SUN_YEAR, m, 15, 12) - (longitudeDeg / 15) * 3_600_000;
    const utcOffsetH = zoneOffsetH(zone, noonUtc);
    const { sunriseMs, noonMs, sunsetMs } = sunTimes({ latitudeDeg, longitudeDeg, dateLocal, utcOffsetH });
    const startMs = Date.UTC(SUN_YEAR, m, 15) - utcOffsetH * 3_600_000;
    const clockH = (timeMs: number) => (timeMs - startMs) / 3_600_000;
    return {
      ...(sunriseMs !== undefined && { riseH: clockH(sunriseMs) }),
      noonH: clockH(noonMs),
      ...(sunsetMs !== undefined && { setH: clockH(sunsetMs) }),
    };
  });
}
