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

walk(
  'an edit on a phone is taken back from the head of the sheet, and from that of the history',
  async ({ server, page }) => {
    await openSheet(page, server.url, 'kestrel-rise', '04');
    const fedAt = page.getByLabel('Fed at', { exact: true });
    const began = await fedAt.inputValue();
    const undo = page.getByRole('banner').getByRole('button', { name: /^Undo: / });
    for (const back of ['the sheet', 'the history'] as const) {
      await fedAt.selectOption({ index: 4 });
      await undo.waitFor();
      if (back === 'the history') await page.goto(`${server.url}/job/kestrel-rise/history`);
      const box = await undo.boundingBox();
      expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(THUMB_PX);
      await undo.tap();
      if (back === 'the history') {
        await page
          .getByRole('main')
          .getByRole('status')
          .filter({ hasText: /^Taken back: / })
          .waitFor();
        await openSheet(page, server.url, 'kestrel-rise', '04');
      }
      await soon(() => fedAt.inputValue()).toBe(began);
    }
  },
);

walk(
  'the first step on a phone asks who is there, once; the name is with the steps after it',
  async ({ server, page }) => {
    await openSheet(page, server.url, 'kestrel-rise', '04');
    const asked = page.getByRole('region', { name: 'Who is here' });
    expect(await asked.count()).toBe(0);
    await page.getByLabel('Fed at', { exact: true }).selectOption({ index: 4 });
    await asked.getByLabel(/^Who is at this phone/).fill('Nia');
    await asked.getByRole('button', { name: 'Keep the name' }).tap();
    await asked.waitFor({ state: 'detached' });
    await page.getByLabel('Fed at', { exact: true }).selectOption({ index: 2 });
    await page.goto(`${server.url}/job/kestrel-rise/history`);

    await page.getByRole('main').getByRole('listitem').filter({ hasText: 'Nia' }).waitFor();
  },
);
