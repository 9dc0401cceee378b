import type { TrunkPlan } from '@eaveline/plan';

/** How many px a trunk drawing gives to its three stretches. */
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
  readonly metres: number;
}

/** Metres along the trunk of each drop, from the first laid. */
export function alongOf({ spans, drops }: Pick<TrunkPlan, 'spans' | 'drops'>): ReadonlyMap<number, number> {
  const along = new Map<number, number>();
  const first = Math.min(...drops.map(({ number }) => number));
  along.set(first, 0);
  for (const { fromDrop, toDrop, lengthM } of [...spans].sort((a, b) => a.fromDrop - b.fromDrop)) {
    const from = along.get(Math.min(fromDrop, toDrop));
    if (from !== undefined) along.set(Math.max(fromDrop, toDrop), from + lengthM);
  }
  return along;
}

/** Lays trunks under one another, all to one scale, their first drops on one line. */
export function unroll(
  trunks: readonly TrunkPlan[],
  { trunkFrom, trunkTo }: Stretches,
): { readonly pxPerM: number; readonly all: readonly Unrolled[] } {
  const lengths = trunks.map((trunk) => Math.max(...alongOf(trunk).values(), 0.1));
  const pxPerM = (trunkTo - trunkFrom) / Math.max(...lengths, 0.1);
  const all = trunks.map((trunk, i) => {
    const x = new Map([...alongOf(trunk)].map(([drop, metres]) => [drop, trunkFrom + metres * pxPerM]));
    return { trunk, x, feedX: x.get(trunk.feedDrop) ?? trunkFrom, metres: lengths[i] as number };
  });
  return { pxPerM, all };
}
