import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { processIo } from './io.ts';

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

test('a write that cannot end leaves nothing half-written', async () => {
  // a folder stands where the file should go: the last step, the renaming, fails
  const io = processIo();
  await io.writeFile(join(folder, 'taken/inside.txt'), 'x');
  await expect(io.writeFile(join(folder, 'taken'), 'y')).rejects.toThrow();
  expect(readdirSync(folder).filter((name) => name.endsWith('.half'))).toEqual([]);
});
