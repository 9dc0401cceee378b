import {
  type CircuitFacts,
  type ExistingFacts,
  type Job,
  type PlaneFacts,
  surveying,
  type WallFacts,
} from '@eaveline/job';
import { packFor } from '../rules/index.ts';
import type { RuleId } from '../rules/ruleLimits.ts';
import type { MissingFact } from './types.ts';

/** A fact the plan has a use for, and whether the survey brought it. */
export interface WantedFact extends MissingFact {
  readonly present: boolean;
}

type From = 'survey' | 'network' | 'customer' | 'sample';

/** One wanted fact of one kind of thing `T`: where it stands in it, what it is, and who waits for it. */
interface Want<T> {
  readonly at: string;
  readonly what: string;
  /** Rules of the checks that ask without it; empty where a figure or a paper waits, no rule. */
  readonly rules: readonly RuleId[];
  readonly from: From;
  /** Other fields that answer the same question. */
  readonly or?: readonly string[];
  /** Left out: always wanted. */
  readonly when?: (thing: T, job: Job) => boolean;
}

const hasBackup = (_: unknown, { choices }: Job) => choices.backup !== undefined;
const partBackup = (_: unknown, { choices }: Job) => choices.backup?.scope === 'part';
const inUs = (_: unknown, { choices }: Job) => choices.rules.pack === 'us';

/** Facts of the whole job, by their path in `facts`. */
const jobWants: readonly Want<Job>[] = [
  { at: 'site.recordLowC', what: 'Lowest temperature on record', rules: ['cold-voltage'], from: 'survey' },
  { at: 'site.recordHighC', what: 'Highest temperature on record', rules: ['hot-voltage'], from: 'survey' },
  { at: 'site.wind.basicSpeedMS', what: 'Wind speed of the region', rules: ['foot-uplift'], from: 'survey' },
  { at: 'site.wind.terrain', what: 'Terrain category', rules: ['foot-uplift'], from: 'survey' },
  { at: 'site.wind.roofHeightM', what: 'Mean roof height', rules: ['foot-uplift'], from: 'survey' },
  { at: 'site.wind.exposed', what: 'Hill, lee zone or coast', rules: ['wind-exposed'], from: 'survey' },
  {
    at: 'network.exportLimitVAPerLine',
    or: ['network.exportLimitVATotal'],
    what: 'Export limit',
    rules: ['export-limit'],
    from: 'network',
  },
  {
    at: 'network.approvalNumber',
    what: 'Number of the network’s approval',
    rules: ['network-approval'],
    from: 'network',
  },
  { at: 'network.approvalDate', what: 'Date of the network’s approval', rules: ['network-approval'], from: 'network' },
  { at: 'site.yearBuilt', what: 'Year the house was built', rules: ['asbestos', 'board-backing'], from: 'customer' },
  { at: 'network.profile', what: 'Grid profile', rules: [], from: 'network' },
  { at: 'network.meterNumber', what: 'Meter number', rules: [], from: 'customer' },
  {
    at: 'supply.loopOhm',
    or: ['supply.declaredLoopOhm'],
    what: 'Loop impedance at the board',
    rules: ['fault-loop'],
    from: 'survey',
  },
  { at: 'supply.prospectiveA', what: 'Prospective fault current', rules: ['breaking-capacity'], from: 'survey' },
  {
    at: 'supply.mains.lengthM',
    what: 'Length of the mains',
    rules: ['trunk-rise', 'trunk-rise-with-battery'],
    from: 'survey',
  },
  {
    at: 'supply.mains.conductor',
    what: 'Conductor of the mains',
    rules: ['trunk-rise', 'trunk-rise-with-battery'],
    from: 'survey',
  },
  {
    at: 'supply.rotation',
    what: 'Phase rotation',
    rules: [],
    from: 'survey',
    when: (_, { facts }) => facts.supply.system === 'three-phase',
  },
  {
    at: 'supply.electrodeOhm',
    what: 'Resistance of the earth electrode',
    rules: ['fault-loop'],
    from: 'survey',
    when: (_, { facts }) => facts.supply.earthing === 'TT',
  },
  {
    at: 'supply.measuredV.L1',
    or: ['supply.measuredV.L2', 'supply.measuredV.L3'],
    what: 'Voltage of the supply',
    rules: ['supply-voltage'],
    from: 'survey',
  },
  { at: 'board.busA', what: 'Rating of the bars', rules: ['bus'], from: 'survey' },
  { at: 'board.mainSwitchA', what: 'Rating of the main switch', rules: ['bus'], from: 'survey' },
  { at: 'board.breakingKA', what: 'Breaking capacity of the board', rules: ['breaking-capacity'], from: 'survey' },
  { at: 'board.freeWays', what: 'Free ways in the board', rules: ['free-ways'], from: 'survey' },
  { at: 'board.breakerSumA', what: 'Sum of the breakers', rules: ['bus'], from: 'survey', when: inUs },
  { at: 'board.wiring', what: 'Colours of the board’s wiring', rules: ['wiring-colours'], from: 'survey' },
  { at: 'board.backing', what: 'Backing of the board', rules: ['board-backing'], from: 'sample' },
  { at: 'board.ambientC', what: 'Temperature at the board', rules: ['breaker-continuous'], from: 'survey' },
  { at: 'board.surgeDevice', what: 'Surge device', rules: ['surge'], from: 'survey' },
  {
    at: 'board.electrode',
    what: 'Earth electrode at the board',
    rules: ['island-earthing'],
    from: 'survey',
    when: hasBackup,
  },
  { at: 'loads.annualKwh', what: 'Use in a year', rules: [], from: 'customer' },
  { at: 'loads.dayShape', what: 'Use by the hour', rules: [], from: 'customer' },
  { at: 'roof.planes', what: 'A roof plane', rules: ['roof-measures', 'rafters', 'setbacks'], from: 'survey' },
  { at: 'access.scaffoldNeeded', what: 'Whether a scaffold is needed', rules: [], from: 'survey' },
];

