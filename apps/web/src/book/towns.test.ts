import { climatePlaces } from '@eaveline/formats';
import { regions } from '@eaveline/job';
import { expect, test } from 'vitest';
import { clockNear, nearestTown, townNamed, townOf } from './towns.ts';

const towns = climatePlaces.map(townOf);
const named = (text: string) => {
  const town = townNamed(towns, text);
  return typeof town === 'object' ? town.words : town;
};

test('a town is named with or without its brackets, in any case', () => {
  expect(named('Melbourne')).toBe('Melbourne (Essendon), AU');
  expect(named('melbourne, au')).toBe('Melbourne (Essendon), AU');
  expect(named('Perth, AU')).toBe('Perth, AU');
  expect(named('paris')).toBe('Paris (Orly), FR');
});

test('a name that fits none or several is said, and not passed over', () => {
  expect(named('Melborne')).toBe('No town called Melborne is known. Type latitude and longitude.');
  expect(named('Port')).toMatch(/^Pick one: .*Port Hedland, AU/);
  expect(named('')).toBeUndefined();
});

test('every clock of a town is one the rules of its country offer', () => {
  for (const { words, zone, region } of towns)
    if (region !== undefined) expect([words, regions[region].zones]).toEqual([words, expect.arrayContaining([zone])]);
  const of = (text: string) => {
    const town = townNamed(towns, text);
    return typeof town === 'object' ? town.zone : undefined;
  };
  expect(['Perth', 'Adelaide', 'Phoenix', 'Honolulu', 'Lisbon', 'El Paso'].map(of)).toEqual([
    'Australia/Perth',
    'Australia/Adelaide',
    'America/Phoenix',
    'Pacific/Honolulu',
    'Europe/Lisbon',
    'America/Denver',
  ]);
});

test('a place by its coordinates has the clock of the town nearest to it, and it is said which', () => {
  // Fremantle, 32.06 S 115.74 E
  expect(clockNear(towns, { latitudeDeg: -32.06, longitudeDeg: 115.74 }, regions.au)).toEqual({
    zone: 'Australia/Perth',
    words: expect.stringMatching(/^The clock of Perth, AU, \d+ km off\.$/),
  });
  expect(clockNear(towns, undefined, regions.gb).zone).toBe('Europe/London');
  expect(clockNear(towns, { latitudeDeg: 0, longitudeDeg: -30 }, regions.au)).toEqual({
    zone: undefined,
    words: 'No known town is within 300 km. Which clock is it?',
  });
  const berlin = { latitudeDeg: 52.5, longitudeDeg: 13.4 };
  expect(clockNear(towns, berlin, regions.au).words).toBe(
    'The place is near Berlin, DE, and the rules are of Australia. Which clock is it?',
  );
});

test('a degree of latitude is 111.2 km on a sphere of 6 371 km', () => {
  const town = townOf({ name: 'A', country: 'NZ', region: '', latitudeDeg: -41, longitudeDeg: 175, utcOffsetH: 12 });
  // 2π · 6 371 / 360 = 111.195
  expect(nearestTown([town], { latitudeDeg: -42, longitudeDeg: 175 })?.km).toBeCloseTo(111.195, 2);
});
