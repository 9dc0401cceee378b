import { kestrelRise, larkspurLane, quaysideTerrace } from '@eaveline/job';
import { expect, test } from 'vitest';
import { jobLines } from './jobLines.ts';

test('supply and array in two lines, as the trade names them', () => {
  expect(jobLines(kestrelRise)).toEqual(['Three phase 230/400 V, MEN', '26 modules, part backup']);
  expect(jobLines(quaysideTerrace)[0]).toContain('One phase 230 V');
  expect(jobLines(larkspurLane)[0]).toContain('Split phase 120/240 V');
});
