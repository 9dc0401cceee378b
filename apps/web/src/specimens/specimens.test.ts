import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { SPECIMENS } from './all.ts';

const SOURCES = new URL('../', import.meta.url);
const FOLDERS = ['parts', 'pad', 'checks', 'drawing'];

/** Sheet 08 itself is a sheet and no part. */
const SHEETS = ['ChecksSheet'];

/** Components a folder exports: functions whose names begin large, in files that hold elements. */
function componentsIn(folder: string): string[] {
  const files = readdirSync(new URL(`${folder}/`, SOURCES)).filter((file) => file.endsWith('.tsx'));
  return files.flatMap((file) => {
    const text = readFileSync(new URL(`${folder}/${file}`, SOURCES), 'utf8');
    return [...text.matchAll(/^export function ([A-Z]\w*)/gm)].map(([, name]) => name as string);
  });
}

const shown = new Set(SPECIMENS.map(({ name }) => name));

test.each(FOLDERS)('every component of %s is shown', (folder) => {
  const components = componentsIn(folder);
  expect(components.length).toBeGreaterThan(3);
  expect(components.filter((name) => !shown.has(name) && !SHEETS.includes(name))).toEqual([]);
});

test('a component that nobody shows would be found', () => {
  expect(componentsIn('frame')).toContain('TitleBlock');
  expect(componentsIn('frame').filter((name) => !shown.has(name))).toContain('SheetFrame');
});

test('nothing is shown twice under one name, and no state of a component twice', () => {
  expect(shown.size).toBe(SPECIMENS.length);
  for (const { name, states } of SPECIMENS) {
    expect(new Set(states.map(({ state }) => state)).size, name).toBe(states.length);
    expect(states.length, name).toBeGreaterThan(0);
  }
});

test('the states a person meets are all there', () => {
  const states = SPECIMENS.flatMap((each) => each.states.map(({ state }) => state)).join('; ');
  for (const word of ['rest', 'focus', 'pressed', 'refused', 'stale', 'selected', 'failing', 'asking', 'meeting'])
    expect(states).toContain(word);
  for (const word of ['empty', 'missing fact', 'left out', 'from memory']) expect(states).toContain(word);
});
