import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { openSheet } from './onSheet.ts';
import { walk } from './walk.ts';

/** Room inside the margins of A4 portrait, 180 mm at 96 dots an inch. */
const PAGE_PX = 680;

/** Lays the page out as it is printed. */
async function onPaper(page: Page): Promise<void> {
  await page.emulateMedia({ media: 'print' });
  await page.setViewportSize({ width: PAGE_PX, height: 960 });
}

/** Cells of tables, fields and their texts that reach past the right edge of the paper, or are cut off inside it. */
const cutOff = (page: Page) =>
  page.evaluate(
    (width) =>
      [...document.querySelectorAll('main [role="grid"] td, main [role="grid"] th, main label')]
        .filter((each) => each.checkVisibility())
        .filter((each) => each.getBoundingClientRect().right > width || each.scrollWidth > each.clientWidth + 1)
        .map((each) => `${each.tagName} “${each.textContent}” to ${each.getBoundingClientRect().right}`),
    PAGE_PX,
  );

walk('the planes of sheet 02 are printed whole, each figure with its head', async ({ server, page }) => {
  await openSheet(page, server.url, 'kestrel-rise', '02');
  await onPaper(page);
  expect(await cutOff(page)).toEqual([]);
  const north = page.getByRole('grid', { name: 'planes' }).getByRole('row').filter({ hasText: 'North' });
  const last = north.locator('[data-head]').last();
  expect(await last.isVisible()).toBe(true);
  expect(await last.evaluate((each) => getComputedStyle(each, '::before').content)).toBe(
    `"${await last.getAttribute('data-head')}"`,
  );
});

walk(
  'all trunks of sheet 04 are printed whole; a field is its value, with nothing to open',
  async ({ server, page }) => {
    await openSheet(page, server.url, 'practice-yard', '04');
    await onPaper(page);
    expect(await cutOff(page)).toEqual([]);
    await page.getByRole('grid', { name: 'trunks' }).locator('[data-head="spare drops"]').first().waitFor();
    const home = page.getByLabel('Home run', { exact: true });
    expect(await home.isVisible()).toBe(true);
    const field = home.locator('xpath=..');
    expect(await field.evaluate((each) => getComputedStyle(each).borderBottomWidth)).toBe('0px');
    const shown = await page
      .locator('main select ~ svg')
      .evaluateAll((all) => all.filter((each) => each.checkVisibility()));
    expect(shown).toHaveLength(0);
  },
);
