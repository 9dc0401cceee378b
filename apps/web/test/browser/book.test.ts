import { readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { head, settled } from './onSheet.ts';
import { phoneWalk, soon, walk } from './walk.ts';

const row = (page: Page, name: string): Locator =>
  page
    .getByRole('main')
    .getByRole('listitem')
    .filter({ has: page.locator('b', { hasText: new RegExp(`^${name}$`) }) });
const names = (page: Page) => page.locator('main li > div > a b').allTextContents();
const said = (page: Page) => page.locator('main [role="status"]').allTextContents();

async function openBook(page: Page, url: string): Promise<void> {
  await page.goto(url);
  await row(page, 'Kestrel Rise').waitFor();
}

/** Opens what can be done with a job, and does it. */
async function act(page: Page, name: string, does: string): Promise<void> {
  await page.getByRole('button', { name: `What can be done with ${name}`, exact: true }).click();
  await row(page, name).getByRole('button', { name: does, exact: true }).click();
}

/** Lets files go over the page, as a person does from a folder. */
async function letGo(page: Page, ...files: readonly { readonly name: string; readonly text: string }[]): Promise<void> {
  const data = await page.evaluateHandle((all) => {
    const transfer = new DataTransfer();
    for (const { name, text } of all) transfer.items.add(new File([text], name));
    return transfer;
  }, files);
  await page.dispatchEvent('main', 'dragover', { dataTransfer: data });
  await page.dispatchEvent('main', 'drop', { dataTransfer: data });
}

async function served(url: string, id: string) {
  return (await fetch(`${url}/api/jobs/${id}`)).json();
}

async function serve(url: string, job: { id: string }): Promise<void> {
  const headers = { 'content-type': 'application/json' };
  const answer = await fetch(`${url}/api/jobs/${job.id}`, { method: 'PUT', headers, body: JSON.stringify(job) });
  if (!answer.ok) throw new Error(await answer.text());
}

walk('a unit is found by the serial on its label, and opens at its place', async ({ server, page }) => {
  const job = await served(server.url, 'kestrel-rise');
  const [[moduleId, { unitId }]] = Object.entries<{ unitId: string }>(job.choices.modules) as [
    [string, { unitId: string }],
  ];
  job.records.serials.one = { at: '2026-05-15T06:10:00Z', by: 'Nia', of: unitId, serial: '7312-4456-0098' };
  await serve(server.url, job);
  await openBook(page, server.url);

  await page.getByLabel('Find').fill('7312 4456');
  await soon(() => names(page)).toEqual(['Kestrel Rise']);
  // the drawing's own name of the place comes with its plan
  await soon(() => row(page, 'Kestrel Rise').textContent()).toMatch(/Found by serial of [A-Z]+\d·\d+, 7312-4456-0098/);
  await page.getByLabel('Find').press('Enter');
  await settled(page, '03');
  expect(new URL(page.url()).searchParams.get('at')).toBe(`module:${moduleId}`);
});

walk('with one letter wrong a job is found, and it is said; a number is never guessed', async ({ server, page }) => {
  await openBook(page, server.url);
  await page.getByLabel('Find').fill('larkspurr');
  await soon(() => names(page)).toEqual(['Larkspur Lane']);
  expect(await page.getByRole('main').textContent()).toContain(
    'Nothing has “larkspurr” in it. With one letter changed:',
  );
  await page.getByLabel('Find').fill('zzz');
  await soon(() => page.getByRole('main').textContent()).toContain('No job has “zzz” in it.');
});

walk(
  'each job says what it holds at next and where it is kept; all are kept on this device',
  async ({ server, page }) => {
    await openBook(page, server.url);
    await soon(() => row(page, 'Kestrel Rise').textContent()).toMatch(/Next hold point: .+\./);
    expect(await row(page, 'Kestrel Rise').textContent()).toContain('on the server, not on this device yet');
    await page.getByRole('button', { name: 'Keep all on this device' }).click();
    await soon(() => row(page, 'Kestrel Rise').textContent()).toContain('on this device and the server');
    await soon(() => said(page)).toContainEqual(expect.stringContaining('kept on this device too'));
  },
);

walk('a job is duplicated for the same house and for another', async ({ server, page }) => {
  await openBook(page, server.url);
  await act(page, 'Kestrel Rise', 'Duplicate');
  await page.getByRole('button', { name: 'Make the duplicate' }).click();
  await row(page, 'Kestrel Rise, again').first().waitFor();
  const again = await served(server.url, 'kestrel-rise-again');
  expect(again.facts.provenance).toEqual((await served(server.url, 'kestrel-rise')).facts.provenance);

  await act(page, 'Kestrel Rise', 'Duplicate');
  await page.getByLabel('another house').check();
  await page.getByRole('button', { name: 'Make the duplicate' }).click();
  expect(await page.getByRole('main').textContent()).toContain('Type the address: the job is called by it.');
  await page.getByLabel('Where').fill('4 Finch Row');
  await page.getByLabel('Latitude').fill('-36.8');
  await page.getByLabel('Longitude').fill('144.3');
  await page.getByRole('button', { name: 'Make the duplicate' }).click();
  await row(page, '4 Finch Row').first().waitFor();
  const finch = await served(server.url, '4-finch-row');
  expect([finch.customer, finch.facts.provenance, finch.facts.site.latitudeDeg]).toEqual([{}, {}, -36.8]);
});

walk(
  'what is opened far down the Book stands at the head of its sheet, and the sheet stays whole',
  async ({ server, page }) => {
    await page.setViewportSize({ width: 1440, height: 500 });
    await openBook(page, server.url);
    await act(page, 'Quayside Terrace', 'Duplicate');
    await page.getByRole('heading', { name: 'Duplicate Quayside Terrace' }).waitFor();
    const moved = await page.evaluate(() =>
      [...document.querySelectorAll('html, body, body *')]
        .filter((each) => each.scrollTop > 0 && !each.matches('main *'))
        .map((each) => each.tagName + each.className),
    );
    expect(moved).toEqual([]);
    expect((await page.getByRole('heading', { level: 1 }).boundingBox())?.y).toBeGreaterThan(0);
  },
);

walk('a new job has the clock of its town; a town that is not known is said', async ({ server, page }) => {
  await openBook(page, server.url);
  await page.getByRole('button', { name: 'Begin a job' }).click();
  await page.getByLabel('Where').fill('9 Heron Way');
  const town = page.getByLabel('Town near it');
  await town.fill('Melborne');
  await page.getByText('No town called Melborne is known. Type latitude and longitude.').waitFor();
  await town.fill('melbourne');
  await soon(() => page.getByLabel('Clock').inputValue()).toBe('Australia/Melbourne');
  expect(await page.getByLabel('Latitude').inputValue()).not.toBe('');
  await town.fill('Perth, AU');
  await soon(() => page.getByLabel('Clock').inputValue()).toBe('Australia/Perth');
  await page.context().grantPermissions(['geolocation']);
  await page.context().setGeolocation({ latitude: -34.93, longitude: 138.6, accuracy: 12 });
  await page.getByRole('button', { name: 'I stand at the house' }).click();
  await page.getByText('Where this device is, to 12 m.').waitFor();
  await soon(() => page.getByLabel('Clock').inputValue()).toBe('Australia/Adelaide');
  await page.getByRole('button', { name: 'Begin the survey' }).click();
  await soon(() => page.url()).toContain('/job/9-heron-way/survey');
  expect((await served(server.url, '9-heron-way')).facts.site).toMatchObject({
    zone: 'Australia/Adelaide',
    latitudeDeg: -34.93,
  });
});

walk('a job is archived by somebody, found by the word, and taken back', async ({ server, page }) => {
  await openBook(page, server.url);
  await page.getByRole('button', { name: 'What can be done with Larkspur Lane' }).click();
  await page.getByRole('button', { name: 'Archive', exact: true }).click();
  await page.getByLabel('Who archives it').fill('Nia');
  await page.getByLabel('Who archives it').press('Enter');
  await soon(() => said(page)).toContain('Larkspur Lane is archived.');
  await soon(() => names(page)).not.toContain('Larkspur Lane');
  expect((await served(server.url, 'larkspur-lane')).archived).toMatchObject({ by: 'Nia' });

  await page.getByLabel('Find').fill('archived');
  await soon(() => names(page)).toEqual(['Larkspur Lane']);
  await act(page, 'Larkspur Lane', 'Take back');
  await soon(() => said(page)).toContain('Larkspur Lane is back on its shelf.');
  await page.getByLabel('Find').fill('');
  await soon(() => names(page)).toContain('Larkspur Lane');
  expect((await served(server.url, 'larkspur-lane')).archived).toBeUndefined();
});

walk('a job file is saved, let go over a sheet, and asks where the job is here already', async ({ server, page }) => {
  await openBook(page, server.url);
  const download = page.waitForEvent('download');
  await act(page, 'Quayside Terrace', 'Save job file');
  const file = await download;
  expect(file.suggestedFilename()).toBe('quayside-terrace.job.json');
  const text = readFileSync(await file.path(), 'utf8');

  // let go over a sheet of another job: the Book opens and says what became of it
  await page.goto(`${server.url}/job/kestrel-rise/08`);
  await settled(page, '08');
  await letGo(
    page,
    { name: 'same.job.json', text },
    { name: 'other.job.json', text: text.replace(/"about": "[^"]*"/, '"about": "from a file"') },
  );
  await soon(() => said(page)).toContainEqual(expect.stringContaining('Nothing was changed.'));
  await soon(() => said(page)).toContainEqual(
    expect.stringContaining('other.job.json Quayside Terrace is here already. They differ in name, customer or state.'),
  );
  await page.getByRole('button', { name: 'Keep both' }).click();
  await row(page, 'Quayside Terrace, from a file').first().waitFor();
  expect((await served(server.url, 'quayside-terrace-2')).about).toBe('from a file');
  expect((await served(server.url, 'quayside-terrace')).about).not.toBe('from a file');

  await letGo(page, { name: 'newer.job.json', text: text.replace(/"about": "[^"]*"/, '"about": "newer"') });
  await page.getByRole('button', { name: 'Take it as the newer state of the job here' }).click();
  await soon(async () => (await served(server.url, 'quayside-terrace')).about).toBe('newer');
});

walk(
  'a file that is no job, let go over a sheet, is named; in the Book many of them do not push the shelves away',
  async ({ server, page }) => {
    await page.goto(`${server.url}/job/kestrel-rise/08`);
    await settled(page, '08');
    await letGo(page, { name: 'roof plan.pdf', text: '%PDF-1.7' });
    await page
      .getByRole('alert')
      .getByText('roof plan.pdf was not taken: it is a PDF. Wanted is a job file: its name ends in .job.json.')
      .waitFor();
    await page.getByRole('button', { name: 'Put away' }).click();
    expect(new URL(page.url()).pathname).toBe('/job/kestrel-rise/08');

    await openBook(page, server.url);
    await letGo(page, ...Array.from({ length: 12 }, (_, i) => ({ name: `page ${i}.pdf`, text: '%PDF-1.7' })));
    await page.getByText('Ten more files did not open').waitFor();
    await page.getByText('Found a PDF; wanted a job file').last().waitFor();
    const shelf = await page.getByRole('heading', { name: /^On site/ }).boundingBox();
    expect(shelf?.y).toBeLessThan(900);
  },
);

walk('a bad file is told remark by remark, and nothing of it is taken', async ({ server, page }) => {
  await openBook(page, server.url);
  const before = (await names(page)).length;
  const job = await served(server.url, 'kestrel-rise');
  job.id = 'bad';
  job.facts.site.latitudeDeg = 376;
  job.choices.units = { 'u-1': { sheet: 'nothing', trunkId: 'a', drop: 0 } };
  await letGo(
    page,
    { name: 'bad.job.json', text: JSON.stringify(job, null, 2) },
    { name: 'newer.job.json', text: JSON.stringify({ ...job, version: 9 }) },
    { name: 'notes.txt', text: 'call back on Monday' },
  );
  const files = page.locator('main section').filter({ has: page.getByRole('heading', { name: /^Files opened/ }) });
  await soon(() => files.textContent()).toContain('notes.txt does not open. Nothing of it was taken.');
  const words = await files.textContent();
  expect(words).toMatch(/line \d+, facts\.site\.latitudeDeg/);
  expect(words).toContain('choices.units.u-1.drop');
  expect(words).toContain('Open it with a newer Eaveline');
  expect((await names(page)).length).toBe(before);
  for (let left = 3; left > 0; left--) await files.getByRole('button', { name: 'Put away' }).first().click();
  await soon(() => files.count()).toBe(0);
});

walk('with the server stopped the Book is still there, and a job can be begun', async ({ server, page, opened }) => {
  opened.expectServerAway();
  await openBook(page, server.url);
  await page.getByRole('button', { name: 'Keep all on this device' }).click();
  await soon(() => row(page, 'Kestrel Rise').textContent()).toContain('on this device and the server');
  await row(page, 'Kestrel Rise').getByRole('link').click();
  await settled(page, '08');

  await server.stop();
  await page.getByRole('link', { name: 'The Book' }).click();
  await soon(() => page.getByRole('main').textContent()).toContain(
    'The server does not answer. These are the jobs kept on this device.',
  );
  expect(await names(page)).toEqual(expect.arrayContaining(['Kestrel Rise', 'Larkspur Lane']));

  await page.getByRole('button', { name: 'Begin a job' }).click();
  await page.getByRole('button', { name: 'Begin the survey' }).click();
  expect(await page.getByRole('main').textContent()).toContain('Type degrees, south negative');
  await page.getByLabel('Where').fill('7 Wren Street');
  await page.getByLabel('Latitude').fill('-37.6');
  await page.getByLabel('Longitude').fill('143.9');
  await page.getByRole('button', { name: 'Begin the survey' }).click();
  await soon(() => page.url()).toContain('/job/7-wren-street/survey');

  await server.startAgain();
});

walk('a kept job that does not open is a closed row, and what is there can be saved', async ({ server, page }) => {
  await openBook(page, server.url);
  await page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const request = indexedDB.open('eaveline');
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
          const transaction = request.result.transaction('jobs', 'readwrite');
          transaction
            .objectStore('jobs')
            .put({ id: 'heron-bank', job: { name: 'Heron Bank', format: 'eaveline-job', version: 9 }, keptAt: '' });
          transaction.oncomplete = () => {
            request.result.close();
            resolve();
          };
        };
      }),
  );
  await page.reload();
  await soon(() => page.getByRole('main').textContent()).toContain(
    'Heron Bank On this device as heron-bank. It is left as it is.',
  );
  expect(await page.getByRole('main').textContent()).toContain('Open it with a newer Eaveline');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save what is there of Heron Bank' }).click();
  const saved = JSON.parse(readFileSync(await (await download).path(), 'utf8'));
  expect(saved).toEqual({ name: 'Heron Bank', format: 'eaveline-job', version: 9 });
});

phoneWalk(
  'on a phone a shelf is picked, and the acts of a job are within reach of a thumb',
  async ({ server, page }) => {
    await openBook(page, server.url);
    await page.getByLabel('Shelf').selectOption('Archived');
    await soon(() => page.getByRole('main').textContent()).toContain('Nothing stands on this shelf.');
    await page.getByLabel('Shelf').selectOption('all');
    await page.getByRole('button', { name: 'What can be done with Kestrel Rise' }).tap();
    const save = row(page, 'Kestrel Rise').getByRole('button', { name: 'Save job file' });
    const box = await save.boundingBox();
    expect(box?.height).toBeGreaterThanOrEqual(48);
    expect(await head(page).textContent()).toMatch(/\.$/);
  },
);