/** Facts of each plane that carries a row, by their path in the plane. */
const planeWants: readonly Want<PlaneFacts>[] = [
  { at: 'planWidthM', what: 'plan width, the second measure', rules: ['roof-measures'], from: 'survey' },
  { at: 'rafters.firstMm', what: 'first rafter', rules: ['rafters', 'foot-spacing', 'rail-overhang'], from: 'survey' },
  {
    at: 'rafters.spacingMm',
    what: 'rafter spacing',
    rules: ['rafters', 'foot-spacing', 'rail-overhang'],
    from: 'survey',
  },
  { at: 'rafters.widthMm', what: 'rafter width', rules: [], from: 'survey' },
  { at: 'fragile', what: 'whether it may be walked on', rules: [], from: 'survey' },
  {
    at: 'asbestos',
    what: 'asbestos in the covering',
    rules: ['asbestos'],
    from: 'sample',
    when: ({ covering }) => covering !== 'metal-sheet' && covering !== 'asphalt-shingle',
  },
  { at: 'atticC', what: 'heat under the roof', rules: [], from: 'survey' },
];

/** Facts of each circuit that is to stay alive, by their path in the circuit. */
const circuitWants: readonly Want<CircuitFacts>[] = [
  { at: 'residualDevice', what: 'residual device', rules: ['backup-residual-device'], from: 'survey' },
  { at: 'neutralTraced', what: 'own neutral traced', rules: ['backup-neutral'], from: 'survey', when: partBackup },
  {
    at: 'motor.lockedRotorA',
    or: ['motor.codeLetter'],
    what: 'locked-rotor current of the motor',
    rules: ['backup-start'],
    from: 'survey',
    when: ({ motor }) => motor !== undefined && motor.kind !== 'inverter-driven',
  },
];

