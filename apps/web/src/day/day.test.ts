import type { DayPlan } from '@eaveline/plan';
import { expect, test } from 'vitest';
import { headOfDay } from './headOfDay.ts';
import { hundredths } from './hundredths.ts';
import { siteNow, taskAt } from './siteNow.ts';
import { barWords, taskOrder } from './taskOrder.ts';

const talk = { id: 'talk', day: 1, startH: 0, doneBefore: false };
const feet = { id: 'feet', day: 1, startH: 3.9, doneBefore: false };
const rails = { id: 'rails', day: 2, startH: 1.8, doneBefore: false };
const edge = { id: 'edge', doneBefore: true };

test('tasks are numbered as they are begun over the days; what is done before comes first', () => {
  const order = taskOrder([rails, feet, edge, talk]);
  expect(order.map(({ number, task: { id } }) => `${number} ${id}`)).toEqual(['1 edge', '2 talk', '3 feet', '4 rails']);
});

test('a bar says as much of a name as it has room for, and never a part of a word', () => {
  const name = 'Feet, flashing, north plane';
  expect(barWords(7, name, 40)).toBe('7 Feet, flashing, north plane');
  expect(barWords(7, name, 20)).toBe('7 Feet, north plane');
  expect(barWords(7, name, 8)).toBe('7 Feet');
  expect(barWords(17, name, 3)).toBe('17');
  expect(barWords(17, name, 1)).toBe('');
});

const job = { date: '2026-05-12', startH: 7, days: 3, zone: 'Australia/Melbourne' };

test('it is the second day at the place, two hours in, while London still has the first', () => {
  // 09:00 in Melbourne on 13 May is 23:00 UTC on 12 May: AEST is ten hours ahead
  expect(siteNow(job, new Date('2026-05-12T23:00:00Z'))).toEqual({ day: 2, atH: 2 });
  expect(siteNow(job, new Date('2026-05-11T10:00:00Z'))).toBeUndefined();
  expect(siteNow(job, new Date('2026-05-15T00:00:00Z'))).toBeUndefined();
  expect(siteNow({ ...job, date: undefined }, new Date('2026-05-12T23:00:00Z'))).toBeUndefined();
});

test('the task at work is the one begun last; in a break there is none', () => {
  const a = { id: 'a', parts: [{ day: 2, startH: 0, endH: 3 }] };
  const b = { id: 'b', parts: [{ day: 2, startH: 1, endH: 2.5 }] };
  expect(taskAt([a, b], { day: 2, atH: 2 })?.id).toBe('b');
  expect(taskAt([a, b], { day: 2, atH: 2.7 })?.id).toBe('a');
  expect(taskAt([a, b], { day: 2, atH: 3 })).toBeUndefined();
});

test('a chance is never rounded up: 99.75 of 100 is 99, and 29 of 100 stays 29 though 0.29 has no exact double', () => {
  expect([0.9975, 0.29, 1, 0].map(hundredths)).toEqual([99, 29, 100, 0]);
});

test('the sheet opens with days and their chance, then what done before would save a day', () => {
  const day = {
    tasks: [{ doneBefore: false }],
    days: 2,
    hours: 14.46,
    crew: { people: 4 },
    wantedChance: 0.8,
    chanceByDays: [
      { days: 1, chance: 0.04 },
      { days: 2, chance: 0.9575 },
    ],
    ahead: [
      { words: 'Site talk', chanceOneDayLess: 0.1 },
      { words: 'Edge protection', chanceOneDayLess: 0.84 },
    ],
    dusk: { date: '2026-05-12', setH: 17.4 },
  } as unknown as DayPlan;
  expect(headOfDay({ day })).toEqual({
    sentence: 'Done in two days, 95 times in 100.',
    quiet: '14.5 hours of work for four people. A day less, done before: Edge protection. Dusk at 17:24.',
  });
  expect(headOfDay({ day: { ...day, refusal: 'Nobody in the crew is an electrician.' } }).sentence).toBe(
    'Nobody in the crew is an electrician.',
  );
});
