import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { openSheet, register, settled, typeInto } from './onSheet.ts';
import { soon, walk } from './walk.ts';

const JOB = 'kestrel-rise';
const length = (page: Page) => page.getByLabel('Home run', { exact: true });
const keeping = (page: Page) => register(page).getByRole('status');

async function servedLengthM(url: string): Promise<number> {
  const job = await (await fetch(`${url}/api/jobs/${JOB}`)).json();
  return job.choices.trunks.a.homeRun.lengthM;
}

/** Somebody else saves the job on the server. */
async function saveElsewhere(
  url: string,
  change: (job: { choices: { trunks: { a: { homeRun: { lengthM: number } } } }; about: string }) => void,
) {
  const address = `${url}/api/jobs/${JOB}`;
  const theirs = await (await fetch(address)).json();
  change(theirs);
  const put = { method: 'PUT', headers: { 'content-type': 'application/json' }, body: JSON.stringify(theirs) };
  expect((await fetch(address, put)).status).toBe(200);
}

walk(
  'an edit is on the device and on the server before the page says that all is kept, and there after a reload',
  async ({ server, page }) => {
    await openSheet(page, server.url, JOB, '04');
    await typeInto(length(page), '24');
    await soon(() => keeping(page).textContent()).toBe('All kept, on this device and on the server.');
    expect(await servedLengthM(server.url)).toBe(24);

    await page.reload();
    await settled(page, '04');
    expect(await length(page).inputValue()).toBe('24');
  },
);

walk(
  'with the server stopped an edit is kept on the device and it is said so; the server back, it is sent',
  async ({ server, page, opened }) => {
    opened.expectServerAway();
    await openSheet(page, server.url, JOB, '04');
    await soon(() => keeping(page).textContent()).toContain('All kept');
    await server.stop();

    await typeInto(length(page), '25');
    await soon(() => keeping(page).textContent()).toMatch(
      /^Kept on this device\. Not on the server since \d\d:\d\d: The server does not answer\./,
    );
    // the plan needs no server: the edit is worked out all the same
    await settled(page, '04');

    await server.startAgain();
    expect(await servedLengthM(server.url)).toBe(31);
    await register(page).getByRole('button', { name: 'Try again now' }).click();
    await soon(() => keeping(page).textContent()).toContain('All kept');
    expect(await servedLengthM(server.url)).toBe(25);
  },
);

walk(
  'an edit that never reached the server outlives the page and is sent when the job is opened again',
  async ({ server, page, opened }) => {
    opened.expectServerAway();
    await openSheet(page, server.url, JOB, '04');
    await soon(() => keeping(page).textContent()).toContain('All kept');
    await server.stop();
    await typeInto(length(page), '26');
    await soon(() => keeping(page).textContent()).toContain('Not on the server');
    await page.goto('about:blank');

    await server.startAgain();
    await openSheet(page, server.url, JOB, '04');
    expect(await length(page).inputValue()).toBe('26');
    await soon(() => keeping(page).textContent()).toContain('All kept');
    expect(await servedLengthM(server.url)).toBe(26);
  },
);

/* Nothing but the page's going takes what is typed here: no Enter, and the field is not left. */
walk('an edit made in the same breath as a reload is there after it', async ({ server, page }) => {
  page.on('dialog', (dialog) => void dialog.accept()); // the page asks before it goes with something not kept
  await openSheet(page, server.url, JOB, '04');
  for (const lengthM of ['33', '34', '35']) {
    await soon(() => keeping(page).textContent()).toContain('All kept');
    await page.waitForTimeout(300); // nothing else is on its way: writes go one after another
    await length(page).fill(lengthM);
    await page.reload();
    await settled(page, '04');
    expect(await length(page).inputValue()).toBe(lengthM);
  }
});

walk(
  'somebody else saved another place meanwhile: both edits stand, here and on the server',
  async ({ server, page, opened }) => {
    opened.expectComplaints('412');
    await openSheet(page, server.url, JOB, '04');
    await soon(() => keeping(page).textContent()).toContain('All kept');
    await saveElsewhere(server.url, (job) => {
      job.about = 'Gate code 4711';
    });
    await typeInto(length(page), '27');
    await soon(() => keeping(page).textContent()).toContain('All kept');
    await soon(() => servedLengthM(server.url)).toBe(27);
    const job = await (await fetch(`${server.url}/api/jobs/${JOB}`)).json();
    expect(job.about).toBe('Gate code 4711');
  },
);

walk('two pages of one device show each other’s edits as they are kept', async ({ server, page, browser }) => {
  await openSheet(page, server.url, JOB, '04');
  const other = await browser.context.newPage();
  try {
    await openSheet(other, server.url, JOB, '04');
    await soon(() => keeping(page).textContent()).toContain('All kept');
    await soon(() => keeping(other).textContent()).toContain('All kept');
    await typeInto(length(page), '28');
    await soon(() => length(other).inputValue()).toBe('28');
    await other.getByLabel('Fed at', { exact: true }).selectOption({ index: 4 });
    await soon(() => page.getByLabel('Fed at', { exact: true }).inputValue()).toBe('4');
    expect(await length(page).inputValue()).toBe('28');
    // a step back here takes back the newest of this device, and the other page shows it
    await other.locator('main').press('z');
    await soon(() => page.getByLabel('Fed at', { exact: true }).inputValue()).not.toBe('4');
    expect(await length(page).inputValue()).toBe('28');
  } finally {
    await other.close();
  }
});

walk(
  'a job opened again shows its figures before the engine is there, and none that are of another state',
  async ({ server, page }) => {
    await openSheet(page, server.url, JOB, '04');
    const head = () => page.getByRole('main').getByRole('heading', { level: 1 }).textContent();
    await typeInto(length(page), '24');
    await settled(page, '04');
    await soon(() => keeping(page).textContent()).toContain('All kept');
    const said = await head();
    expect(said).toMatch(/\d\.\d\d\sV/);
    // the worker puts the plan down when edits rest
    await soon(() =>
      page.evaluate(
        () =>
          new Promise((found) => {
            const request = indexedDB.open('eaveline-plans');
            request.onsuccess = () => {
              const database = request.result;
              if (!database.objectStoreNames.contains('plans')) {
                database.close();
                return found(undefined);
              }
              const row = database.transaction('plans').objectStore('plans').get('kestrel-rise');
              row.onsuccess = () => {
                database.close();
                found(row.result && JSON.parse(row.result.job).choices.trunks.a.homeRun.lengthM);
              };
            };
          }),
      ),
    ).toBe(24);

    // an engine that never comes
    await page.addInitScript(() => {
      window.Worker = class extends EventTarget {
        postMessage() {}
        terminate() {}
      } as unknown as typeof Worker;
    });
    await page.reload();
    await soon(head).toBe(said);
    await typeInto(length(page), '31');
    await soon(() => keeping(page).textContent()).toContain('All kept');
    await page.reload();
    await page.getByRole('heading', { level: 1 }).waitFor();
    expect(await length(page).count()).toBe(0); // fields of the trunks stand beside their figures, and wait for them
  },
);
