import { sunAtInstants } from '@eaveline/physics';
import type { HourRow, WeatherPlace } from './weatherYear.ts';

/** The sun over the hours of a file, kept so that it can be asked again with the clock moved. */
export interface SunClock {
  /** Hour angle of the sun at each row's instant, h, −12 to 12: true solar time less noon. */
  readonly hourAngleH: Float64Array;
  /** Radiation on a plane that faces the sun outside the air, W/m². */
  readonly etrNormal: Float64Array;
  /** Cosine of the zenith distance of row i with the clock moved by `shiftH`. */
  cosZenith(i: number, shiftH: number): number;
}

/**
 * The sun at the instants of all rows, turned from (east, north, up) into declination δ and hour
 * angle H, because a clock that is wrong moves H and leaves δ:
 *
 *     sin δ = N cos φ + U sin φ     cos δ cos H = U cos φ − N sin φ     cos δ sin H = −E
 *     cos z = sin φ sin δ + cos φ cos δ cos(H + shift)
 *
 * Leaves out the change of δ over the shift (0.02° an hour at most). The vectors are those of the
 * refracted sun, which moves δ and H by half a degree at the horizon and less than 0.1° above 10°.
 */
export function sunClock(rows: readonly HourRow[], place: WeatherPlace): SunClock {
  const n = rows.length;
  const { latitudeDeg, longitudeDeg } = place;
  const sun = sunAtInstants(
    rows.map((row) => row.sunTimeMs),
    { latitudeDeg, longitudeDeg },
  );
  const sinLat = Math.sin((latitudeDeg * Math.PI) / 180);
  const cosLat = Math.cos((latitudeDeg * Math.PI) / 180);
  const hourAngleH = new Float64Array(n);
  const offset = new Float64Array(n);
  const swing = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const [east, north, up] = [sun.east[i] as number, sun.north[i] as number, sun.up[i] as number];
    const across = up * cosLat - north * sinLat;
    hourAngleH[i] = (Math.atan2(-east, across) * 12) / Math.PI;
    offset[i] = sinLat * (north * cosLat + up * sinLat);
    swing[i] = cosLat * Math.hypot(east, across);
  }
  return {
    hourAngleH,
    etrNormal: sun.etrNormalWM2,
    cosZenith: (i, shiftH) =>
      (offset[i] as number) + (swing[i] as number) * Math.cos((((hourAngleH[i] as number) + shiftH) * Math.PI) / 12),
  };
}

/** Hours folded into −12 to 12. */
export function wrapHours(hours: number): number {
  return hours - 24 * Math.round(hours / 24);
}
