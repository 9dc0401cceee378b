import { readNumber } from '../parts/readNumber.ts';

/** A place as it is being typed. */
export interface TypedPlace {
  readonly latitude: string;
  readonly longitude: string;
}

export const NO_PLACE: TypedPlace = { latitude: '', longitude: '' };

/** A place read, or what is wrong with each of its fields. */
export type ReadPlace =
  | { readonly latitudeDeg: number; readonly longitudeDeg: number }
  | { readonly latitude?: string; readonly longitude?: string };

/** Reads both coordinates; degrees, north and east positive. */
export function readPlace({ latitude, longitude }: TypedPlace): ReadPlace {
  const lat = degrees(latitude, 90, 'south negative: −37.6 lies in Victoria');
  const lon = degrees(longitude, 180, 'west negative');
  if (typeof lat === 'number' && typeof lon === 'number') return { latitudeDeg: lat, longitudeDeg: lon };
  return {
    ...(typeof lat === 'string' ? { latitude: lat } : {}),
    ...(typeof lon === 'string' ? { longitude: lon } : {}),
  };
}

function degrees(text: string, most: number, sign: string): number | string {
  const read = readNumber(text, '°');
  if (read.kind === 'empty') return `Type degrees, ${sign}, or pick a town near it.`;
  if (read.kind !== 'number') return `${text} is no number. Type degrees with a point: −37.62.`;
  if (Math.abs(read.value) > most) return `${text}° is off the globe. It lies between −${most} and ${most}.`;
  return read.value;
}
