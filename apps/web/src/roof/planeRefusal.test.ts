import { demoJobs } from '@eaveline/job';
import { expect, test } from 'vitest';
import { planeRefusal } from './planeRefusal.ts';

// Sums by hand: past the left end by −ridge from, past the right end by ridge to − eave.
const hip = {
  eaveLengthM: 12,
  slopeLengthM: 4.4,
  ridgeFromM: 4,
  ridgeToM: 8,
  edges: { left: 'hip', right: 'hip' },
};
const gable = { ...hip, ridgeFromM: 0, ridgeToM: 12, edges: { left: 'verge', right: 'verge' } };

test('a hip plane whose eave is made 6 m under a ridge that ends at 8 m: 2 m past it, set the ridge first', () => {
  const why = planeRefusal({ ...hip, eaveLengthM: 6 });
  expect(why?.found.replaceAll(/\s/g, ' ')).toBe(
    'The ridge would reach 2 000 mm past the right end of the eave, and a hip leans in',
  );
  expect(why?.mend).toBe('Lengthen the eave or draw in the ridge first, or call the right edge a valley.');
  // the way out: the ridge first, then the eave; and as a valley it stands
  expect(planeRefusal({ ...hip, ridgeToM: 5 })).toBeUndefined();
  expect(planeRefusal({ ...hip, ridgeToM: 5, eaveLengthM: 6 })).toBeUndefined();
  expect(planeRefusal({ ...hip, eaveLengthM: 6, edges: { left: 'hip', right: 'valley' } })).toBeUndefined();
});

test('a hip on the left with the ridge 500 mm outside', () => {
  expect(planeRefusal({ ...hip, ridgeFromM: -0.5 })?.found.replaceAll(/\s/g, ' ')).toContain(
    '500 mm past the left end',
  );
});

test('a gable whose eave is made 3 m: the verge would lean 9 m over 4.4 m of slope; 4.4 m, at 45°, is let be', () => {
  expect(planeRefusal({ ...gable, eaveLengthM: 3 })?.found.replaceAll(/\s/g, ' ')).toBe(
    'The ridge would reach 9 000 mm past the right end of the eave, further than the slope of 4 400 mm is long',
  );
  expect(planeRefusal({ ...gable, eaveLengthM: 7.6 })).toBeUndefined();
});

test('a ridge that ends before it begins is refused; one of no length is a point, and closes', () => {
  expect(planeRefusal({ ...gable, ridgeFromM: 8, ridgeToM: 5 })?.found.replaceAll(/\s/g, ' ')).toBe(
    'The ridge would begin at 8 000 mm and end at 5 000 mm',
  );
  expect(planeRefusal({ ...hip, ridgeFromM: 6, ridgeToM: 6 })).toBeUndefined();
});

test('every plane of the demo houses closes', () => {
  const planes = demoJobs.flatMap(({ facts }) => Object.values(facts.roof.planes));
  expect(planes.length).toBeGreaterThan(4);
  for (const plane of planes) expect(planeRefusal(plane), plane.name).toBeUndefined();
});

test('a plane that is still being filled in, or taken out, is not judged', () => {
  expect(planeRefusal(undefined)).toBeUndefined();
  expect(planeRefusal({ eaveLengthM: 6, ridgeToM: 8 })).toBeUndefined();
});
