import type { TrunkPlan, TrunkSpan } from '@eaveline/plan';
import { expect, test } from 'vitest';
import { alongOf, unroll } from './unroll.ts';

const span = (fromDrop: number, toDrop: number, lengthM: number) => ({ fromDrop, toDrop, lengthM }) as TrunkSpan;
const drops = [1, 2, 3, 4].map((number) => ({ number })) as unknown as TrunkPlan['drops'];

test('metres add up from the first drop, over a jumper too', () => {
  // 1.20 m a drop; the jumper between 2 and 3 adds 0.85 m
  const along = alongOf({ drops, spans: [span(1, 2, 1.2), span(2, 3, 2.05), span(3, 4, 1.2)] });
  expect([...along.values()]).toEqual([0, 1.2, 3.25, 4.45]);
});

test('all trunks lie to the first scale at which the longest fits its room', () => {
  const long = { drops, spans: [span(1, 2, 2), span(2, 3, 2), span(3, 4, 2)], feedDrop: 2 } as unknown as TrunkPlan;
  const short = { drops: drops.slice(0, 2), spans: [span(1, 2, 3)], feedDrop: 1 } as unknown as TrunkPlan;
  // 6 m in 300 px: 1:75 gives 50.4 px a metre and 302 px, too much; 1:100 gives 37.8 and fits
  const { scale, all } = unroll([long, short], { streetX: 0, boardX: 0, feedX: 0, trunkFrom: 100, trunkTo: 400 });
  expect(scale).toBe(100);
  expect(all[0]?.x.get(4)).toBeCloseTo(100 + 6 * 37.795, 1);
  expect(all[1]?.x.get(2)).toBeCloseTo(100 + 3 * 37.795, 1);
  expect(all[0]?.feedX).toBeCloseTo(100 + 2 * 37.795, 1);
});