/** Facts of each wall that takes a battery, by their path in the wall. */
const wallWants: readonly Want<WallFacts>[] = [
  { at: 'habitableBehind', what: 'what is behind it', rules: ['battery-barrier'], from: 'survey' },
  { at: 'combustible', what: 'whether it burns', rules: ['battery-barrier'], from: 'survey' },
  { at: 'vehicles', what: 'vehicles that reach it', rules: ['battery-place'], from: 'survey' },
  { at: 'sun', what: 'midday sun on it', rules: [], from: 'survey' },
];

/** Facts of what stands there already, by their path in it. */
const existingWants: readonly Want<ExistingFacts>[] = [
  {
    at: 'changeover',
    what: 'whether a changeover keeps it from the network',
    rules: ['bus'],
    from: 'survey',
    when: ({ kind }) => kind === 'generator inlet',
  },
];

/**
 * Every fact this job has a use for, present or not.
 *
 * Wanted are facts of the job, of planes with a row on them, of circuits that are moved to the backed-up side, of
 * walls that take a battery, and of what stands there already. While the job is in survey nothing is chosen yet: then
 * every plane, every wall and every circuit that must stay on may be meant. A fact that only rules wait for which the region lacks is not wanted. A fact answered
 * `unknown` is not present.
 */
export function wantedFacts(job: Job): WantedFact[] {
  const { facts, choices } = job;
  const rows = Object.values(choices.rows);
  const batteries = Object.values(choices.batteries);
  const moved = choices.backup?.circuits ?? {};
  const open = surveying(job);
  const isBuiltOn = (id: string) => rows.some((row) => row.planeId === id) || (open && rows.length === 0);
  const isMoved = (id: string, { wanted }: CircuitFacts) =>
    moved[id]?.moved === true || (open && choices.backup === undefined && wanted === 'must stay on');
  const isTaken = (id: string) =>
    batteries.some((battery) => battery.place?.wallId === id) || (open && batteries.length === 0);
  return [
    ...wantsOf(jobWants, job, 'facts', '', facts, job),
    ...Object.entries(facts.roof.planes)
      .filter(([id]) => isBuiltOn(id))
      .flatMap(([id, plane]) => wantsOf(planeWants, plane, `facts.roof.planes.${id}`, plane.name, plane, job)),
    ...Object.entries(facts.loads.circuits)
      .filter(([id, one]) => isMoved(id, one))
      .flatMap(([id, one]) => wantsOf(circuitWants, one, `facts.loads.circuits.${id}`, one.name, one, job)),
    ...Object.entries(facts.walls)
      .filter(([id]) => isTaken(id))
      .flatMap(([id, wall]) => wantsOf(wallWants, wall, `facts.walls.${id}`, wall.name, wall, job)),
    ...Object.entries(facts.existing).flatMap(([id, one]) =>
      wantsOf(existingWants, one, `facts.existing.${id}`, one.name, one, job),
    ),
  ];
}

function wantsOf<T>(
  wants: readonly Want<T>[],
  thing: T,
  at: string,
  name: string,
  root: unknown,
  job: Job,
): WantedFact[] {
  const lacked = packFor(job.choices.rules).lacks.map(({ rule }) => rule);
  const idle = (rules: readonly RuleId[]) => rules.length > 0 && rules.every((rule) => lacked.includes(rule));
  return wants
    .filter(({ when, rules }) => (when === undefined || when(thing, job)) && !idle(rules))
    .map((want) => ({
      at: `${at}.${want.at}`,
      what: name === '' ? want.what : `${name}, ${want.what}`,
      rules: want.rules,
      from: want.from,
      present: [want.at, ...(want.or ?? [])].some((path) => known(root, path)),
    }));
}

function known(root: unknown, path: string): boolean {
  const value = path
    .split('.')
    .reduce<unknown>((thing, key) => (thing as Record<string, unknown> | undefined)?.[key], root);
  return value !== undefined && value !== 'unknown' && !isEmptyMap(value);
}

/** A map of things with nothing in it is no answer. */
function isEmptyMap(value: unknown): boolean {
  return typeof value === 'object' && value !== null && !Array.isArray(value) && Object.keys(value).length === 0;
}
