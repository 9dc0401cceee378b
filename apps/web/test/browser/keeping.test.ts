import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { openSheet, register, settled } from './onSheet.ts';
import { soon, walk } from './walk.ts';

const JOB = 'kestrel-rise';
const length = (page: Page) => page.getByLabel('Home run', { exact: true });
const keeping = (page: Page) => register(page).getByRole('status');

async function servedLengthM(url: string): Promise<number> {
  const job = await (await fetch(`${url}/api/jobs/${JOB}`)).json();
  return job.choices.trunks.a.homeRun.lengthM;
}

walk(
  'an edit is on the server before the page says that all is kept, and there after a reload',
  async ({ server, page }) => {
    await openSheet(page, server.url, JOB, '04');
    await length(page).fill('24');
    await soon(() => keeping(page).textContent()).toContain('All kept.');
    expect(await servedLengthM(server.url)).toBe(24);

    await page.reload();
    await settled(page, '04');
    expect(await length(page).inputValue()).toBe('24');
  },
);

walk(
  'with the server stopped an edit is said to be not saved; the server back, it is saved',
  async ({ server, page, opened }) => {
    opened.expectComplaints('net::ERR_CONNECTION_REFUSED');
    await openSheet(page, server.url, JOB, '04');
    await server.stop();

    await length(page).fill('25');
    await soon(() => keeping(page).textContent()).toMatch(
      /^Not saved: The server does not answer\. Kept in this browser since \d?\d:\d\d\./,
    );
    // the plan needs no server: the edit is worked out all the same
    await settled(page, '04');

    await server.startAgain();
    expect(await servedLengthM(server.url)).toBe(31);
    await keeping(page).getByRole('button', { name: 'Try again now' }).click();
    await soon(() => keeping(page).textContent()).toContain('All kept.');
    expect(await servedLengthM(server.url)).toBe(25);
  },
);

walk(
  'an edit that never reached the server outlives the page and is saved when the job is opened again',
  async ({ server, page, opened }) => {
    opened.expectComplaints('net::ERR_CONNECTION_REFUSED');
    await openSheet(page, server.url, JOB, '04');
    await server.stop();
    await length(page).fill('26');
    await soon(() => keeping(page).textContent()).toContain('Not saved');
    await page.goto('about:blank');

    await server.startAgain();
    await openSheet(page, server.url, JOB, '04');
    expect(await length(page).inputValue()).toBe('26');
    await soon(() => keeping(page).textContent()).toContain('All kept.');
    expect(await servedLengthM(server.url)).toBe(26);
  },
);

walk('somebody else saved meanwhile: nothing is written over, and a person picks', async ({ server, page, opened }) => {
  opened.expectComplaints('412');
  await openSheet(page, server.url, JOB, '04');
  const address = `${server.url}/api/jobs/${JOB}`;
  const theirs = await (await fetch(address)).json();
  theirs.choices.trunks.a.homeRun.lengthM = 29;
  const put = { method: 'PUT', headers: { 'content-type': 'application/json' }, body: JSON.stringify(theirs) };
  expect((await fetch(address, put)).status).toBe(200);

  await length(page).fill('27');
  await soon(() => keeping(page).textContent()).toContain('somebody else saved this job meanwhile');
  expect(await servedLengthM(server.url)).toBe(29);

  await keeping(page).getByRole('button', { name: 'Take theirs' }).click();
  await soon(() => length(page).inputValue()).toBe('29');
  await soon(() => keeping(page).textContent()).toContain('All kept.');
  expect(await servedLengthM(server.url)).toBe(29);
});
