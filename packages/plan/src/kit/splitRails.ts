import type { RailSheet } from '@eaveline/job';
import { Refusal, splitLines } from '@eaveline/physics';
import { type BrokenRail, type RailRun, railRuns } from '../array/railRuns.ts';
import type { Rail } from '../array/types.ts';

/** Shortest piece of rail worth having, mm; and how far apart the splices of two rails side by side stay. Common practice. */
export const LEAST_PIECE_MM = 300;
export const STAGGER_MM = 300;
/** A splice sits between these shares of a span from a foot: off the foot, and where the bending is small. Practice. */
const SPLICE_FROM = 0.15;
const SPLICE_TO = 0.33;

export interface RailPiece {
  readonly railId: string;
  readonly railName: string;
  readonly lengthMm: number;
}

export interface RailSplice {
  readonly railId: string;
  readonly atMm: number;
  readonly clear: boolean;
}

/** All rails broken and split into pieces the stock can give. */
export interface SplitRails {
  readonly pieces: readonly RailPiece[];
  readonly splices: readonly RailSplice[];
  readonly breaks: readonly { readonly railId: string; readonly atMm: number }[];
  /** Names of rails that stay longer than their sheet allows. */
  readonly tooLong: readonly string[];
}

/**
 * Every rail from whole bars: expansion breaks first, then splices in each run that is longer than the stock.
 *
 * A splice goes as far out as the stock reaches, off the middle of its span and off the feet, and not beside a splice of
 * the rail next to it up the slope. Where feet and neighbours leave no such place the neighbours are given up first, then
 * the place in the span, and the splice is marked.
 */
export function splitRails(rails: readonly Rail[], sheet: Pick<RailSheet, 'stockMm' | 'longestRunMm'>): SplitRails {
  const pieces: RailPiece[] = [];
  const splices: (RailSplice & { readonly u: number })[] = [];
  const breaks: { railId: string; atMm: number }[] = [];
  const tooLong: string[] = [];
  const upTheSlope = [...rails].sort((a, b) =>
    a.planeId === b.planeId ? a.v - b.v || a.fromU - b.fromU : a.planeId < b.planeId ? -1 : 1,
  );
  upTheSlope.forEach((rail, k) => {
    const below = upTheSlope[k - 1];
    const beside =
      below?.planeId === rail.planeId ? splices.filter(({ railId }) => railId === below.id).map(({ u }) => u) : [];
    const broken: BrokenRail = railRuns(rail, sheet.longestRunMm);
    if (!broken.keepsLongest) tooLong.push(rail.name);
    breaks.push(...broken.breaksAtMm.map((atMm) => ({ railId: rail.id, atMm })));
    for (const run of broken.runs) {
      const { atMm, clear } = splicesOf(rail, run, beside, sheet.stockMm);
      splices.push(...atMm.map((at) => ({ railId: rail.id, atMm: at, clear, u: rail.fromU + at / 1000 })));
      const ends = [run.fromMm, ...atMm, run.toMm];
      const lengths = ends.slice(1).map((end, n) => end - (ends[n] as number));
      pieces.push(...lengths.map((lengthMm) => ({ railId: rail.id, railName: rail.name, lengthMm })));
    }
  });
  return { pieces, splices: splices.map(({ u, ...splice }) => splice), breaks, tooLong };
}

type Zone = readonly [fromMm: number, toMm: number];

/** Places of the splices of one run, whole mm from the rail's left end. */
function splicesOf(rail: Rail, run: RailRun, besideU: readonly number[], stockMm: number) {
  const lengthMm = run.toMm - run.fromMm;
  if (lengthMm <= stockMm) return { atMm: [], clear: true };
  const spans = spliceZones(rail, run);
  const besideMm = besideU.map((u) => 1000 * (u - rail.fromU) - run.fromMm);
  const tries: readonly (readonly Zone[] | undefined)[] = [awayFrom(spans, besideMm), spans, undefined];
  for (const [k, zonesMm] of tries.entries()) {
    const split = trySplit({ lengthMm, ...(zonesMm ? { zonesMm } : {}) }, Math.floor(stockMm));
    if (split) return { atMm: wholeMm(split, lengthMm, stockMm).map((at) => at + run.fromMm), clear: k === 0 };
  }
  throw new Error(`rail '${rail.id}' of ${lengthMm} mm cannot be made from bars of ${stockMm} mm`);
}

/** Splices on whole millimetres. Rounding down may leave the piece beyond a splice a hair too long: it gets it back. */
function wholeMm(atMm: readonly number[], lengthMm: number, stockMm: number): number[] {
  const whole = atMm.map(Math.floor);
  for (let k = whole.length - 1; k >= 0; k--) {
    const next = whole[k + 1] ?? lengthMm;
    whole[k] = Math.max(whole[k] as number, next - Math.floor(stockMm));
  }
  return whole;
}

/** The stretches of each span where a splice may sit, mm from the start of the run. */
function spliceZones(rail: Rail, run: RailRun): Zone[] {
  const feet = rail.feet.map(({ u }) => 1000 * (u - rail.fromU) - run.fromMm);
  return feet.slice(1).flatMap((to, k): Zone[] => {
    const from = feet[k] as number;
    const span = to - from;
    return [
      [from + SPLICE_FROM * span, from + SPLICE_TO * span],
      [to - SPLICE_TO * span, to - SPLICE_FROM * span],
    ];
  });
}

/** Zones less what lies within the stagger of a place. */
function awayFrom(zones: readonly Zone[], placesMm: readonly number[]): Zone[] {
  return placesMm.reduce<readonly Zone[]>(
    (left, at) =>
      left.flatMap(([from, to]): Zone[] =>
        (
          [
            [from, Math.min(to, at - STAGGER_MM)],
            [Math.max(from, at + STAGGER_MM), to],
          ] as const
        ).filter(([a, b]) => b > a),
      ),
    zones,
  ) as Zone[];
}

/** Splices of one run, or none where the zones are out of reach of each other. */
function trySplit(line: { lengthMm: number; zonesMm?: readonly Zone[] }, stockMm: number): number[] | undefined {
  try {
    return [...(splitLines([line], { stockMm, minimumPieceMm: LEAST_PIECE_MM })[0]?.splicesAtMm ?? [])];
  } catch (refusal) {
    if (refusal instanceof Refusal && refusal.facts.code === 'no-solution') return undefined;
    throw refusal;
  }
}
