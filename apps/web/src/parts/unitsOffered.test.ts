import { readQuantity } from '@eaveline/job';
import { describe, expect, test } from 'vitest';
import { unitsOffered, withMinusTurned, withUnitTyped } from './unitsOffered.ts';

const FIELDS = [
  'm',
  'mm',
  'mm²',
  'A',
  'kA',
  'V',
  'VA',
  'W',
  'kW',
  'kWh',
  'Ω',
  'MΩ',
  '°C',
  '°',
  'm/s',
  'kPa',
  'h',
  'min',
  's',
];

test.each(FIELDS)('every unit offered for a field kept in %s is read there', (field) => {
  const offered = unitsOffered(field);
  expect(offered[0]).toBe(field);
  for (const unit of offered)
    expect(readQuantity(withUnitTyped('6', unit, field), field), unit).toMatchObject({ kind: 'value' });
});

test('a count of pieces has no unit to choose', () => {
  expect(unitsOffered('pieces')).toEqual([]);
  expect(unitsOffered('')).toEqual([]);
});

describe('a unit pressed', () => {
  test('stands behind the figures, with room for more', () => {
    expect(withUnitTyped('12', 'ft', 'm')).toBe('12 ft ');
    expect(withUnitTyped('6 ft 4', 'in', 'm')).toBe('6 ft 4 in ');
  });
  test('gives way to another one', () => {
    expect(withUnitTyped('12 ft ', 'm', 'm')).toBe('12 m ');
    expect(withUnitTyped('350mΩ', 'Ω', 'Ω')).toBe('350 Ω ');
    expect(withUnitTyped('6 mm² ', 'AWG', 'mm²')).toBe('6 AWG ');
    expect(withUnitTyped('45 m/s', 'mph', 'm/s')).toBe('45 mph ');
    expect(withUnitTyped('50 %', 'in 12', '°')).toBe('50 in 12 ');
  });
  test('says nothing where no figure stands yet', () => {
    expect(withUnitTyped('', 'ft', 'm')).toBe('');
  });
});

test('a minus is put before and taken away', () => {
  expect(withMinusTurned('4')).toBe('\u22124');
  expect(withMinusTurned('\u22124')).toBe('4');
  expect(withMinusTurned('-4')).toBe('4');
});
