import type { DayTask } from './types.ts';

/** Hours of one piece of a kind of work. All rows: common practice, no source; the firm's own records replace them. */
export interface Rate {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  /** What one piece is: `a foot under tile`. */
  readonly per: string;
}

const rate = (low: number, likely: number, high: number, per: string, over = 1): Rate => ({
  low: low / over,
  likely: likely / over,
  high: high / over,
  per,
});

/**
 * Rates behind the tasks. The trade's table is for a house of 18 modules on two planes with 36 feet, about 42 m of
 * rail, two trunks and two home runs: dividing by those gives a rate for one piece.
 */
export const RATES = {
  talk: rate(0.3, 0.5, 0.8, 'the job'),
  edge: rate(1, 2, 4, 'a plane', 2),
  isolate: rate(0.3, 0.5, 0.8, 'the board'),
  setOut: rate(0.5, 0.8, 1.5, 'a plane', 2),
  footTile: rate(4, 6, 9, 'a foot under tile or slate', 36),
  footOpen: rate(1.5, 2, 3, 'a foot on metal or shingle', 36),
  rail: rate(1, 1.5, 2.5, 'a metre of rail', 42),
  unit: rate(0.8, 1.2, 2, 'a unit', 18),
  drop: rate(0.8, 1.2, 2, 'a drop', 18),
  homeRun: rate(1.5, 2.5, 5, 'a home run', 2),
  deadTrunk: rate(0.3, 0.5, 0.8, 'a trunk', 2),
  module: rate(2.5, 4, 6, 'a module', 18),
  board: rate(2, 3, 6, 'the board'),
  battery: rate(2, 3, 5, 'a battery'),
  changeover: rate(2, 4, 8, 'the changeover'),
  labels: rate(0.3, 0.5, 1, 'the job'),
  deadAll: rate(0.5, 1, 1.5, 'the job'),
  powerUp: rate(0.5, 0.8, 1.5, 'the job'),
  liveTests: rate(0.5, 1, 1.5, 'the job'),
  backupTest: rate(0.3, 0.5, 1, 'the job'),
  network: rate(0.3, 0.5, 1, 'the job'),
  strip: rate(0.5, 0.8, 1, 'the job'),
  handover: rate(0.5, 0.8, 1, 'the job'),
} as const satisfies Record<string, Rate>;

/** Words of a task that do not hang on the job. */
export interface TaskWords {
  readonly name: string;
  readonly place: DayTask['place'];
  readonly who: string;
  readonly electricians: number;
  readonly people: number;
  readonly splittable: boolean;
  readonly hold?: string;
  readonly caution?: string;
  readonly steps: readonly string[];
}

const E = 'an electrician';
const TWO = 'two';

