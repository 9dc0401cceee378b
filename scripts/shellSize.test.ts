import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { shellFiles, weigh } from './shellSize.mjs';

let site = '';
const put = (file: string, text: string) => writeFileSync(join(site, file), text);
beforeEach(() => {
  site = mkdtempSync(join(tmpdir(), 'eaveline-site-'));
  mkdirSync(join(site, 'assets'));
  put(
    'index.html',
    '<link rel="icon" href="/sign.svg" /><link rel="stylesheet" crossorigin href="/assets/look.css">' +
      '<script type="module" crossorigin src="/assets/main.js"></script>',
  );
  put('assets/look.css', 'body { margin: 0 }');
  put('assets/main.js', 'import{a as b}from"./room.js";const later=()=>import("./lazy.js");b(later)');
  put('assets/room.js', 'import"./deep.js";export const a=1');
  put('assets/deep.js', 'export{};');
  put('assets/lazy.js', 'export{};');
});
afterEach(() => rmSync(site, { recursive: true }));

const budgets = (shell: number, histories: number) => ({
  shell: { bytes: shell, why: 'of the test' },
  histories: { bytes: histories, why: 'of the test' },
});

test('what is imported at once is in the shell, what is asked for later and the icon are not', () => {
  const addresses = shellFiles(site).map(({ address }) => address);
  const all = ['/assets/deep.js', '/assets/look.css', '/assets/main.js', '/assets/room.js', '/index.html'];
  expect(addresses.sort()).toEqual(all);
});

test('a shell over its budget is refused by name and amount', () => {
  expect(weigh(site, budgets(10_000, 0)).tooLarge).toEqual([]);
  const noise = Array.from({ length: 20_000 }, (_, n) => ((n * 2_654_435_761) % 4_294_967_296).toString(36)).join('');
  put('assets/deep.js', `export const noise="${noise}"`);
  expect(weigh(site, budgets(10_000, 0)).tooLarge).toEqual([
    expect.stringMatching(/^shell is [\d.]+ kB too large; most of it is \/assets\/deep\.js\.$/),
  ]);
});

test('the core of the histories is weighed where it is built in', () => {
  put('assets/automerge-abc.wasm', 'not much');
  expect(weigh(site, budgets(10_000, 5)).tooLarge).toEqual([expect.stringContaining('/assets/automerge-abc.wasm')]);
});

test('nothing built is nothing weighed', () => {
  rmSync(join(site, 'index.html'));
  expect(() => weigh(site)).toThrow('holds no built app');
});
