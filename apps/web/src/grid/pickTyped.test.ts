import { practiceYard, surveyLists } from '@eaveline/job';
import { expect, test } from 'vitest';
import type { Option } from './column.ts';
import { asAsked, sheetsOfKind } from './options.ts';
import { pickTyped } from './pickTyped.ts';

const cables = sheetsOfKind(practiceYard, 'cable');
const read = (options: readonly Option[], text: string) => {
  const picked = pickTyped({ options }, text);
  return 'option' in picked ? picked.option.value : `${picked.why.found}. ${picked.why.mend}`;
};

test('a cable is named by its area, however the unit is written', () => {
  expect(cables.map(({ words }) => words)).toEqual([
    '2.5 mm² line, neutral, earth',
    '4 mm² line, neutral, earth',
    '10 mm² line, neutral, earth',
  ]);
  for (const text of ['4 mm2', '4mm²', '4 mm²', '4 sq mm', '4', '4 mm² l']) expect(read(cables, text)).toBe('cable-4');
});

test('a gauge is never an area: 10 AWG is 5.26 mm², and no 10 mm²', () => {
  expect(read(cables, '10 AWG')).toBe(
    '10 AWG is not offered here. Type one of 2.5 mm² line, neutral, earth, 4 mm² line, neutral, earth, 10 mm² line, neutral, earth.',
  );
  expect(read(cables, '16mm2')).toMatch(/^16mm2 is not offered here\. Type one of 2\.5 mm²/);
});

test('where both systems are offered each is found by its own', () => {
  const both: Option[] = [
    { value: 'ten', words: '10 mm² cable', size: { areaMm2: 10 } },
    { value: 'gauge', words: '10 AWG cable', size: { awg: '10' } },
    { value: 'eight', words: '8 AWG cable', size: { awg: '8' } },
  ];
  expect(read(both, '10 AWG')).toBe('gauge');
  expect(read(both, '#8')).toBe('eight');
  expect(read(both, '10 mm2')).toBe('ten');
  expect(read(both, '5.26 mm2')).toMatch(/^5\.26 mm2 is not offered here/);
});

test('of two cables of one size neither is taken', () => {
  const two: Option[] = [
    { value: 'three', words: '10 mm² three cores', size: { areaMm2: 10 } },
    { value: 'five', words: '10 mm² five cores', size: { areaMm2: 10 } },
  ];
  expect(read(two, '10 mm2')).toBe('10 mm2 could be two here. Type one of 10 mm² three cores, 10 mm² five cores.');
  expect(read(two, '10 mm2 f')).toBe('five');
});

test('coverings are offered in the words of the survey; what the job keeps is read as well', () => {
  const coverings = asAsked(surveyLists.planes.questions, 'covering');
  expect(read(coverings, 'Concrete tile')).toBe('concrete-tile');
  expect(read(coverings, 'clay-tile')).toBe('clay-tile');
  expect(read(coverings, 'thatch')).toBe(
    'thatch is not offered here. Type one of concrete tile, clay tile, slate, asphalt shingle, metal sheet.',
  );
});
