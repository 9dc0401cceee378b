import type { Plan } from '@eaveline/plan';
import { expect, test } from 'vitest';
import { headOfSite } from './headOfSite.ts';

const site = (more: object) =>
  ({
    site: {
      missing: [{}, {}],
      survey: { present: 65, wanted: 67, complete: false },
      climate: {
        kind: 'monthly normals',
        name: 'x',
        places: [{ name: 'Melbourne' }, {}, {}],
        distanceKm: 90.4,
        far: false,
        quality: 'half within 3.3 %',
      },
      ...more,
    },
  }) as unknown as Plan;

test('says how much is not known, and which weather it stands on and how far away', () => {
  expect(headOfSite(site({}), 'Kestrel Rise')).toEqual({
    sentence: 'Kestrel Rise. Two facts of the 67 this plan uses are not known.',
    quiet: 'Monthly normals of Melbourne and 2 more, 90 km away. Half within 3.3 %.',
  });
});

test('weather from too far away is said to be so', () => {
  const climate = { kind: 'weather file', name: 'Aurora', places: [], distanceKm: 14800, far: true, quality: 'q' };
  expect(headOfSite(site({ climate, missing: [] }), 'A').quiet).toContain('14800 km away, farther than it may carry');
  expect(headOfSite(site({ missing: [] }), 'A').sentence).toBe('A. Every fact is known.');
});
