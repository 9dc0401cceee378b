import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { plainSigns, processIo } from './io.ts';
import { couldNotRun } from './program.ts';

const folder = mkdtempSync(join(tmpdir(), 'eaveline-io-'));
afterAll(() => rmSync(folder, { recursive: true }));

test('a file is written whole, folders on the way are made, and nothing is left beside it', async () => {
  const io = processIo();
  const path = join(folder, 'pack/kestrel/kit.csv');
  await io.writeFile(path, 'rail,12\n');
  await io.writeFile(path, new TextEncoder().encode('rail,13\n'));
  expect(readFileSync(path, 'utf8')).toBe('rail,13\n');
  expect(await io.readText(path)).toBe('rail,13\n');
  expect(readdirSync(join(folder, 'pack/kestrel'))).toEqual(['kit.csv']);
});

test('a file in the place of a folder is refused by its name, in one line', async () => {
  const io = processIo();
  await io.writeFile(join(folder, 'file'), 'x');
  const refused = await io.writeFile(join(folder, 'file/pack.pdf'), 'y').catch((error: unknown) => couldNotRun(error));
  expect(refused).toMatch(/file: A (file stands where a folder is wanted|part of that path is a file)/);
});

test('a name in a job cannot steer the terminal', () => {
  expect(plainSigns('Trunk \u001b[2J\u202Ecod.exe\tA\n')).toBe('Trunk \uFFFD[2J\uFFFDcod.exe\tA\n');
});

test('a write that cannot end leaves nothing half-written', async () => {
  // a folder stands where the file should go: the last step, the renaming, fails
  const io = processIo();
  await io.writeFile(join(folder, 'taken/inside.txt'), 'x');
  await expect(io.writeFile(join(folder, 'taken'), 'y')).rejects.toThrow();
  expect(readdirSync(folder).filter((name) => name.endsWith('.half'))).toEqual([]);
});
