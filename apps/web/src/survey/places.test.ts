import { kestrelRise } from '@eaveline/job';
import { surveyStanding } from '@eaveline/plan';
import { expect, test } from 'vitest';
import { goesOnAt, placeOf } from './places.ts';

const standing = surveyStanding(kestrelRise);

test('an address leads to a step and knows the one after it', () => {
  const board = placeOf('board', standing);
  expect(board).toMatchObject({ kind: 'step', step: { name: 'Board' }, after: { name: 'Measured live' } });
  expect(placeOf('records', standing)).toMatchObject({ kind: 'step', after: undefined });
  expect(placeOf(undefined, standing).kind).toBe('start');
  expect(placeOf('close', standing).kind).toBe('close');
});

test('a list’s path with `.new` is a draft on the step of its list, inside a thing too', () => {
  expect(placeOf('roof.planes.new', standing)).toMatchObject({ kind: 'draft', on: { id: 'roof' } });
  const [wall] = Object.keys(kestrelRise.facts.walls);
  expect(placeOf(`walls.${wall}.items.new`, standing)).toMatchObject({ kind: 'draft', on: { id: `walls.${wall}` } });
});

test('an address nobody knows is lost', () => {
  for (const address of ['attics', 'roof.planes.moon', 'supply.new', 'new']) {
    expect(placeOf(address, standing).kind, address).toBe('lost');
  }
});

test('the survey goes on where the first thing is open', () => {
  // Kestrel Rise was surveyed but for the spacing of its west rafters
  expect(goesOnAt(standing).id).toBe('attic.west');
  expect(goesOnAt({ ...standing, holes: [] }).id).toBe('close');
});
