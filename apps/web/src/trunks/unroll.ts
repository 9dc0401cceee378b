import type { TrunkPlan } from '@eaveline/plan';
import { pxPerM, SCALES } from '../drawing/scale.ts';

/** Where the stretches of a trunk drawing begin and end, px. */
export interface Stretches {
  readonly streetX: number;
  readonly boardX: number;
  readonly feedX: number;
  readonly trunkFrom: number;
  readonly trunkTo: number;
}

/** A trunk laid out along one line: metres from its first drop, and the px of each drop. */
export interface Unrolled {
  readonly trunk: TrunkPlan;
  /** px of each drop by its number. */
  readonly x: ReadonlyMap<number, number>;
  readonly feedX: number;
}

/** Metres along the trunk of each drop, from the first laid. */
export function alongOf({ spans, drops }: Pick<TrunkPlan, 'spans' | 'drops'>): ReadonlyMap<number, number> {
  const along = new Map<number, number>();
  along.set(Math.min(...drops.map(({ number }) => number)), 0);
  for (const { fromDrop, toDrop, lengthM } of [...spans].sort((a, b) => a.fromDrop - b.fromDrop)) {
    const from = along.get(Math.min(fromDrop, toDrop));
    if (from !== undefined) along.set(Math.max(fromDrop, toDrop), from + lengthM);
  }
  return along;
}

/** Lays trunks under one another, all to one scale of the drawing scales, their first drops on one line. */
export function unroll(
  trunks: readonly TrunkPlan[],
  { trunkFrom, trunkTo }: Stretches,
): { readonly scale: number; readonly all: readonly Unrolled[] } {
  const longest = Math.max(...trunks.flatMap((trunk) => [...alongOf(trunk).values()]));
  const scale = SCALES.find((each) => longest * pxPerM(each) <= trunkTo - trunkFrom) ?? 500;
  const all = trunks.map((trunk) => {
    const x = new Map([...alongOf(trunk)].map(([drop, metres]) => [drop, trunkFrom + metres * pxPerM(scale)]));
    return { trunk, x, feedX: x.get(trunk.feedDrop) ?? trunkFrom };
  });
  return { scale, all };
}
