import { expect, test } from 'vitest';
import { missingPackages, storeAdvice } from './install.mjs';
import { nodeTooOld } from './nodeVersion.mjs';

const lock = {
  '': { version: '0.1.0' },
  'apps/cli': { version: '0.1.0' },
  'node_modules/@eaveline/cli': { link: true },
  'node_modules/rail': { version: '1.2.0' },
  'apps/cli/node_modules/rail': { version: '2.0.0' },
  'node_modules/for-another-machine': { version: '1.0.0', optional: true },
};

test('a tree that holds what the lockfile names is whole, parts for other machines aside', () => {
  const { 'node_modules/for-another-machine': _absent, ...present } = lock;
  expect(missingPackages(lock, present)).toEqual([]);
});

test('a package of another version, one missing and a link missing are each named', () => {
  const present = { 'node_modules/rail': { version: '1.1.0' } };
  expect(missingPackages(lock, present)).toEqual(['@eaveline/cli', 'rail', 'rail']);
});

test('the advice names what compiling lacks and the way out, in one line', () => {
  const advice = storeAdvice(['make', 'a C++ compiler']);
  expect(advice).toContain('lacks make, a C++ compiler.');
  expect(advice).toContain('apt-get install');
  expect(advice).not.toContain('\n');
});

test.each([
  ['20.19.0', false],
  ['20.18.3', true],
  ['18.20.4', true],
  ['22.3.0', false],
])('Node %s is too old: %s', (version, old) => {
  expect(nodeTooOld(version) !== undefined).toBe(old);
});
