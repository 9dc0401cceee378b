import type { Plan } from '@eaveline/plan';
import { expect, test } from 'vitest';
import { moduleUnderSky } from './moduleUnderSky.ts';

const plan = {
  array: { modules: ['a', 'b', 'c'].map((id) => ({ id, name: id.toUpperCase() })) },
  energy: {
    modules: [
      { moduleId: 'a', shadeLoss: 0 },
      { moduleId: 'b', shadeLoss: 0.0325 },
      { moduleId: 'c', shadeLoss: 0.01 },
    ],
  },
} as unknown as Plan;

test('the sky is drawn over the module selected, else over the one that loses most', () => {
  expect(moduleUnderSky(plan, 'energy:c').module?.name).toBe('C');
  expect(moduleUnderSky(plan, 'month:3')).toMatchObject({
    module: { name: 'B' },
    words: 'near objects take 3.3 % of its light',
  });
  expect(moduleUnderSky(plan, 'energy:a').words).toBe('nothing near takes any of its light');
});

test('without modules there is no sky to draw', () => {
  const none = { array: { modules: [] }, energy: { modules: [] } } as unknown as Plan;
  expect(moduleUnderSky(none, undefined).module).toBeUndefined();
});
