import { kestrelRise } from '@eaveline/job';
import { describe, expect, test } from 'vitest';
import { meaningOf } from './meaning.ts';
import { placeWords, thereWords } from './placeWords.ts';
import { when } from './when.ts';

const LENGTH = ['choices', 'trunks', 'a', 'homeRun', 'lengthM'];
const CABLE = kestrelRise.choices.trunks.a?.homeRun.cableSheet ?? '';
const AREA = ['facts', 'supply', 'mains', 'conductor', 'areaMm2'];

describe('a place of the job in words', () => {
  test('things go by their names, not by what they are among, the unit belongs to the value', () => {
    expect(placeWords(kestrelRise, LENGTH)).toBe('Trunk A, home run, length');
    expect(placeWords(kestrelRise, AREA)).toBe('supply, mains, conductor, area');
  });
  test.each<[readonly string[], unknown, string]>([
    [LENGTH, 24.5, '24.5 m'],
    [LENGTH, 24, '24 m'],
    [AREA, 16, '16 mm²'],
    [['facts', 'roof', 'planes', 'n', 'pitchDeg'], 22.5, '22.5°'],
    [['facts', 'supply', 'loopOhm'], 0.35, '0.35 Ω'],
    [['facts', 'site', 'recordLowC'], -6, '−6 °C'],
    [['choices', 'trunks', 'a', 'feedDrop'], 5, '5'],
    [['facts', 'board', 'wiringMixed'], true, 'yes'],
    [['choices', 'trunks', 'a', 'lines'], ['L1', 'L2'], 'L1, L2'],
    [['facts', 'network', 'meterNumber'], 'AB-12', '“AB-12”'],
    [LENGTH, undefined, 'nothing'],
    [['choices', 'trunks', 'a', 'homeRun', 'cableSheet'], CABLE, kestrelRise.choices.equipment[CABLE]?.name ?? ''],
  ])('%j: %j is %s', (path, value, words) => {
    expect(thereWords(kestrelRise, path, value)).toBe(words);
  });
});

describe('what an edit means', () => {
  test('a field typed into: the thing, the field, the value', () => {
    const edit = { path: LENGTH, before: 31, after: 24 };
    expect(meaningOf(kestrelRise, 'Home run', [edit])).toBe('Trunk A: home run 24 m');
  });
  test('a sentence says enough by itself; so do words for several places', () => {
    const edit = { path: LENGTH, before: 31, after: 24 };
    expect(meaningOf(kestrelRise, 'Feed it at the fifth drop.', [edit])).toBe('Feed it at the fifth drop');
    expect(meaningOf(kestrelRise, 'moved 3 modules', [edit, edit, edit])).toBe('moved 3 modules');
  });
});

test('the hour of today, the day before that, the year before that', () => {
  const now = new Date(2026, 4, 12, 18, 0);
  expect(when(new Date(2026, 4, 12, 9, 41), now)).toBe('09:41');
  expect(when(new Date(2026, 4, 11, 9, 41), now)).toBe('11 May, 09:41');
  expect(when(new Date(2024, 4, 11, 9, 41), now)).toBe('11 May 2024, 09:41');
  expect(when(undefined, now)).toBe('at first');
});
