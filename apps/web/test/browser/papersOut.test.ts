import { readFile } from 'node:fs/promises';
import { expect } from 'vitest';
import { openSheet } from './onSheet.ts';
import { walk } from './walk.ts';

const JOB = 'kestrel-rise';

walk('the link of the pack answers a PDF of several pages', async ({ server, page }) => {
  await openSheet(page, server.url, JOB, '12');
  const link = page.getByRole('link', { name: 'Open the pack, PDF' });
  const address = await link.evaluate((a) => (a as HTMLAnchorElement).href);
  const answer = await page.request.get(address);
  expect(answer.status()).toBe(200);
  expect(answer.headers()['content-type']).toBe('application/pdf');
  const pdf = (await answer.body()).toString('latin1');
  expect(pdf.slice(0, 5)).toBe('%PDF-');
  expect(pdf.trimEnd().slice(-5)).toBe('%%EOF');
  // cover, roof plan, trunks, circuits, kit, day, tests, cautions: each begins a page of its own
  expect(pdf.match(/\/Type \/Page\b/g)?.length).toBeGreaterThanOrEqual(8);
});

walk('the job file that is saved is the job that the server keeps', async ({ server, page }) => {
  await openSheet(page, server.url, JOB, '12');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('main').getByRole('button', { name: 'Save job file' }).click(),
  ]);
  expect(download.suggestedFilename()).toBe(`${JOB}.job.json`);
  const saved = JSON.parse(await readFile(await download.path(), 'utf8'));
  expect(saved).toEqual(await (await page.request.get(`${server.url}/api/jobs/${JOB}`)).json());
});
