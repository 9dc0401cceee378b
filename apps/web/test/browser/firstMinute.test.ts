import process from 'node:process';
import { expect } from 'vitest';
import { head, pad, register, settled, tallyOf, titleCell } from './onSheet.ts';
import { soon, walk } from './walk.ts';

walk('the first minute: the Book with its five jobs, Kestrel Rise, its array', async ({ server, page }) => {
  await page.goto(server.url);
  await soon(() => titleCell(page, 'worked out').textContent()).toBe('worked out5 of 5');
  expect(await page.title()).toBe('The Book · Eaveline');
  const jobs = page.getByRole('main').getByRole('listitem');
  expect(await jobs.count()).toBe(5);
  // what the Book says of a job is what its own sheets say: seen again below
  const row = jobs.filter({ hasText: 'Kestrel Rise' });
  expect(await row.textContent()).toContain('26 modules');

  await row.getByRole('link').click();
  await settled(page, '08');
  const inBook = /(\d+) +fails? +(\d+) +asks?/;
  expect(await tallyOf(page, '08')).toMatch(inBook);

  await register(page).getByRole('link', { name: /^03 / }).click();
  await settled(page, '03');
  // 26 modules: facts of the job, each a thing of the drawing that can be selected
  const modules = page.locator('main [data-subject^="module:"]');
  expect(await modules.count()).toBe(26);
  expect(await head(page).textContent()).toMatch(/\.$/);

  await modules.nth(3).click();
  await soon(() => pad(page).textContent()).toContain('energy in a year');
});

walk('the array of Kestrel Rise by its address, in a browser that has never been here', async ({ server, page }) => {
  await page.goto(`${server.url}/job/kestrel-rise/03`);
  await page.locator('main [data-subject^="module:"]').first().waitFor();
  const usefulMs = await page.evaluate(() => performance.now());
  // measured for whoever reads along, not judged: two test files share two cores here
  process.stdout.write(`A useful sheet ${Math.round(usefulMs)} ms after its address was opened.\n`);
});
