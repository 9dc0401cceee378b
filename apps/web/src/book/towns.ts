import type { RegionCode } from '@eaveline/job';
import { folded } from './folded.ts';

/** Of a place of the climate table, what a town is made of. */
export interface Place {
  readonly name: string;
  /** Two letters. */
  readonly country: string;
  /** State or part of the country. */
  readonly region: string;
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly utcOffsetH: number;
}

/** A town whose climate is known, with the clock and the rules that hold there. */
export interface Town {
  /** `Melbourne (Essendon), AU`. */
  readonly words: string;
  /** `Melbourne`: without what stands in brackets. */
  readonly name: string;
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  /** IANA name of its civil clock; undefined where none is known for it. */
  readonly zone: string | undefined;
  /** Undefined where the product has no rules for its country. */
  readonly region: RegionCode | undefined;
}

const REGIONS: Readonly<Record<string, RegionCode>> = {
  ...{ AU: 'au', NZ: 'nz', GB: 'gb', IE: 'ie', US: 'us' },
  ...{ DE: 'eu', DK: 'eu', ES: 'eu', FI: 'eu', FR: 'eu', GR: 'eu', IT: 'eu', LU: 'eu', NL: 'eu', PT: 'eu', SE: 'eu' },
};

/**
 * Clocks by country, or by country and state; by the offset of standard time in the United States, where some states
 * have two.
 *
 * Source: IANA time zone database. Denmark, Luxembourg, the Netherlands and Sweden keep the same time as Berlin.
 */
const ZONES: Readonly<Record<string, string>> = {
  'AU Victoria': 'Australia/Melbourne',
  'AU New South Wales': 'Australia/Sydney',
  'AU Queensland': 'Australia/Brisbane',
  'AU South Australia': 'Australia/Adelaide',
  'AU Western Australia': 'Australia/Perth',
  'AU Tasmania': 'Australia/Hobart',
  'AU Northern Territory': 'Australia/Darwin',
  NZ: 'Pacific/Auckland',
  GB: 'Europe/London',
  IE: 'Europe/Dublin',
  DE: 'Europe/Berlin',
  DK: 'Europe/Berlin',
  LU: 'Europe/Berlin',
  NL: 'Europe/Berlin',
  SE: 'Europe/Berlin',
  ES: 'Europe/Madrid',
  FI: 'Europe/Helsinki',
  FR: 'Europe/Paris',
  GR: 'Europe/Athens',
  IT: 'Europe/Rome',
  PT: 'Europe/Lisbon',
  'US AZ': 'America/Phoenix',
  'US AK': 'America/Anchorage',
  'US HI': 'Pacific/Honolulu',
  'US -5': 'America/New_York',
  'US -6': 'America/Chicago',
  'US -7': 'America/Denver',
  'US -8': 'America/Los_Angeles',
};

export function townOf({ name, country, region, latitudeDeg, longitudeDeg, utcOffsetH }: Place): Town {
  return {
    words: `${name}, ${country}`,
    name: name.replace(/ *\(.*\)/, ''),
    latitudeDeg,
    longitudeDeg,
    zone: ZONES[`${country} ${region}`] ?? ZONES[`${country} ${utcOffsetH}`] ?? ZONES[country],
    region: REGIONS[country],
  };
}

/** The one town a text names, with or without its brackets and its country; else what to say of it. */
export function townNamed(towns: readonly Town[], typed: string): Town | string | undefined {
  const text = folded(typed);
  if (text === '' || towns.length === 0) return undefined;
  const whole = towns.find(({ words }) => folded(words) === text);
  if (whole !== undefined) return whole;
  const named = towns.filter(({ name, words }) => [name, `${name}, ${words.slice(-2)}`].map(folded).includes(text));
  const [only] = named;
  if (only !== undefined && named.length === 1) return only;
  const near = named.length > 0 ? named : towns.filter(({ words }) => folded(words).includes(text));
  if (near.length === 0) return `No town called ${typed.trim()} is known. Type latitude and longitude.`;
  if (text.length < 3) return undefined;
  const some = near.slice(0, 4).map(({ words }) => words);
  return `Pick one: ${some.join(' · ')}${near.length > some.length ? ', and more' : ''}.`;
}

/** Farther off than this a town says nothing of the clock of a place, km. */
const FAR_KM = 300;

/** The town nearest to a place, and how far off it is, km; undefined where none is near. */
export function nearestTown(
  towns: readonly Town[],
  place: { readonly latitudeDeg: number; readonly longitudeDeg: number },
): { readonly town: Town; readonly km: number } | undefined {
  let nearest: { town: Town; km: number } | undefined;
  for (const town of towns) {
    const km = distanceKm(town, place);
    if (km <= FAR_KM && (nearest === undefined || km < nearest.km)) nearest = { town, km };
  }
  return nearest;
}

const EARTH_KM = 6371;

/** Great-circle distance on a sphere, by the haversine formula. */
function distanceKm(
  a: { readonly latitudeDeg: number; readonly longitudeDeg: number },
  b: { readonly latitudeDeg: number; readonly longitudeDeg: number },
): number {
  const rad = (deg: number) => (deg * Math.PI) / 180;
  const h =
    Math.sin(rad(b.latitudeDeg - a.latitudeDeg) / 2) ** 2 +
    Math.cos(rad(a.latitudeDeg)) *
      Math.cos(rad(b.latitudeDeg)) *
      Math.sin(rad(b.longitudeDeg - a.longitudeDeg) / 2) ** 2;
  return 2 * EARTH_KM * Math.asin(Math.min(1, Math.sqrt(h)));
}

/** The clock a new job gets, and what is said of it. */
export interface OfferedClock {
  /** Undefined where it has to be picked. */
  readonly zone: string | undefined;
  readonly words: string | undefined;
}

/** The clock of a place: that of the town nearest to it, where the rules picked have that clock. */
export function clockNear(
  towns: readonly Town[],
  place: { readonly latitudeDeg: number; readonly longitudeDeg: number } | undefined,
  { name, zones }: { readonly name: string; readonly zones: readonly string[] },
): OfferedClock {
  if (zones.length === 1) return { zone: zones[0], words: undefined };
  if (place === undefined) return { zone: undefined, words: 'It follows the place.' };
  if (towns.length === 0) return { zone: undefined, words: 'Which clock is it?' };
  const near = nearestTown(towns, place);
  if (near === undefined) return { zone: undefined, words: `No known town is within ${FAR_KM} km. Which clock is it?` };
  const { town, km } = near;
  if (town.zone === undefined || !zones.includes(town.zone))
    return {
      zone: undefined,
      words: `The place is near ${town.words}, and the rules are of ${name}. Which clock is it?`,
    };
  const off = km < 1 ? '' : `, ${km.toFixed(0)} km off`;
  return { zone: town.zone, words: `The clock of ${town.words}${off}.` };
}
