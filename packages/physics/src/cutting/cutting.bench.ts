import fixture from '../../fixtures/elec-cutting.json' with { type: 'json' };
import { type CutPlan, cutStock } from './cutStock.ts';

const PAPER = 'a published instance, proven while a person lifts the finger from the key';

const published = fixture.instances.map(({ name, binCapacity, sizes, optimumBins }) => ({
  name: `physics/cutStock: ${name}, ${sizes.length} pieces, ${optimumBins} bars`,
  run: () => cutStock({ binCapacity, sizes }),
  check: (plan: CutPlan) => plan.proven && plan.count === optimumBins,
  budget: { ms: 100, why: PAPER },
}));

function lengths(seed: number, pieces: number, shortest: number, longest: number): number[] {
  let state = seed;
  return Array.from({ length: pieces }, () => {
    state = (state * 1103515245 + 12345) % 2147483648;
    return shortest + Math.round((state / 2147483648) * (longest - shortest));
  });
}

/** Rails of six rows: whole bars and an end piece, four of each. */
const roof = lengths(20, 6, 600, 4100).flatMap((end) => [4200, 4200, end, end, end, end]);
/** Forty lengths, no two alike, where the first plans are a bar above the bound. */
const mixed = lengths(7, 40, 300, 2500);
const provenOf = (sizes: readonly number[]) => (plan: CutPlan) =>
  plan.proven && new Set(plan.items.flat()).size === sizes.length;

export const benches = [
  ...published,
  {
    name: 'physics/cutStock: a roof of 36 rail pieces, kerf 3 mm',
    run: () => cutStock({ binCapacity: 4200, sizes: roof, kerf: 3 }),
    check: provenOf(roof),
    budget: { ms: 5, why: 'the kit follows every change of the roof' },
  },
  {
    name: 'physics/cutStock: 40 pieces, no two alike, kerf 3 mm',
    run: () => cutStock({ binCapacity: 4200, sizes: mixed, kerf: 3 }),
    check: provenOf(mixed),
  },
];
