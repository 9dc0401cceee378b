import { expect, test } from 'vitest';
import { sourceWords } from './sourceWords.ts';

test('a path into the job is said in words, a published source stays as it is', () => {
  expect(sourceWords('facts.loads.circuits')).toBe('the facts of the job');
  expect(sourceWords('NEC 310.16, 310.15(B)(1)')).toBe('NEC 310.16, 310.15(B)(1)');
  expect(sourceWords('climate.onebuilding.org')).toBe('climate.onebuilding.org');
});