/** Who, where, what to watch. Holds and cautions are the usual ones; the lead decides on the day. */
export const WORDS = {
  talk: {
    name: 'Site talk, photographs before',
    place: 'all',
    who: 'everybody',
    electricians: 1,
    people: 1,
    splittable: false,
    caution: 'Who is in charge, nearest hospital, exclusion under the eaves.',
    steps: ['Weather, access, asbestos', 'Permits to work', 'Photographs before'],
  },
  edge: {
    name: 'Edge protection, anchors, hoist',
    place: 'roof',
    who: TWO,
    electricians: 0,
    people: 2,
    splittable: true,
    hold: 'H1 lead inspects the edge',
    caution: 'Nobody works outside the guard. Ladder tied, 1 in 4, a metre past.',
    steps: ['Guard rails', 'Anchors', 'Hoist tried'],
  },
  isolate: {
    name: 'Isolate, lock, prove dead',
    place: 'board',
    who: E,
    electricians: 1,
    people: 1,
    splittable: false,
    hold: 'H2 dead proved, readings within 10 % of the survey',
    caution: 'Main off is not dead: the service side stays live.',
    steps: ['Volts, loop, rotation against the survey', 'Lock on every source', 'Prove, test, prove again'],
  },
  setOut: {
    name: 'Set out, find rafters',
    place: 'roof',
    who: TWO,
    electricians: 0,
    people: 2,
    splittable: false,
    caution: 'Metal roof and gutters may be live from a fault: main off first.',
    steps: ['String lines within 10 mm of the drawing', 'Rafters marked'],
  },
  feet: {
    name: 'Feet, flashing',
    place: 'roof',
    who: TWO,
    electricians: 0,
    people: 2,
    splittable: true,
    hold: 'H3 look in the attic, torque on one in ten',
    caution: 'Scan before drilling. Eyes, ears and dust.',
    steps: ['Pilot holes seen in timber', 'Tile ground, not bearing', 'Sealed'],
  },
  rails: {
    name: 'Rails, splices, bonding',
    place: 'roof',
    who: TWO,
    electricians: 0,
    people: 2,
    splittable: true,
    steps: ['String line, 10 mm in the row', 'Splices off the middle of spans', 'A bond over every splice'],
  },
  units: {
    name: 'Units on the rails, scan',
    place: 'roof',
    who: TWO,
    electricians: 0,
    people: 2,
    splittable: true,
    hold: 'H4 map complete, rows photographed',
    steps: ['Clear of clamps and feet', 'Serial scanned where it sits'],
  },
  trunk: {
    name: 'Trunk laid, clipped, capped',
    place: 'roof',
    who: TWO,
    electricians: 0,
    people: 2,
    splittable: true,
    caution: 'Lock the breaker before anyone touches a drop. Prove the trunk dead at the roof box.',
    steps: ['Drops clicked and tugged', 'Caps counted', 'Nothing on the tiles'],
  },
  homeRun: {
    name: 'Home run',
    place: 'board',
    who: 'an electrician and one',
    electricians: 1,
    people: 2,
    splittable: true,
    caution: 'Lighting circuits in the roof space off before anyone crawls.',
    steps: ['Penetrations sealed', 'Clear of insulation where drawn'],
  },
  deadTrunk: {
    name: 'Dead tests of the trunk',
    place: 'roof',
    who: E,
    electricians: 1,
    people: 1,
    splittable: false,
    hold: 'H5 before modules cover it',
    caution: 'Prove dead before the meter goes on.',
    steps: ['Earth, line and earth, insulation', 'Caps photographed'],
  },
  modules: {
    name: 'Modules up and clamped',
    place: 'roof',
    who: TWO,
    electricians: 0,
    people: 2,
    splittable: true,
    caution: 'No module in hand above 10 m/s. Live in light: never open a plug under load.',
    steps: ['Plugs clicked', 'Leads off the roof', 'Torque on one clamp in ten'],
  },
  board: {
    name: 'Board: ways, breakers, meter',
    place: 'board',
    who: E,
    electricians: 1,
    people: 1,
    splittable: false,
    caution: 'Neutral first on, last off.',
    steps: ['Breakers and devices', 'Meter and current transformers', 'Torque sheet, witness marks'],
  },
  battery: {
    name: 'Battery: barrier, hang, wire',
    place: 'battery',
    who: 'an electrician and one',
    electricians: 1,
    people: 2,
    splittable: true,
    caution: 'Cannot be made dead. No jewellery, insulated tools, last cover on before energy.',
    steps: ['Distances photographed', 'Hung and fixed', 'Wired, torque'],
  },
  changeover: {
    name: 'Changeover, circuits moved',
    place: 'board',
    who: E,
    electricians: 1,
    people: 1,
    splittable: false,
    caution: 'Two or three sources. Isolate all, lock all, prove each pair.',
    steps: ['Neutral of each circuit traced before it moves', 'List signed by the customer'],
  },
  labels: {
    name: 'Labels',
    place: 'board',
    who: E,
    electricians: 1,
    people: 1,
    splittable: false,
    steps: ['List ticked'],
  },
  deadAll: {
    name: 'Full dead tests',
    place: 'board',
    who: E,
    electricians: 1,
    people: 1,
    splittable: false,
    hold: 'H6 no energy before this',
    caution: 'Every source locked.',
    steps: ['The dead sheet, each line'],
  },
  powerUp: {
    name: 'Power up, profile',
    place: 'board',
    who: E,
    electricians: 1,
    people: 1,
    splittable: false,
    hold: 'H7 profile read back',
    caution: 'Nothing exports before the profile is set and read back.',
    steps: ['Gateway and meter', 'Profile', 'One trunk at a time'],
  },
  liveTests: {
    name: 'Live tests',
    place: 'board',
    who: E,
    electricians: 1,
    people: 1,
    splittable: false,
    steps: ['Current transformers by kettle', 'Export limit', 'Rise with everything on'],
  },
  backupTest: {
    name: 'Backup test',
    place: 'board',
    who: 'an electrician and the customer',
    electricians: 1,
    people: 1,
    splittable: false,
    hold: 'H8 residual devices tried in island',
    caution: 'House live with the main open. One person at the board.',
    steps: ['Main opened', 'Worst motor', 'Residual devices in island'],
  },
  network: {
    name: 'Internet, network test',
    place: 'board',
    who: E,
    electricians: 1,
    people: 1,
    splittable: false,
    steps: ['Number from the network'],
  },
  strip: {
    name: 'Strip, sweep, photographs after',
    place: 'roof',
    who: TWO,
    electricians: 0,
    people: 2,
    splittable: true,
    caution: 'Last off the roof counts people and tools.',
    steps: ['Gutters clear', 'Guard down last'],
  },
  handover: {
    name: 'Handover',
    place: 'ground',
    who: 'an electrician and the customer',
    electricians: 1,
    people: 1,
    splittable: false,
    steps: ['Customer does the shutdown drill', 'Papers signed'],
  },
} as const satisfies Record<string, TaskWords>;

export type TaskKind = keyof typeof WORDS;
