import type { RemarkLog } from '../reading/remarkLog.ts';
import { plainNumber } from '../text/fields.ts';
import type { WeatherPlace } from './weatherYear.ts';

/** Limits of what a head line may say; beyond them it is not a place on Earth. */
const RANGE = {
  latitudeDeg: [-90, 90],
  longitudeDeg: [-180, 180],
  utcOffsetH: [-12, 14],
  elevationM: [-450, 6500],
} as const;

/** A number of the head inside its range, else undefined. */
export function placeNumber(key: keyof typeof RANGE, field: string | undefined): number | undefined {
  const value = plainNumber(field);
  const [low, high] = RANGE[key];
  return value !== undefined && value >= low && value <= high ? value : undefined;
}

/**
 * The place of a file from what its head says and a person adds; stops when latitude,
 * longitude or the offset to UTC are nowhere to be had.
 */
export function settlePlace(
  head: Partial<WeatherPlace>,
  given: Partial<WeatherPlace> | undefined,
  says: string,
  log: RemarkLog,
): WeatherPlace | undefined {
  const { name, latitudeDeg, longitudeDeg, elevationM, utcOffsetH } = { ...head, ...given };
  const absent = [
    latitudeDeg === undefined && 'latitude',
    longitudeDeg === undefined && 'longitude',
    utcOffsetH === undefined && 'offset from UTC',
  ].filter((word) => word !== false);
  if (latitudeDeg === undefined || longitudeDeg === undefined || utcOffsetH === undefined) {
    log.add({
      severity: 'stop',
      code: 'no-place',
      line: 1,
      found: `The head gives no usable ${absent.join(', ')}: ${says}`,
      wanted: 'Without them the sun cannot be placed.',
      done: 'Nothing was read.',
      mend: 'Give the place by hand.',
    });
    return undefined;
  }
  return { name: name || 'unnamed place', latitudeDeg, longitudeDeg, elevationM, utcOffsetH };
}

/** Place and source of `LOCATION,city,state,country,source,station,latitude,longitude,offset,elevation`. */
export function epwPlace(
  fields: readonly string[],
  given: Partial<WeatherPlace> | undefined,
  separator: string,
  log: RemarkLog,
): { place: WeatherPlace | undefined; sourceText: string } {
  const number = (n: number) => (separator === ';' ? fields[n]?.replace(',', '.') : fields[n]);
  const head = {
    // some files use dots for the blanks of a name
    name: [fields[1]?.replace(/\.(?=\S)/g, ' ').replace(/\s+/g, ' '), fields[3]].filter((part) => part).join(', '),
    latitudeDeg: placeNumber('latitudeDeg', number(6)),
    longitudeDeg: placeNumber('longitudeDeg', number(7)),
    utcOffsetH: placeNumber('utcOffsetH', number(8)),
    elevationM: placeNumber('elevationM', number(9)),
  };
  const defined = Object.fromEntries(Object.entries(head).filter(([, value]) => value !== undefined));
  const place = settlePlace(defined, given, fields.slice(0, 10).join(','), log);
  return { place, sourceText: [fields[4], fields[5]].filter((part) => part).join(' ') || 'not said' };
}
