import type { Sheet as EquipmentSheet, Job, SheetKind } from '@eaveline/job';
import type { Finding, Line, PackWords, Plan } from '@eaveline/plan';
import type { Conductor, WireColour } from '../drawing/index.ts';
import type { Banner } from '../page/index.ts';
import { counted } from './figures.ts';

/** What a pack is made from. */
export interface PackInputs {
  readonly job: Job;
  readonly plan: Plan;
  /** Instant of drawing, ISO 8601: the pack has no clock of its own. */
  readonly drawnAt: string;
  /** Version of the program that draws. */
  readonly version: string;
}

/** The inputs with what every page asks of them. */
export interface Pack extends PackInputs {
  readonly words: PackWords;
  readonly banners: readonly Banner[];
  readonly fails: readonly Finding[];
  readonly asks: readonly Finding[];
}

export function packOf(inputs: PackInputs): Pack {
  const { plan } = inputs;
  const { findings } = plan.checks;
  return {
    ...inputs,
    words: plan.checks.words,
    banners: bannersOf(plan),
    fails: findings.filter((finding) => finding.state === 'fails'),
    asks: findings.filter((finding) => finding.state === 'ask'),
  };
}

/** Why the pack may not be taken at its word: said at the head of every page. */
export function bannersOf({ invented, checks }: Pick<Plan, 'invented' | 'checks'>): Banner[] {
  const banners: Banner[] = invented ? [{ kind: 'invented', words: 'Invented. Not for construction.' }] : [];
  const { fails, ask } = checks.tally;
  const unconfirmed = checks.unconfirmed.length;
  if (fails + ask + unconfirmed === 0) return banners;
  const words = [
    `${counted(fails, 'figure')} ${fails === 1 ? 'fails' : 'fail'}`,
    `${ask} open`,
    `${counted(unconfirmed, 'limit')} unconfirmed`,
  ];
  return [...banners, { kind: fails > 0 ? 'fails' : 'open', words: `${words.join(', ')}: sheet 08.` }];
}

/**
 * The equipment sheet of an id.
 *
 * @throws {Error} when it is missing or of another kind: `parseJob` refuses such a job, so it is our own mistake.
 */
export function sheetOf<K extends SheetKind>({ job }: Pack, id: string, kind: K): Extract<EquipmentSheet, { kind: K }> {
  const sheet = job.choices.equipment[id];
  if (sheet === undefined || sheet.kind !== kind) {
    throw new Error(`equipment '${id}' should be a ${kind} sheet, found ${sheet?.kind ?? 'nothing'}`);
  }
  return sheet as Extract<EquipmentSheet, { kind: K }>;
}

/** A conductor's size as its own trade names it: `6 mm²`, `10 AWG`. */
export function sizeName(conductor: {
  readonly areaMm2?: number | undefined;
  readonly awg?: string | undefined;
}): string {
  return conductor.awg === undefined ? `${conductor.areaMm2}\u00a0mm²` : `${conductor.awg}\u00a0AWG`;
}

/** Letters of the lines a thing stands on: `L1`, `L1 L2`, `L1–L3` for all three. */
export function lineLetters(lines: readonly Line[]): string {
  return lines.length === 3 ? 'L1–L3' : lines.join(' ');
}

type Colours = Readonly<Record<Exclude<Conductor, 'ALL'>, WireColour>>;

const schemes: Readonly<Record<'iec' | 'au-nz' | 'gb-older' | 'us-120-240' | 'us-120-208', Colours>> = {
  iec: { L1: 'brown', L2: 'black', L3: 'grey', N: 'light-blue', PE: 'green-yellow' },
  'au-nz': { L1: 'red', L2: 'white', L3: 'blue', N: 'black', PE: 'green-yellow' },
  'gb-older': { L1: 'red', L2: 'yellow', L3: 'blue', N: 'black', PE: 'green-yellow' },
  'us-120-240': { L1: 'black', L2: 'red', L3: 'blue', N: 'white', PE: 'green' },
  'us-120-208': { L1: 'black', L2: 'red', L3: 'blue', N: 'white', PE: 'green' },
};
const practice = { 'au-nz': 'iec', 'iec-eu': 'iec', us: 'us-120-240' } as const;

/** Colours of the board's wires as the survey saw them; the region's practice where it did not look. */
export function wireColours({ job }: Pack): Colours {
  return schemes[job.facts.board.wiring ?? practice[job.choices.rules.pack]];
}

/** Where the colours of the drawing come from. */
export function wireColoursFrom({ job }: Pack): string {
  const { wiring, wiringMixed } = job.facts.board;
  if (wiringMixed) return 'The board has mixed colours: go by the letters and prove every conductor.';
  return wiring === undefined
    ? 'Wire colours are the region’s practice; the survey has none of this board.'
    : 'Wire colours as the survey saw them at this board.';
}

/** Conductor and colour a cable of these lines is drawn in. */
export function wireOf(
  pack: Pack,
  lines: readonly Line[],
): { readonly wire: WireColour; readonly conductor: Conductor } {
  const first = lines[0];
  if (first === undefined || lines.length > 1) return { wire: 'black', conductor: 'ALL' };
  return { wire: wireColours(pack)[first], conductor: first };
}
