import process from 'node:process';
import type { Page } from 'playwright-core';
import { test as base, beforeAll, expect, vi } from 'vitest';
import { buildOnce } from './buildOnce.ts';
import { type Device, type OwnBrowser, openBrowser, PATIENCE_MS } from './openBrowser.ts';
import { type OwnPage, openPage } from './openPage.ts';
import { type OwnServer, startServer } from './startServer.ts';

const hasBrowser = Boolean(process.env.CHROME_PATH);
const WALK_MS = 90_000;
const BUILD_MS = 120_000;

vi.setConfig({ testTimeout: WALK_MS, hookTimeout: WALK_MS });
if (hasBrowser) beforeAll(buildOnce, BUILD_MS);

interface OfFile {
  readonly server: OwnServer;
}
interface OfDevice {
  readonly browser: OwnBrowser;
}
interface OfWalk {
  readonly opened: OwnPage;
  readonly page: Page;
}

const served = base.extend<{ $file: OfFile }>({
  server: [
    // biome-ignore lint/correctness/noEmptyPattern: vitest reads from the pattern what a fixture needs
    async ({}, use) => {
      const server = await startServer();
      await use(server);
      await server.end();
    },
    { scope: 'file' },
  ],
});

const onDevice = (device: Device) =>
  served.extend<{ $file: OfDevice; $test: OfWalk }>({
    browser: [
      // biome-ignore lint/correctness/noEmptyPattern: as above
      async ({}, use) => {
        const browser = await openBrowser(device);
        await use(browser);
        await browser.end();
      },
      { scope: 'file' },
    ],
    opened: async ({ browser, server }, use) => {
      const opened = await openPage(browser.context);
      await use(opened);
      await opened.end(server.url);
      await server.layBookAnew();
      expect(opened.complaints, 'what the page complained of').toEqual([]);
    },
    page: async ({ opened }, use) => use(opened.page),
  });

/**
 * A walk through the real pages: the built sheets, the real server, Chromium on a desktop. A file of walks has a server
 * and a browser of its own; each walk begins with the five demo jobs as they were and a page that remembers nothing,
 * and fails on any error the page throws or writes to its console.
 *
 * Skipped where there is no Chromium: `npm test` says so in its first line.
 */
export const walk = onDevice('desktop').skipIf(!hasBrowser);

/** The same on a phone of 390 × 844. */
export const phoneWalk = onDevice('phone').skipIf(!hasBrowser);

/** Waits until a figure of the page is as expected: `await soon(() => …).toBe(…)`. */
export const soon = <T>(look: () => T | Promise<T>) => expect.poll(look, { timeout: PATIENCE_MS, interval: 50 });
