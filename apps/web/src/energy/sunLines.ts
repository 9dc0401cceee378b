/** One way of the sun over the sky, azimuth from north and height, degrees, above the level only. */
export type SunLine = readonly (readonly [azimuthDeg: number, heightDeg: number])[];

const RAD = Math.PI / 180;
/** Tilt of the earth's axis. */
export const LONGEST_DAY_DEG = 23.44;

/** Declinations of the days whose ways are drawn, the longest and shortest day and the equinoxes named. */
export const SUN_DAYS: readonly { readonly declinationDeg: number; readonly name?: string }[] = [
  { declinationDeg: LONGEST_DAY_DEG, name: '21 June' },
  { declinationDeg: 20.15 },
  { declinationDeg: 11.47 },
  { declinationDeg: 0, name: 'March, September' },
  { declinationDeg: -11.47 },
  { declinationDeg: -20.15 },
  { declinationDeg: -LONGEST_DAY_DEG, name: '21 December' },
];

/** Where the sun stands at an hour angle, 15° an hour from noon by the sun. Geometry, without refraction. */
export function sunAt(latitudeDeg: number, declinationDeg: number, hourDeg: number): readonly [number, number] {
  const [l, d, h] = [latitudeDeg * RAD, declinationDeg * RAD, hourDeg * RAD];
  const east = -Math.cos(d) * Math.sin(h);
  const north = Math.sin(d) * Math.cos(l) - Math.cos(d) * Math.cos(h) * Math.sin(l);
  const up = Math.sin(d) * Math.sin(l) + Math.cos(d) * Math.cos(h) * Math.cos(l);
  return [(Math.atan2(east, north) / RAD + 360) % 360, Math.asin(Math.max(-1, Math.min(1, up))) / RAD];
}

const above = ([, height]: readonly [number, number]) => height >= 0;

/** The sun's way through one day, every 2.5°. */
export const sunWay = (latitudeDeg: number, declinationDeg: number): SunLine =>
  Array.from({ length: 145 }, (_, k) => sunAt(latitudeDeg, declinationDeg, -180 + 2.5 * k)).filter(above);

/** Where the sun stands at one hour by the sun from the longest day to the shortest. */
export const hourLine = (latitudeDeg: number, hour: number): SunLine =>
  Array.from({ length: 17 }, (_, k) => sunAt(latitudeDeg, LONGEST_DAY_DEG * (1 - k / 8), 15 * (hour - 12))).filter(
    above,
  );
