import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { openSheet, register, settled, typeInto } from './onSheet.ts';
import { phoneWalk, soon, walk } from './walk.ts';

const JOB = 'kestrel-rise';
const length = (page: Page) => page.getByLabel('Home run', { exact: true });
const keeping = (page: Page) => register(page).getByRole('status');

walk(
  'a history that is damaged on the device: the job opens as last kept, and it is said what happened',
  async ({ server, page }) => {
    await openSheet(page, server.url, JOB, '04');
    await typeInto(length(page), '24');
    await soon(() => keeping(page).textContent()).toContain('All kept');
    await page.evaluate(
      () =>
        new Promise<void>((resolve, reject) => {
          const request = indexedDB.open('eaveline');
          request.onerror = () => reject(request.error);
          request.onsuccess = () => {
            const transaction = request.result.transaction(['snapshots', 'changes'], 'readwrite');
            transaction.objectStore('changes').clear();
            transaction.objectStore('snapshots').put({ id: 'kestrel-rise', bytes: new Uint8Array(500).fill(7) });
            transaction.oncomplete = () => {
              request.result.close();
              resolve();
            };
          };
        }),
    );
    await page.reload();
    await settled(page, '04');
    expect(await length(page).inputValue()).toBe('24');
    await register(page).getByText('The history of this job does not read: it is damaged.').waitFor();
    expect(await register(page).textContent()).not.toContain('magic');
    const download = page.waitForEvent('download');
    await register(page)
      .getByRole('button', { name: /^Save the history laid aside/ })
      .click();
    const file = await (await download).path();
    expect([...readFileSync(file)]).toEqual(Array.from({ length: 500 }, () => 7));
    await typeInto(length(page), '25');
    await soon(() => keeping(page).textContent()).toContain('All kept');
  },
);

walk(
  'no room on the device: the edit stands on the page, the way out is said, and nothing is lost',
  async ({ server, page }) => {
    await page.addInitScript(() => {
      const put = IDBObjectStore.prototype.put;
      IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...args: Parameters<typeof put>) {
        if ((globalThis as { full?: boolean }).full) throw new DOMException('full', 'QuotaExceededError');
        return put.apply(this, args);
      };
    });
    await openSheet(page, server.url, JOB, '04');
    await soon(() => keeping(page).textContent()).toContain('All kept');
    await page.evaluate(() => {
      (globalThis as { full?: boolean }).full = true;
    });
    await typeInto(length(page), '24');
    await soon(() => keeping(page).textContent()).toBe(
      'Not kept on this device: This device has no more room. Your edits stand on this page and on the server. Save the job file too.',
    );
    const download = page.waitForEvent('download');
    await register(page).getByRole('button', { name: 'Save job file' }).click();
    expect((await download).suggestedFilename()).toBe('kestrel-rise.job.json');
    await page.evaluate(() => {
      (globalThis as { full?: boolean }).full = false;
    });
    await register(page).getByRole('button', { name: 'Try again now' }).click();
    await soon(() => keeping(page).textContent()).toContain('All kept');
    await page.reload();
    await settled(page, '04');
    expect(await length(page).inputValue()).toBe('24');
  },
);

phoneWalk(
  'no room on the phone in the survey: its head says so, and the job file is at hand',
  async ({ server, page }) => {
    await page.addInitScript(() => {
      const put = IDBObjectStore.prototype.put;
      IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...args: Parameters<typeof put>) {
        if ((globalThis as { full?: boolean }).full) throw new DOMException('full', 'QuotaExceededError');
        return put.apply(this, args);
      };
    });
    await page.goto(`${server.url}/job/${JOB}/survey`);
    await page.getByRole('status').getByText('All kept, on this device and on the server.').waitFor();
    await page.evaluate(() => {
      (globalThis as { full?: boolean }).full = true;
    });
    await page.getByRole('link', { name: /^Board/ }).tap();
    await page.getByLabel('Surveyed by').fill('Nia');
    await typeInto(page.getByLabel('Free ways', { exact: true }), '7');
    await page.getByRole('banner').getByText('not kept').waitFor();

    await page.getByRole('button', { name: 'The walk' }).tap();
    await page
      .getByRole('status')
      .getByText(/^Not kept on this device: This device has no more room\./)
      .waitFor();
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save job file' }).tap();
    expect((await download).suggestedFilename()).toBe('kestrel-rise.job.json');
  },
);

