import { climateFrom } from '../climate/climateNear.ts';
import { climatePlaces } from '../climate/climatePlaces.ts';
import type { RemarkLog } from '../reading/remarkLog.ts';
import type { WeatherYear } from './weatherYear.ts';

/** Standard deviation of an estimate between places, %: the nine-in-ten figure, 10.5 %, over 1.645. */
const DEVIATION_PERCENT = 6.4;

const wellFounded = climatePlaces.filter(({ ghiClass }) => ghiClass === 'A');

/**
 * Says when the annual radiation of a file is two standard deviations off the well-founded places
 * around it. Nothing is said where none is within reach, or the file has no annual figure.
 */
export function compareWithNormals({ place, annual }: WeatherYear, log: RemarkLog): void {
  if (place === undefined || annual?.ghiKwhM2 === undefined) return;
  const near = climateFrom(wellFounded, place.latitudeDeg, place.longitudeDeg);
  if (near.beyondReach) return;
  const off = (annual.ghiKwhM2 / near.annualGhiKwhM2 - 1) * 100;
  if (Math.abs(off) <= 2 * DEVIATION_PERCENT) return;
  const names = near.from.map(({ place: { name }, distanceKm }) => `${name} (${Math.round(distanceKm)} km)`).join(', ');
  log.add({
    severity: 'warn',
    code: off > 0 ? 'brighter-than-around' : 'darker-than-around',
    field: 'global horizontal radiation',
    found: `The year has ${Math.round(annual.ghiKwhM2)} kWh/m², ${Math.abs(off).toFixed(0)} % ${off > 0 ? 'more' : 'less'} than the places around: ${names}.`,
    wanted: `Within ${(2 * DEVIATION_PERCENT).toFixed(0)} % is usual.`,
    done: 'It was used as it is.',
    mend: 'Compare with another source for this place.',
  });
}
