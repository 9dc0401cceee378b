import type { Rail } from './types.ts';

/** Room left for the rail to grow at an expansion break, mm: common practice, no source. */
export const EXPANSION_GAP_MM = 20;

/** A stretch of a rail without an expansion break, mm from the rail's left end. */
export interface RailRun {
  readonly fromMm: number;
  readonly toMm: number;
}

/** A rail cut into runs that may grow with the heat. */
export interface BrokenRail {
  readonly runs: readonly RailRun[];
  readonly breaksAtMm: readonly number[];
  /** False where the modules leave no gap to break in, and the rail stays longer than its sheet allows. */
  readonly keepsLongest: boolean;
}

/**
 * Breaks a rail between modules, so that none lies across a break: the fewest breaks, each at the gap nearest to an
 * even division. A rail whose sheet gives no longest run stays whole.
 */
export function railRuns(
  rail: Pick<Rail, 'lengthMm' | 'clamps' | 'fromU'>,
  longestRunMm = Number.POSITIVE_INFINITY,
): BrokenRail {
  const lengthMm = Math.round(rail.lengthMm);
  const gapsMm = rail.clamps.filter(({ kind }) => kind === 'mid').map(({ u }) => Math.round(1000 * (u - rail.fromU)));
  for (let parts = Math.max(1, Math.ceil(lengthMm / longestRunMm)); parts <= gapsMm.length + 1; parts++) {
    const breaksAtMm = evenly(lengthMm, parts, gapsMm);
    const runs = runsBetween(lengthMm, breaksAtMm);
    if (runs.every(({ fromMm, toMm }) => toMm - fromMm <= longestRunMm)) {
      return { runs, breaksAtMm, keepsLongest: true };
    }
  }
  return { runs: [{ fromMm: 0, toMm: lengthMm }], breaksAtMm: [], keepsLongest: lengthMm <= longestRunMm };
}

function evenly(lengthMm: number, parts: number, gapsMm: readonly number[]): number[] {
  const breaks = new Set<number>();
  for (let k = 1; k < parts; k++) {
    const target = (lengthMm * k) / parts;
    breaks.add(gapsMm.reduce((best, at) => (Math.abs(at - target) < Math.abs(best - target) ? at : best)));
  }
  return [...breaks].sort((a, b) => a - b);
}

function runsBetween(lengthMm: number, breaksAtMm: readonly number[]): RailRun[] {
  const half = EXPANSION_GAP_MM / 2;
  const starts = [0, ...breaksAtMm.map((at) => at + half)];
  const ends = [...breaksAtMm.map((at) => at - half), lengthMm];
  return starts.map((fromMm, k) => ({ fromMm, toMm: ends[k] as number }));
}
