import type { PlacedModule, RoofPlane } from '@eaveline/plan';
import { expect, test } from 'vitest';
import { breachWords } from './breachWords.ts';

const edge = (side: 'eave' | 'left', setbackM: number) =>
  ({ side, setbackM, kind: 'eave', from: [0, 0], to: [1, 0], lengthM: 1 }) as const;
const plane = { edges: [edge('eave', 0.3), edge('left', 0.25)] } as unknown as RoofPlane;
const module = (clear: PlacedModule['clear'], more: Partial<PlacedModule> = {}) => ({ clear, ...more }) as PlacedModule;

test('a module 210 mm from an eave that wants 300 is a breach, and says both figures', () => {
  expect(breachWords(module({ eave: 0.21, ridge: 1, side: 1 }), plane)).toBe('210 mm from the eave of 300');
});

test('a module that reaches 210 mm past the eave says so, and no size less than nothing', () => {
  expect(breachWords(module({ eave: -0.21, ridge: 1, side: 1 }), plane)).toBe(
    '210 mm over the eave, 300 kept free inside it',
  );
});

test('one exactly at its setback is none', () => {
  expect(breachWords(module({ eave: 0.3, ridge: 1, side: 0.25 }), plane)).toBeUndefined();
});

test('a clear ring counts too', () => {
  const near = module({ eave: 1, ridge: 1, side: 1 }, { obstruction: { id: 'flue', name: 'flue', roomM: -0.04 } });
  expect(breachWords(near, plane)).toBe('40.0 mm inside the clear ring of flue'.replace('40.0', '40'));
});