walk(
  'a job of a newer version on the device: it does not open, stays as it is and can be saved',
  async ({ server, page }) => {
    await openSheet(page, server.url, JOB, '04');
    await soon(() => keeping(page).textContent()).toContain('All kept');
    await page.evaluate(
      () =>
        new Promise<void>((resolve, reject) => {
          const request = indexedDB.open('eaveline');
          request.onerror = () => reject(request.error);
          request.onsuccess = () => {
            const store = request.result.transaction('jobs', 'readwrite').objectStore('jobs');
            const read = store.get('kestrel-rise');
            read.onsuccess = () => store.put({ ...read.result, job: { ...read.result.job, version: 99 } });
            store.transaction.oncomplete = () => {
              request.result.close();
              resolve();
            };
          };
        }),
    );
    await page.reload();
    await page.getByText('This job does not open. It is kept as it is.').waitFor();
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save what is there' }).click();
    expect((await download).suggestedFilename()).toBe('kestrel-rise.as-kept.json');
  },
);

/** Makes what the device keeps of the job something that is no job. */
const damage = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const request = indexedDB.open('eaveline');
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
          const store = request.result.transaction('jobs', 'readwrite').objectStore('jobs');
          const read = store.get('kestrel-rise');
          read.onsuccess = () => store.put({ ...read.result, job: { name: 'Kestrel Rise', facts: 7 } });
          store.transaction.oncomplete = () => {
            request.result.close();
            resolve();
          };
        };
      }),
  );

walk(
  'a job damaged on the device, whole on the server: it is laid aside and the server’s taken',
  async ({ server, page }) => {
    await openSheet(page, server.url, JOB, '04');
    await typeInto(length(page), '24');
    const onServer = async () => (await page.request.get(`${server.url}/api/jobs/${JOB}`)).json();
    await soon(async () => (await onServer()).choices.trunks.a.homeRun.lengthM).toBe(24);
    await soon(() => keeping(page).textContent()).toContain('All kept');
    await damage(page);
    await page.reload();
    await page.getByText('This job does not open. It is kept as it is.').waitFor();
    await page.getByRole('button', { name: 'Lay this job aside and take the server’s' }).click();
    await settled(page, '04');
    expect(await length(page).inputValue()).toBe('24');

    // what was laid aside stands in the Book, to be saved
    await page.goto(server.url);
    await page.getByText('Laid aside on this device, whole').waitFor();
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save what is there of Kestrel Rise' }).click();
    expect(JSON.parse(readFileSync(await (await download).path(), 'utf8'))).toEqual({ name: 'Kestrel Rise', facts: 7 });

    // saved, it can go
    await page.getByRole('button', { name: 'Remove Kestrel Rise, laid aside, from this device' }).click();
    await page.getByText('What was laid aside is removed from this device.').waitFor();
    await soon(() => page.getByText('Laid aside on this device, whole').count()).toBe(0);
    await page.reload();
    await page
      .getByRole('link', { name: /Kestrel Rise/ })
      .first()
      .waitFor();
    expect(await page.getByText('Laid aside on this device, whole').count()).toBe(0);
  },
);

walk('the same from the Book: the server’s copy stands on its shelf meanwhile', async ({ server, page }) => {
  await openSheet(page, server.url, JOB, '04');
  await soon(() => keeping(page).textContent()).toContain('All kept');
  await damage(page);
  await page.goto(server.url);
  await page.getByText('The copy on the server opens, above.').waitFor();
  const row = page.getByRole('link', { name: /Kestrel Rise/ }).first();
  await row.waitFor();
  await page.getByRole('button', { name: 'Lay Kestrel Rise aside and take the server’s' }).click();
  await page.getByText('Laid aside on this device, whole').waitFor();
  await row.click();
  await soon(() => page.locator('main > div > header > span').textContent()).toBe('08');
});

walk(
  'a newer Eaveline has the device’s database: this one keeps its hands off, and says what to do',
  async ({ server, page }) => {
    await openSheet(page, server.url, JOB, '04');
    await soon(() => keeping(page).textContent()).toContain('All kept');
    // the newer one in another tab
    await page.evaluate(
      () =>
        new Promise<void>((resolve, reject) => {
          const request = indexedDB.open('eaveline', 99);
          request.onerror = () => reject(request.error);
          request.onsuccess = () => {
            request.result.close();
            resolve();
          };
        }),
    );
    await typeInto(length(page), '24');
    await soon(() => keeping(page).textContent()).toContain('Not kept: A newer Eaveline has kept jobs on this device.');
    page.on('dialog', (dialog) => void dialog.accept());
    await page.reload();
    await page.getByText('Reload this page to take the newer one.').waitFor();
  },
);
