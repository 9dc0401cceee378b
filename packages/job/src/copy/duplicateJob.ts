import type { Choices } from '../schema/choices.ts';
import type { Facts, SiteFacts } from '../schema/facts.ts';
import { type Job, jobSchema } from '../schema/job.ts';

/** Where another house stands: nothing of that can be taken over. */
export type OtherSite = Pick<SiteFacts, 'address' | 'latitudeDeg' | 'longitudeDeg' | 'zone'>;

/**
 * What the copy is for.
 *
 * `same house`: what was found at this house is still true of it. `another house`: the design is a pattern, and what
 * was measured, agreed or read off here is no fact of there.
 */
export type DuplicateFor =
  | { readonly kind: 'same house' }
  | { readonly kind: 'another house'; readonly site: OtherSite };

export interface Duplicate {
  readonly job: Job;
  /** What did not come along, in words. */
  readonly emptied: readonly string[];
  /** What came along and is not known to be true of the other house. */
  readonly pattern: readonly string[];
}

/**
 * A job once more, under another id and name. The job it was made of stays as it is.
 *
 * Never taken over: records (what was seen on site was seen once), the date, what was done before it, the archive's
 * note. The limits a licensed person confirmed hold for an edition, not for a house: they come along.
 *
 * @throws {ZodError} where id or site are not what a job may hold; `jobSchema` says which.
 */
export function duplicateJob(job: Job, { id, name, copyFor }: DuplicateOptions): Duplicate {
  const { archived: _off, records: _seen, ...rest } = job;
  const { date: _date, doneBefore: _done, ...day } = job.choices.day;
  const again = { ...rest, id, name, choices: { ...job.choices, day } };
  const always = [
    'records: serials, readings, torques, photographs, signatures',
    'the date, and what was done before it',
  ];
  if (copyFor.kind === 'same house')
    return { job: jobSchema.parse({ ...again, state: 'design' }), emptied: always, pattern: [] };
  return {
    job: jobSchema.parse({
      ...again,
      customer: {},
      about: '',
      state: 'survey',
      facts: patternOf(job.facts, copyFor.site),
      choices: choicesOf(again.choices),
    }),
    emptied: [
      ...always,
      'customer, site, climate on record, trees and horizon',
      'network: limits, approval, meter number, profile',
      'readings of supply and board, mains, electrode',
      'rafters, state of the covering',
      'plates of motors, traced neutrals, energy in a year',
      'who measured what',
    ],
    pattern: [
      'outline of the roof, and what stands on it',
      'system and earthing of the supply',
      'circuits',
      'walls',
      'what stands there already',
    ],
  };
}

export interface DuplicateOptions {
  readonly id: string;
  readonly name: string;
  readonly copyFor: DuplicateFor;
}

/** What carries the drawing stays as a pattern; what can be asked for again is left to be asked. */
function patternOf({ supply, board, roof, loads, walls, existing }: Facts, site: OtherSite): unknown {
  const { system, nominalV, earthing, serviceA } = supply;
  return {
    site,
    supply: { system, nominalV, earthing, serviceA },
    board: { name: board.name },
    roof: { ...roof, planes: mapped(roof.planes, outlineOf) },
    loads: { circuits: mapped(loads.circuits, circuitOf) },
    walls,
    existing,
  };
}

function outlineOf(plane: Facts['roof']['planes'][string]) {
  const { rafters: _r, battenMm: _b, atticC: _a, asbestos: _s, fragile: _f, planWidthM: _p, ...outline } = plane;
  return outline;
}

function circuitOf(circuit: Facts['loads']['circuits'][string]) {
  const { neutralTraced: _n, residualDevice: _r, breakerA: _b, motor, ...kept } = circuit;
  if (motor === undefined) return kept;
  const { kind, voltage } = motor;
  return { ...kept, motor: { kind, voltage } };
}

/** Choices that were only right for that place: what the network allows, the wind there. */
function choicesOf(choices: Omit<Choices, 'day'> & { readonly day: Partial<Choices['day']> }): unknown {
  const { exportLimitSetVA: _limit, wind: _wind, ...rest } = choices;
  return rest;
}

function mapped<T, U>(map: Readonly<Record<string, T>>, of: (each: T) => U): Record<string, U> {
  return Object.fromEntries(Object.entries(map).map(([id, each]) => [id, of(each)]));
}
