import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { head, openSheet, register, settled, typeInto } from './onSheet.ts';
import { addressInFront, NEWER_TITLE } from './throughNewer.ts';
import { soon, walk } from './walk.ts';

const JOB = 'kestrel-rise';
const length = (page: Page) => page.getByLabel('Home run', { exact: true });
const keeping = (page: Page) => register(page).getByRole('status');

/** Waits until a whole copy of the app is on the device and looks after this page. */
async function appKept(page: Page): Promise<void> {
  await soon(() => page.evaluate(() => navigator.serviceWorker.controller?.state)).toBe('activated');
}

walk(
  'the server is gone: the page reloads, a deep link opens in a new tab, and the Book is there',
  async ({ server, page, opened }) => {
    opened.expectServerAway();
    await openSheet(page, server.url, JOB, '04');
    const said = await head(page).textContent();
    await appKept(page);
    await soon(() => register(page).getByText('opens only with its server').count()).toBe(0);
    await server.stop();

    await page.reload();
    await settled(page, '04');
    expect(await head(page).textContent()).toBe(said);

    const tab = await page.context().newPage();
    try {
      await openSheet(tab, server.url, JOB, '08');
      expect(await head(tab).textContent()).toMatch(/stops? this job/);
      await tab.goto(server.url);
      await soon(() => tab.getByRole('link', { name: /Kestrel Rise/ }).count()).toBeGreaterThan(0);
    } finally {
      await tab.close();
    }
  },
);

walk(
  'an edit without a server is there after a reload, and goes to the server when it is back',
  async ({ server, page, opened }) => {
    opened.expectServerAway();
    await openSheet(page, server.url, JOB, '04');
    await appKept(page);
    await server.stop();
    await page.reload();
    await settled(page, '04');

    await typeInto(length(page), '23');
    await soon(() => keeping(page).textContent()).toMatch(/^Kept on this device\. Not on the server since/);
    await settled(page, '04');
    const said = await head(page).textContent();

    await page.reload();
    await settled(page, '04');
    expect(await length(page).inputValue()).toBe('23');
    expect(await head(page).textContent()).toBe(said);

    await server.startAgain();
    await register(page).getByRole('button', { name: 'Try again now' }).click();
    await soon(() => keeping(page).textContent()).toContain('All kept');
    const job = await (await fetch(`${server.url}/api/jobs/${JOB}`)).json();
    expect(job.choices.trunks.a.homeRun.lengthM).toBe(23);
  },
);

/** The page of the app as it was served, whatever the sheet has since written into its title. */
const servedTitle = (page: Page) =>
  page.evaluate(async () => /<title>(.*)<\/title>/.exec(await (await fetch('/index.html')).text())?.[1]);

walk(
  'a newer app waits for a word, and is then taken in every tab, where an edit is not kept only after it is',
  async ({ server, page }) => {
    const front = await addressInFront(server.url);
    const other = await page.context().newPage();
    const notice = (tab: Page) => tab.getByRole('status').filter({ hasText: 'newer Eaveline' });
    try {
      await openSheet(page, front.url, JOB, '04');
      await appKept(page);
      await openSheet(other, front.url, JOB, '08');
      expect(await notice(page).count()).toBe(0);

      front.comeOutNewer();
      await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
      for (const tab of [page, other]) {
        await soon(() => notice(tab).textContent()).toContain('A newer Eaveline is ready. Your edits are kept.');
        expect(await servedTitle(tab)).toBe('Eaveline');
      }

      // the other tab holds something that is not kept: it stays as it is until that is
      await other.evaluate(() => {
        const hold = (event: Event) => event.preventDefault();
        addEventListener('beforeunload', hold);
        Object.assign(window, { letGo: () => removeEventListener('beforeunload', hold), sameAsBefore: true });
      });
      await page.evaluate(() => Object.assign(window, { sameAsBefore: true }));
      await notice(page).getByRole('button', { name: 'Take it now' }).click();

      await soon(() => page.evaluate(() => 'sameAsBefore' in window).catch(() => true)).toBe(false);
      await settled(page, '04');
      expect(await servedTitle(page)).toBe(NEWER_TITLE);
      expect(await notice(page).count()).toBe(0);

      expect(await notice(other).textContent()).toBe('The newer Eaveline comes as soon as the last edit is kept.');
      expect(await other.evaluate(() => 'sameAsBefore' in window)).toBe(true);
      await other.evaluate(() => (window as unknown as { letGo(): void }).letGo());
      await soon(() => other.evaluate(() => 'sameAsBefore' in window).catch(() => true)).toBe(false);
      await settled(other, '08');
    } finally {
      await other.close();
      await front.end();
    }
  },
);

walk('put off, a newer app is not spoken of again, and comes with the next start', async ({ server, page }) => {
  const front = await addressInFront(server.url);
  const notice = page.getByRole('status').filter({ hasText: 'newer Eaveline' });
  try {
    await openSheet(page, front.url, JOB, '04');
    await appKept(page);
    front.comeOutNewer();
    await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
    await soon(() => notice.count()).toBe(1);
    await notice.getByRole('button', { name: 'Later' }).click();
    expect(await notice.count()).toBe(0);
  } finally {
    await front.end();
  }
});

walk(
  'the app can be installed: a name, a start and pictures in the sizes a device asks for',
  async ({ server, page }) => {
    await page.goto(server.url);
    const address = await page.locator('link[rel="manifest"]').getAttribute('href');
    const manifest = await (await fetch(new URL(address ?? '', server.url))).json();
    expect(manifest).toMatchObject({ name: 'Eaveline', display: 'standalone', start_url: '/', scope: '/' });
    for (const { src, sizes, type } of manifest.icons as { src: string; sizes: string; type: string }[]) {
      const answer = await fetch(new URL(src, server.url));
      expect([src, answer.headers.get('content-type')]).toEqual([src, type]);
      if (type !== 'image/png') continue;
      const wide = new DataView(await answer.arrayBuffer()).getUint32(16); // PNG, IHDR: width
      expect([src, sizes]).toEqual([src, `${wide}x${wide}`]);
    }
  },
);
