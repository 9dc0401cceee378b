import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { type BrowserContext, chromium } from 'playwright-core';
import { CHROMIUM_FLAGS } from '../../../../scripts/chromium.mjs';

/** The two frames the sheets are made for. */
const DEVICES = {
  desktop: { viewport: { width: 1440, height: 900 } },
  phone: { viewport: { width: 390, height: 844 }, isMobile: true, hasTouch: true },
} as const;
export type Device = keyof typeof DEVICES;

/** Longer than anything takes on two busy cores; what is waited for this long does not come. */
export const PATIENCE_MS = 20_000;

/** A browser that knows nothing yet: its profile is a folder of its own. */
export interface OwnBrowser {
  readonly context: BrowserContext;
  end(): Promise<void>;
}

/** Starts Chromium in one of the two frames. */
export async function openBrowser(device: Device): Promise<OwnBrowser> {
  const profile = mkdtempSync(join(tmpdir(), 'eaveline-walk-browser-'));
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: process.env.CHROME_PATH as string,
    headless: true,
    args: [...CHROMIUM_FLAGS],
    permissions: ['clipboard-read', 'clipboard-write'],
    ...DEVICES[device],
  });
  context.setDefaultTimeout(PATIENCE_MS);
  return {
    context,
    async end() {
      await context.close();
      rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
    },
  };
}
