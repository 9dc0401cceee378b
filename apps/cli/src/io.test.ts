import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { plainSigns, processIo, readAll } from './io.ts';
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

test.skipIf(!existsSync('/proc/self'))(
  'a folder where the system makes none is refused in one line, and does not wait for ever',
  async () => {
    const refused = await processIo()
      .writeFile('/proc/nowhere/deep/pack.pdf', 'y')
      .catch((error: unknown) => couldNotRun(error));
    expect(refused).toBe('/proc/nowhere: No folder can be made there. Nothing was written.');
  },
);

test.skipIf(!existsSync('/proc/self'))(
  'a file that cannot be written is refused by its own name, not by that of the half beside it',
  async () => {
    const refused = await processIo()
      .writeFile('/proc/job.json', 'y')
      .catch((error: unknown) => couldNotRun(error));
    expect(refused).toBe('/proc/job.json: No file can be written there.');
  },
);

test('a folder in the place of a file is refused by its name', async () => {
  const refused = await processIo()
    .readText(folder)
    .catch((error: unknown) => couldNotRun(error));
  expect(refused).toBe(`${folder}: That is a folder; a file is wanted.`);
});

test('an input without an end is given up, in one line', async () => {
  async function* endless() {
    for (;;) yield new Uint8Array(1000);
  }
  const refused = await readAll(endless(), 10_000).catch((error: unknown) => couldNotRun(error));
  expect(refused).toBe('More than 500 MB. This is no file of a job.');
});

test('an error of the system that has no words of ours is one line too', () => {
  const odd = Object.assign(new Error('boom'), { code: 'EXDEV', syscall: 'rename', path: 'a.json' });
  expect(couldNotRun(odd)).toBe('a.json: The system refuses it (rename: EXDEV).');
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
