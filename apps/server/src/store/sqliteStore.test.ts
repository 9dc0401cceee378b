import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterAll, expect, test } from 'vitest';
import { acceptJobStore } from '../../test/acceptJobStore.ts';
import { sqliteStore } from './sqliteStore.ts';

const folder = mkdtempSync(join(tmpdir(), 'eaveline-store-'));
let files = 0;
const newFile = () => join(folder, `${++files}.db`);
afterAll(() => rmSync(folder, { recursive: true }));

acceptJobStore('SQLite', () => sqliteStore(newFile()));

const kestrel = { id: 'kestrel', name: 'Kestrel', region: 'au-nz', document: { pitchDeg: 22.5 } };
const nine = new Date(Date.UTC(2026, 2, 1, 9));

test('a store opened again holds what was saved', async () => {
  const file = newFile();
  const before = sqliteStore(file);
  await before.put({ ...kestrel, savedAt: nine });
  await before.close();
  const after = sqliteStore(file);
  expect((await after.get('kestrel'))?.document).toEqual({ pitchDeg: 22.5 });
  await after.close();
});

test('two open stores on one file see each other, and only one of two savers of one revision wins', async () => {
  const file = newFile();
  const hers = sqliteStore(file);
  const his = sqliteStore(file);
  await hers.put({ ...kestrel, savedAt: nine });
  const answers = await Promise.all([
    hers.put({ ...kestrel, document: { by: 'her' }, savedAt: nine }, 1),
    his.put({ ...kestrel, document: { by: 'him' }, savedAt: nine }, 1),
  ]);
  expect(answers.filter((answer) => answer === undefined)).toHaveLength(1);
  expect(await his.list()).toEqual(await hers.list());
  await hers.close();
  await his.close();
});

test('a new file is in write-ahead mode and of the present edition', async () => {
  const file = newFile();
  await sqliteStore(file).close();
  const db = new Database(file, { readonly: true });
  expect(db.pragma('journal_mode', { simple: true })).toBe('wal');
  expect(db.pragma('user_version', { simple: true })).toBe(1);
  db.close();
});

test('refuses a store of a newer edition and leaves it as it is', () => {
  const file = newFile();
  const newer = new Database(file);
  newer.pragma('user_version = 99');
  newer.close();
  expect(() => sqliteStore(file)).toThrow('The store is of edition 99');
  const same = new Database(file, { readonly: true });
  expect(same.prepare('select count(*) as n from sqlite_master').get()).toEqual({ n: 0 });
  same.close();
});

test('refuses a file that is no database', () => {
  const file = newFile();
  writeFileSync(file, 'A list of rails, not a database. '.repeat(50));
  expect(() => sqliteStore(file)).toThrow('file is not a database');
});
