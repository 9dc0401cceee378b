import { expect } from 'vitest';
import { openSheet, register, SHEETS, settled } from './onSheet.ts';
import { sideways } from './sideways.ts';
import { soon, phoneWalk as walk } from './walk.ts';

/** What a thumb needs: WCAG 2.2, 2.5.5 Target Size (Enhanced), 44 CSS px. */
const THUMB_PX = 44;

walk('a phone lists all twelve sheets, and the five places at its foot lead on', async ({ server, page }) => {
  await openSheet(page, server.url, 'kestrel-rise', '03');
  const places = page.getByRole('navigation', { name: 'Places' });
  await places.getByRole('link', { name: 'Sheets' }).tap();
  const rows = register(page).getByRole('listitem').getByRole('link');
  await soon(async () => (await rows.allTextContents()).map((row) => row.slice(0, 2))).toEqual(
    SHEETS.map(({ no }) => no),
  );
  for (const [name, no] of [
    ['Day', '10'],
    ['Roof', '03'],
    ['Checks', '08'],
    ['Tests', '11'],
  ] as const) {
    await places.getByRole('link', { name }).tap();
    await settled(page, no);
    expect(await places.locator('[aria-current="page"]').textContent()).toBe(name);
  }
});

walk('the places at the foot of a phone are as large as a thumb wants, on every paper', async ({ server, page }) => {
  await openSheet(page, server.url, 'kestrel-rise', '08');
  const targets = await page.getByRole('navigation', { name: 'Places' }).getByRole('link').all();
  expect(targets).toHaveLength(5);
  for (const paper of ['day', 'dark', 'roof']) {
    await page.evaluate((name) => {
      document.documentElement.dataset.paper = name;
    }, paper);
    for (const target of targets) {
      const box = await target.boundingBox();
      expect(box?.height, `${await target.textContent()} on ${paper}`).toBeGreaterThanOrEqual(THUMB_PX);
      expect(box?.width, `${await target.textContent()} on ${paper}`).toBeGreaterThanOrEqual(THUMB_PX);
    }
  }
});

walk('the Book on a phone, a job opened from it, and the way back', async ({ server, page }) => {
  await page.goto(server.url);
  const row = page.getByRole('main').getByRole('link', { name: /Kestrel Rise/ });
  await row.tap();
  await settled(page, '08');
  await page.getByRole('link', { name: 'Back to the sheets' }).tap();
  await page.getByRole('link', { name: 'Back to the Book' }).tap();
  await row.waitFor();
  expect(await sideways(page)).toEqual([]);
});
