import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { head, openSheet, register, SHEETS, settled } from './onSheet.ts';
import { sideways } from './sideways.ts';
import { phoneWalk, walk } from './walk.ts';

/** The jobs every new book begins with. */
const DEMO_JOBS = ['kestrel-rise', 'larkspur-lane', 'quayside-terrace', 'ironbark-clinic', 'practice-yard'] as const;

/** What is wrong with the sheet that is open: no sentence, a drawing that fell over, figures that are none, too wide. */
async function faultsOf(page: Page, no: string): Promise<string[]> {
  await settled(page, no);
  const sentence = (await head(page).textContent()) ?? '';
  const text = (await page.locator('main').textContent()) ?? '';
  const said = /.{0,20}(\bNaN\b|undefined|\[object |Infinity).{0,20}/.exec(text)?.[0];
  return [
    ...(sentence.length > 10 ? [] : [`sheet ${no} opens with “${sentence}”`]),
    ...(await page.getByRole('main').getByRole('alert').allTextContents()),
    ...(said === undefined ? [] : [`sheet ${no} says “${said}”`]),
    ...(await sideways(page)).map((line) => `sheet ${no}: ${line}`),
  ];
}

for (const job of DEMO_JOBS) {
  walk(`${job}: every sheet stands on a desktop`, async ({ server, page }) => {
    await openSheet(page, server.url, job, '01');
    const faults: string[] = [];
    for (const { no, key } of SHEETS) {
      await page.keyboard.press(key);
      faults.push(...(await faultsOf(page, no)));
    }
    expect(faults).toEqual([]);
  });

  phoneWalk(`${job}: every sheet stands on a phone, reached from the list of sheets`, async ({ server, page }) => {
    await openSheet(page, server.url, job, '01');
    const faults: string[] = [];
    for (const { no, name } of SHEETS) {
      await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Sheets' }).tap();
      await register(page)
        .getByRole('link', { name: new RegExp(`^${no} ${name}`) })
        .tap();
      faults.push(...(await faultsOf(page, no)));
    }
    expect(faults).toEqual([]);
  });
}

walk('a board of two colour schemes has its caution on sheets 04 and 05', async ({ server, page }) => {
  const caution = page.getByRole('main').getByText('Two colour schemes meet in this board.');
  // the practice yard has both schemes in one board, Kestrel Rise has one
  for (const [job, on04, on05] of [
    ['practice-yard', 1, 1],
    ['kestrel-rise', 0, 0],
  ] as const) {
    await openSheet(page, server.url, job, '04');
    await expect.poll(() => caution.count(), { message: `${job}, sheet 04` }).toBe(on04);
    await page.keyboard.press('5');
    await settled(page, '05');
    await expect.poll(() => caution.count(), { message: `${job}, sheet 05` }).toBe(on05);
  }
});
