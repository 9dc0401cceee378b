import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { openSheet, pad, SHEETS, settled } from './onSheet.ts';
import { soon, walk } from './walk.ts';

const JOB = 'kestrel-rise';
const focused = (page: Page) => page.locator(':focus');

/** Presses Tab until a thing stands under focus, as often as there are things to pass. */
async function tabTo(page: Page, thing: Locator): Promise<void> {
  const passed: string[] = [];
  while (passed.length < 150) {
    await page.keyboard.press('Tab');
    if (await thing.evaluate((each) => each === document.activeElement)) return;
    passed.push((await focused(page).allTextContents()).join());
  }
  throw new Error(`Tab never came to ${thing}; it passed ${passed.join(' | ')}`);
}

walk('every sheet has a key, and B goes to the Book', async ({ server, page }) => {
  await openSheet(page, server.url, JOB, '12');
  for (const { no, name, key } of SHEETS) {
    await page.keyboard.press(key);
    await settled(page, no);
    await soon(() => page.title()).toBe(`${no} ${name}, Kestrel Rise · Eaveline`);
  }
  await page.keyboard.press('b');
  await soon(() => page.title()).toBe('The Book · Eaveline');
  await page.keyboard.press('/');
  await page.keyboard.type('kestrel');
  await page.keyboard.press('Enter');
  await settled(page, '08');
});

walk(
  'without a mouse: a sheet, a thing of its drawing, its working on the pad, the working copied',
  async ({ server, page }) => {
    await openSheet(page, server.url, JOB, '01');
    await page.keyboard.press('4');
    await settled(page, '04');

    await tabTo(page, page.locator('main svg [data-subject="rise:a"]'));
    await page.keyboard.press('ArrowDown');
    expect(await focused(page).getAttribute('data-subject')).toBe('rise:b');
    await page.keyboard.press('Enter');
    await soon(() => pad(page).textContent()).toContain('Trunk B, voltage rise');
    expect(await page.locator('main svg [data-subject="rise:b"]').getAttribute('aria-pressed')).toBe('true');
    expect(new URL(page.url()).searchParams.get('at')).toBe('rise:b');

    await page.keyboard.press('w');
    expect(await focused(page).getAttribute('id')).toBe('pad');
    await tabTo(page, pad(page).getByRole('button', { name: 'Copy this working' }));
    await page.keyboard.press('Enter');
    const copied = () => page.evaluate(() => navigator.clipboard.readText());
    await soon(copied).toMatch(/\nFar unit of trunk B above the point of supply, ΔU: 3\.\d+ V\n/);
    expect(await copied()).toContain('Source:');
  },
);

walk('single keys are off while something is typed', async ({ server, page }) => {
  await openSheet(page, server.url, JOB, '04');
  await page.getByLabel('Home run', { exact: true }).press('End');
  await page.keyboard.type('5');
  await settled(page, '04');
  expect(await page.getByLabel('Home run', { exact: true }).inputValue()).toBe('315');
});

walk('the list of keys opens with ?, closes with Esc and gives the focus back', async ({ server, page }) => {
  await openSheet(page, server.url, JOB, '08');
  await page.getByRole('button', { name: 'Keys ?' }).focus();
  await page.keyboard.press('Enter');
  const list = page.getByRole('dialog', { name: 'Where the keys are' });
  await list.waitFor();
  await page.keyboard.press('4'); // belongs to nobody while the list is open
  await page.keyboard.press('Escape');
  await list.waitFor({ state: 'detached' });
  expect(await focused(page).textContent()).toBe('Keys ?');
  expect(new URL(page.url()).pathname).toBe(`/job/${JOB}/08`);
});
