import { expect, test } from 'vitest';
import { hourAt, seenWords } from './seenWords.ts';
import { apartWords, entryWords, headOfSurvey, neededBy, refusalToClose } from './surveyWords.ts';

const hole = {
  kind: 'fact',
  step: 'live',
  path: 'supply.loopOhm',
  what: 'Loop impedance, line to earth',
  rules: ['fault-loop'],
  goesInto: 'sheet 11, where readings are held against these',
  because: 'a breaker trips in time only where the loop is low',
} as const;

test('which rules need it, or which paper or step', () => {
  expect(neededBy(hole)).toBe('The rule on fault loop needs it.');
  expect(neededBy({ ...hole, rules: ['rafters', 'foot-spacing'] })).toBe('Rafters and foot spacing need it.');
  expect(
    neededBy({ rules: [], goesInto: 'sheet 11, the row “Phase rotation”', because: 'motors turn the same way' }),
  ).toBe('Needed for sheet 11, the row “Phase rotation”: motors turn the same way.');
});

test('it does not close with a hole, and says which rule needs the first', () => {
  expect(refusalToClose([hole, { ...hole, path: 'board.busA' }])).toBe(
    'Not closed. Two things are open. The first: Loop impedance, line to earth. The rule on fault loop needs it.',
  );
});

test('two measures apart are said in whole millimetres', () => {
  expect(apartWords({ what: 'slope', firstM: 16.8, secondM: 16.42, apart: 0.023 })).toBe(
    '16\u202f800 and 16\u202f420: more than 1 in 100 apart. Which is right?',
  );
});

test('the head counts what is open; closed, it says who and when', () => {
  expect(headOfSurvey('4 Finch Row', 1, undefined).sentence).toBe('One thing is open at 4 Finch Row.');
  expect(headOfSurvey('4 Finch Row', 0, { by: 'Nia', at: '15 May, 14:20' })).toEqual({
    sentence: 'The survey of 4 Finch Row is closed.',
    quiet: 'Nia, 15 May, 14:20.',
  });
});

test('the hour is the house’s own, with the day where it is not today', () => {
  // Melbourne is ten hours ahead in May
  const now = new Date('2026-05-15T05:00:00Z');
  expect(hourAt('2026-05-15T04:32:00Z', 'Australia/Melbourne', now)).toBe('14:32');
  expect(hourAt('2026-05-13T23:30:00Z', 'Australia/Melbourne', now)).toBe('14 May, 09:30');
  expect(seenWords({ by: 'Nia', at: '2026-05-15T04:32:00Z', with: 'tape 2' }, 'Australia/Melbourne', now)).toBe(
    '14:32, tape 2, Nia',
  );
});

test('the way in counts what is open; closed, it says by whom and what changed since', () => {
  expect(entryWords(7, undefined, 0)).toBe('Go on with the survey: 7 open at the house');
  expect(entryWords(0, undefined, 0)).toBe('Survey: nothing open');
  expect(entryWords(0, 'Nia', 0)).toBe('Survey, closed by Nia');
  expect(entryWords(1, 'Nia', 2)).toBe('Survey, closed by Nia: 2 changed since, 1 open at the house');
});
