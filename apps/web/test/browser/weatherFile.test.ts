import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { madeEpw } from './madeEpw.ts';
import { openSheet, settled, titleCell } from './onSheet.ts';
import { soon, walk } from './walk.ts';

const JOB = 'kestrel-rise';
const field = (page: Page) => page.getByLabel('Drop a year of weather here, or pick it:');
const weather = (page: Page) => titleCell(page, 'weather').textContent();
const said = (page: Page) => page.getByRole('main').getByRole('status').filter({ hasText: '.epw' });

/** Lets a file fall on the page where the weather stands, as the file manager does. */
async function drop(page: Page, name: string, text: string): Promise<void> {
  const dataTransfer = await page.evaluateHandle(
    ({ name, text }) => {
      const files = new DataTransfer();
      files.items.add(new File([text], name));
      return files;
    },
    { name, text },
  );
  await field(page).dispatchEvent('drop', { dataTransfer });
}

walk(
  'a year of weather that is picked is the weather of every sheet, until it is put away',
  async ({ server, page }) => {
    await openSheet(page, server.url, JOB, '01');
    const normals = await weather(page);
    expect(normals).toMatch(/^weathernormals, \d+ km/);
    const sunBefore = await page
      .getByRole('main')
      .getByText(/kWh\/m² a year/)
      .textContent();

    await field(page).setInputFiles({ name: 'made-hill.epw', mimeType: 'text/plain', buffer: Buffer.from(madeEpw()) });
    await soon(() => said(page).textContent()).toContain(
      'made-hill.epw, Made Hill, AUS: used until this page is closed.',
    );
    await settled(page, '01');
    // 0.15° of latitude and 0.1° of longitude from the house at 37.6° S: 16.7 km and 8.8 km, 18.9 km together
    expect(await weather(page)).toMatch(/^weatherfile, 19 km/);
    expect(
      await page
        .getByRole('main')
        .getByText(/kWh\/m² a year/)
        .textContent(),
    ).not.toBe(sunBefore);

    await page.keyboard.press('7');
    await settled(page, '07');
    expect(await weather(page)).toMatch(/^weatherfile, 19 km/);

    await page.keyboard.press('1');
    await settled(page, '01');
    await page.getByRole('button', { name: 'Back to monthly normals' }).click();
    await settled(page, '01');
    await soon(() => weather(page)).toBe(normals);
    expect(
      await page
        .getByRole('main')
        .getByText(/kWh\/m² a year/)
        .textContent(),
    ).toBe(sunBefore);
  },
);

walk('a year of weather that is dropped is taken like one that is picked', async ({ server, page }) => {
  await openSheet(page, server.url, JOB, '01');
  await drop(page, 'made-hill.epw', madeEpw());
  await soon(() => weather(page)).toMatch(/^weatherfile, 19 km/);
});

walk(
  'a file that is no weather is refused in words, and the plan stays on the weather before',
  async ({ server, page }) => {
    await openSheet(page, server.url, JOB, '01');
    const normals = await weather(page);
    await drop(page, 'shopping.epw', 'milk, bread\n');
    await soon(() => said(page).textContent()).toContain(
      'shopping.epw cannot be used. The plan stays on the weather before.',
    );
    await settled(page, '01');
    expect(await weather(page)).toBe(normals);
  },
);
