import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { openSheet, register, settled, typeInto } from './onSheet.ts';
import { soon, walk } from './walk.ts';

const JOB = 'kestrel-rise';
const length = (page: Page) => page.getByLabel('Home run', { exact: true });
const fedAt = (page: Page) => page.getByLabel('Fed at', { exact: true });
const row = (page: Page, what: string | RegExp) =>
  page.getByRole('main').getByRole('listitem').filter({ hasText: what });

walk('steps back and forth without end, by key, by their meaning, after a reload too', async ({ server, page }) => {
  await openSheet(page, server.url, JOB, '04');
  const began = [await length(page).inputValue(), await fedAt(page).inputValue()];
  await typeInto(length(page), '24');
  await fedAt(page).selectOption({ index: 4 });
  await soon(() => register(page).getByRole('status').textContent()).toContain('All kept');
  await page.reload();
  await settled(page, '04');
  await register(page)
    .getByRole('button', { name: /^Undo: .*fed at 5/i })
    .waitFor();
  await page.locator('main').press('z');
  await soon(() => fedAt(page).inputValue()).toBe(began[1]);
  await page.locator('main').press('z');
  await soon(() => length(page).inputValue()).toBe(began[0]);
  await page.getByText('Taken back: Trunk A: home run 24 m.').waitFor();
  await page.locator('main').press('Shift+Z');
  await soon(() => length(page).inputValue()).toBe('24');
  expect(await fedAt(page).inputValue()).toBe(began[1]);
});

walk('the history says who, when and what; a moment is looked at, and gone back to', async ({ server, page }) => {
  await openSheet(page, server.url, JOB, '04');
  await page.getByLabel('At this device').fill('Nia');
  await page.getByLabel('At this device').press('Enter');
  await typeInto(length(page), '24');
  await soon(() => register(page).getByRole('status').textContent()).toContain('All kept');
  await length(page).blur();
  await fedAt(page).selectOption({ index: 4 });
  await fedAt(page).blur();

  await register(page).getByRole('link', { name: 'History' }).click();
  await row(page, 'home run 24 m').getByRole('button').click();
  expect(await row(page, 'home run 24 m').textContent()).toMatch(/^\d\d:\d\dNia/);
  const pad = page.getByRole('complementary').filter({ visible: true });
  expect(await pad.textContent()).toContain('24 m, was 31 m');

  await pad.getByRole('button', { name: 'See the sheets as they were then' }).click();
  await page.getByText('It can be read, not changed.').waitFor();
  await register(page).getByRole('link', { name: /^04 / }).click();
  await settled(page, '04');
  expect(await fedAt(page).inputValue()).not.toBe('4');
  await page.getByRole('button', { name: 'Back to now' }).click();
  await soon(() => fedAt(page).inputValue()).toBe('4');

  await register(page).getByRole('link', { name: 'History' }).click();
  // the walk before it has left saves on the server: the history here begins with the newest
  await row(page, /Begun|Taken on from the firm’s server, as its save/)
    .getByRole('button')
    .click();
  await pad.getByRole('button', { name: 'Go back to this' }).click();
  await register(page).getByRole('link', { name: /^04 / }).click();
  await settled(page, '04');
  await soon(() => length(page).inputValue()).toBe('31');
  await page.locator('main').press('z');
  await soon(() => length(page).inputValue()).toBe('24');
});
