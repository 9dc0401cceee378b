import type { Choices } from '../schema/choices.ts';
import type { SupplyFacts } from '../schema/facts.ts';

/** What a region brings to a clean sheet; facts of the place are left for the survey. */
export interface Region {
  /** As a person says it. */
  readonly name: string;
  readonly rules: Pick<Choices['rules'], 'pack' | 'variant'>;
  /** Civil clocks of the region by their IANA names, the one that stands until another is picked first. */
  readonly zones: readonly [string, ...string[]];
  /** Line to neutral, V. */
  readonly nominalV: number;
  /** How most houses of it are earthed. */
  readonly earthing: SupplyFacts['earthing'];
  /** Supplies it has, the usual one first, with the usual service fuse or main switch, A. */
  readonly supplies: readonly [Supply, ...Supply[]];
}

export interface Supply {
  readonly system: SupplyFacts['system'];
  readonly serviceA: number;
}

const one = (serviceA: number): Supply => ({ system: 'single-phase', serviceA });
const three = (serviceA: number): Supply => ({ system: 'three-phase', serviceA });

/** Regions by the variant of their rules. Supplies and earthing: common practice, no source; the survey replaces them. */
export const regions = {
  au: {
    name: 'Australia',
    rules: { pack: 'au-nz', variant: 'au' },
    zones: [
      'Australia/Melbourne',
      'Australia/Sydney',
      'Australia/Brisbane',
      'Australia/Adelaide',
      'Australia/Perth',
      'Australia/Hobart',
      'Australia/Darwin',
    ],
    nominalV: 230,
    earthing: 'MEN',
    supplies: [one(63), three(63)],
  },
  nz: {
    name: 'New Zealand',
    rules: { pack: 'au-nz', variant: 'nz' },
    zones: ['Pacific/Auckland', 'Pacific/Chatham'],
    nominalV: 230,
    earthing: 'MEN',
    supplies: [one(63), three(63)],
  },
  gb: {
    name: 'Great Britain',
    rules: { pack: 'iec-eu', variant: 'gb' },
    zones: ['Europe/London'],
    nominalV: 230,
    earthing: 'TN-C-S',
    supplies: [one(80), three(80)],
  },
  ie: {
    name: 'Ireland',
    rules: { pack: 'iec-eu', variant: 'ie' },
    zones: ['Europe/Dublin'],
    nominalV: 230,
    earthing: 'TN-C-S',
    supplies: [one(63), three(63)],
  },
  eu: {
    name: 'Europe, IEC rules',
    rules: { pack: 'iec-eu', variant: 'eu' },
    zones: [
      'Europe/Berlin',
      'Europe/Paris',
      'Europe/Madrid',
      'Europe/Rome',
      'Europe/Warsaw',
      'Europe/Lisbon',
      'Europe/Athens',
      'Europe/Helsinki',
    ],
    nominalV: 230,
    earthing: 'TN-S',
    supplies: [three(35), one(63)],
  },
  us: {
    name: 'United States',
    rules: { pack: 'us', variant: 'us' },
    zones: [
      'America/Denver',
      'America/New_York',
      'America/Chicago',
      'America/Los_Angeles',
      'America/Phoenix',
      'America/Anchorage',
      'Pacific/Honolulu',
    ],
    nominalV: 120,
    earthing: 'US-grounded',
    supplies: [{ system: 'split-phase', serviceA: 200 }, three(200)],
  },
} as const satisfies Record<string, Region>;

export type RegionCode = keyof typeof regions;

export function isRegionCode(code: string): code is RegionCode {
  return Object.hasOwn(regions, code);
}
