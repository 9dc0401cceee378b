import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { openSheet } from './onSheet.ts';
import { soon, walk } from './walk.ts';

const table = (page: Page) => page.getByRole('grid', { name: 'circuits', exact: true });
/** The cell under focus, or the one whose field is: `1:2`, row and column from nought. */
const here = (page: Page) =>
  page.evaluate(() => document.activeElement?.closest('[data-cell]')?.getAttribute('data-cell') ?? 'outside');
const words = (page: Page, cell: string) =>
  table(page)
    .locator(`[data-cell="${cell}"]`)
    .textContent()
    .then((text) => text?.replace(/\s/g, ''));
const picked = (page: Page) => table(page).locator('[aria-selected="true"]').count();
const field = (page: Page) => page.locator('[data-cell] input:focus');

async function press(page: Page, ...keys: readonly string[]) {
  for (const key of keys) await page.keyboard.press(key);
}

/** Puts the focus on the second cell of the second row, running W, with nothing picked and nothing open. */
async function standOnRunning(page: Page) {
  await table(page).locator('[tabindex="0"]').focus();
  await press(
    page,
    'Control+Home',
    'ArrowDown',
    ...Array.from({ length: await runningColumn(page) }, () => 'ArrowRight'),
  );
}

async function runningColumn(page: Page): Promise<number> {
  const heads = (await table(page).getByRole('columnheader').allTextContents()).map((head) => head.trim());
  const at = heads.indexOf('running W');
  if (at < 0) throw new Error(`No running W among ${heads.join(', ')}`);
  return at;
}

/** What shows that a listed key does what the list says, begun on running W of the second circuit. */
const PROOFS: Readonly<Record<string, (page: Page, column: number) => Promise<void>>> = {
  'arrows, Page Up, Page Down': async (page, column) => {
    await press(page, 'ArrowRight', 'ArrowDown');
    expect(await here(page)).toBe(`2:${column + 1}`);
    await press(page, 'ArrowLeft', 'ArrowUp', 'PageUp');
    expect(await here(page)).toBe(`0:${column}`);
    const rows = Number(await table(page).getAttribute('aria-rowcount')) - 1;
    await press(page, 'PageDown');
    expect(await here(page)).toBe(`${Math.min(10, rows - 1)}:${column}`);
  },
  'Home, End': async (page) => {
    const columns = Number(await table(page).getAttribute('aria-colcount'));
    await press(page, 'Home');
    expect(await here(page)).toBe('1:0');
    await press(page, 'End');
    expect(await here(page)).toBe(`1:${columns - 1}`);
    await press(page, 'Control+Home');
    expect(await here(page)).toBe('0:0');
  },
  'Ctrl and an arrow': async (page, column) => {
    await press(page, 'Control+ArrowUp');
    expect(await here(page)).toBe(`0:${column}`);
    await press(page, 'Control+ArrowLeft');
    expect(await here(page)).toBe('0:0');
  },
  'Shift and any of these': async (page) => {
    await press(page, 'Shift+ArrowDown', 'Shift+ArrowRight');
    expect(await picked(page)).toBe(4);
    await press(page, 'Control+a');
    expect(await picked(page)).toBe(await table(page).locator('[data-cell]').count());
  },
  'letters and figures': async (page) => {
    await page.keyboard.type('7w');
    expect(await field(page).inputValue()).toBe('7w');
  },
  'Enter, F2, Space': async (page, column) => {
    const stood = await words(page, `1:${column}`);
    for (const key of ['Enter', 'F2', ' ']) {
      await press(page, key);
      expect((await field(page).inputValue()).replace(/\s/g, '')).toBe(stood);
      await press(page, 'Escape');
    }
  },
  'Enter, Tab in an open cell': async (page, column) => {
    await page.keyboard.type('610');
    await press(page, 'Enter');
    await soon(() => here(page)).toBe(`2:${column}`);
    expect(await words(page, `1:${column}`)).toBe('610');
    await page.keyboard.type('620');
    await press(page, 'Shift+Enter');
    await soon(() => here(page)).toBe(`1:${column}`);
    await page.keyboard.type('630');
    await press(page, 'Tab');
    await soon(() => here(page)).toBe(`1:${column + 1}`);
    expect([await words(page, `1:${column}`), await words(page, `2:${column}`)]).toEqual(['630', '620']);
  },
  'Esc in an open cell': async (page, column) => {
    const stood = await words(page, `1:${column}`);
    await page.keyboard.type('999');
    await press(page, 'Escape');
    expect([await here(page), await words(page, `1:${column}`)]).toEqual([`1:${column}`, stood]);
    await press(page, 'Shift+ArrowDown', 'Escape');
    expect(await picked(page)).toBe(1);
  },
  Tab: async (page) => {
    await press(page, 'Tab');
    expect(await here(page)).toBe('outside');
  },
  'Delete, Backspace': async (page, column) => {
    await press(page, 'Delete');
    // a circuit draws something: its running W may not be empty, and says so
    await page.getByText('It cannot be left empty.').waitFor();
    // two to the right stands its breaker, which nobody has to have read
    await press(page, 'ArrowRight', 'ArrowRight');
    await page.keyboard.type('10');
    await press(page, 'Enter', 'ArrowUp', 'Backspace');
    await soon(() => words(page, `1:${column + 2}`)).toBe('');
  },
  'Ctrl C, Ctrl X, Ctrl V': async (page, column) => {
    const clipboard = () => page.evaluate(() => navigator.clipboard.readText());
    await press(page, 'ArrowRight', 'ArrowRight');
    await page.keyboard.type('16');
    await press(page, 'Enter', 'ArrowUp', 'Control+c');
    await soon(clipboard).toBe('16');
    await press(page, 'ArrowDown', 'Control+v');
    await soon(() => words(page, `2:${column + 2}`)).toBe('16');
    await page.evaluate(() => navigator.clipboard.writeText(''));
    await press(page, 'Control+x');
    await soon(clipboard).toBe('16');
    await soon(() => words(page, `2:${column + 2}`)).toBe('');
  },
  'Ctrl D': async (page, column) => {
    await press(page, 'Control+d');
    await soon(() => words(page, `1:${column}`)).toBe(await words(page, `0:${column}`));
  },
  'Ctrl Z': async (page, column) => {
    const stood = await words(page, `1:${column}`);
    await page.keyboard.type('650');
    await press(page, 'Enter', 'Control+z');
    await soon(() => words(page, `1:${column}`)).toBe(stood);
  },
};

walk('every key the list has for tables does what it says', async ({ server, page }) => {
  await openSheet(page, server.url, 'kestrel-rise', '05');
  await page.getByRole('button', { name: 'Keys ?' }).click();
  const list = page.getByRole('dialog', { name: 'Where the keys are' });
  const listed = await list.getByRole('table', { name: 'In a table' }).getByRole('rowheader').allTextContents();
  await list.getByRole('button', { name: 'Close' }).click();
  expect(listed).toEqual(Object.keys(PROOFS));
  const column = await runningColumn(page);
  for (const [keys, proof] of Object.entries(PROOFS)) {
    await standOnRunning(page);
    expect(await here(page), `before ${keys}`).toBe(`1:${column}`);
    await proof(page, column);
    if ((await field(page).count()) > 0) await page.keyboard.press('Escape');
  }
});
