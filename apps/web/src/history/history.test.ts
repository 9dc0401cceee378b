import { type Job, kestrelRise } from '@eaveline/job';
import { type Edit, withAt } from '@eaveline/sync/edits';
import { describe, expect, test } from 'vitest';
import { meaningOf } from './meaning.ts';
import { placeWords, thereWords } from './placeWords.ts';
import { when } from './when.ts';

const LENGTH = ['choices', 'trunks', 'a', 'homeRun', 'lengthM'];
const CABLE = kestrelRise.choices.trunks.a?.homeRun.cableSheet ?? '';
const AREA = ['facts', 'supply', 'mains', 'conductor', 'areaMm2'];

function withEdits(job: Job, edits: readonly Edit[]): Job {
  return edits.reduce<unknown>((at, { path, after }) => withAt(at, path, after), job) as Job;
}

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
  const says = (words: string, ...edits: readonly Edit[]) => meaningOf(withEdits(kestrelRise, edits), words, edits);
  const edit = { path: LENGTH, before: 31, after: 24 };
  const SEEN = ['facts', 'provenance', 'roof.planes.west.rafters.spacingMm'];
  const spacing = { path: ['facts', 'roof', 'planes', 'west', 'rafters', 'spacingMm'], before: undefined, after: 600 };

  test('a field typed into: the thing, the field, the value', () => {
    expect(says('Home run', edit)).toBe('Trunk A: home run 24 m');
  });
  test('a cell of a table: its row goes by the name of its thing', () => {
    expect(says('A: home run', edit)).toBe('Trunk A: home run 24 m');
    expect(says('jumper after drop 3: adds', edit)).toBe('Trunk A: jumper after drop 3: adds 24 m');
    const renamed = { path: ['choices', 'trunks', 'a', 'name'], before: 'A', after: 'Garage side' };
    expect(says('A: trunk', renamed)).toBe('A: trunk “Garage side”');
  });
  test('a sentence says enough by itself; so do words for what was done', () => {
    expect(says('Feed it at the fifth drop.', edit)).toBe('Feed it at the fifth drop');
    expect(says('No photograph. The board with its cover off', edit)).toBe(
      'No photograph. The board with its cover off',
    );
    const drop = { path: ['choices', 'trunks', 'a', 'feedDrop'], before: 1, after: 5 };
    expect(says('moved 3 modules', edit, edit, drop)).toBe('moved 3 modules');
    expect(says('pasted 2 cells into trunks', edit, drop)).toBe('pasted 2 cells into trunks');
  });
  test('a fact that a survey found: who found it is part of it', () => {
    const seen = { path: SEEN, before: undefined, after: { by: 'Nia', at: '2026-05-02T09:12:00Z' } };
    expect(says('Rafters, middle to middle', spacing, seen)).toBe('West: rafters, middle to middle 600 mm');
    expect(says('Rafters, middle to middle', seen)).toBe('West: rafters, middle to middle, seen by Nia');
    const closed = { ...seen, after: { by: 'Nia', at: '2026-05-02T09:12:00Z', notMeasured: 'hatch painted shut' } };
    expect(says('Rafters, middle to middle', closed)).toBe(
      'West: rafters, middle to middle, not measured: hatch painted shut',
    );
  });
  test('a few places below one are told each, many by their field alone', () => {
    const at = ['facts', 'supply', 'mains', 'conductor'];
    const area = { path: [...at, 'areaMm2'], before: 16, after: 25 };
    const made = { path: [...at, 'material'], before: 'copper', after: 'aluminium' };
    expect(says('Mains size', area, made)).toBe('Mains size: area 25 mm², material “aluminium”');
    const route = ['choices', 'trunks', 'a', 'homeRun', 'route'];
    const four = ['ambientC', 'circuitsTogether', 'insulationMm', 'runs'].map((name, i) => ({
      path: [...route, name],
      before: undefined,
      after: i + 1,
    }));
    expect(says('How it lies', ...four)).toBe('Trunk A: how it lies');
  });
  test('places of two things have no name in common, and none is made up', () => {
    const ofB = { path: ['choices', 'trunks', 'b', 'homeRun', 'lengthM'], before: 22, after: 24 };
    expect(says('filled 2 cells of trunks', edit, ofB)).toBe('filled 2 cells of trunks');
  });
  test('a row that is added goes by its name', () => {
    const plane = kestrelRise.facts.roof.planes.west;
    const added = {
      path: ['facts', 'roof', 'planes', 'plane-2'],
      before: undefined,
      after: { ...plane, name: 'Lean-to' },
    };
    expect(says('added a plane', added)).toBe('added a plane: Lean-to');
  });
  test('lines picked are told as a list', () => {
    const lines = { path: ['choices', 'trunks', 'a', 'lines'], before: ['L1'], after: ['L1', 'L2'] };
    expect(says('A: lines', lines)).toBe('Trunk A: lines L1, L2');
  });
});

test('the hour of today, the day before that, the year before that', () => {
  const now = new Date(2026, 4, 12, 18, 0);
  expect(when(new Date(2026, 4, 12, 9, 41), now)).toBe('09:41');
  expect(when(new Date(2026, 4, 11, 9, 41), now)).toBe('11 May, 09:41');
  expect(when(new Date(2024, 4, 11, 9, 41), now)).toBe('11 May 2024, 09:41');
  expect(when(undefined, now)).toBe('at first');
});
