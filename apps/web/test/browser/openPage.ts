import type { BrowserContext, Page } from 'playwright-core';

/** A page, and everything it has complained of. */
export interface OwnPage {
  readonly page: Page;
  /** Errors thrown in the page, and errors it wrote to its console. */
  readonly complaints: readonly string[];
  /** Complaints that hold these words belong to the walk: a server that is stopped on purpose. */
  expectComplaints(words: string): void;
  /** The walk stops the server: what Chromium writes when the page, or its worker, does not reach it is no fault. */
  expectServerAway(): void;
  /** Closes it and throws away what this browser keeps of the pages at an address. */
  end(origin: string): Promise<void>;
}

export async function openPage(context: BrowserContext): Promise<OwnPage> {
  const page = await context.newPage();
  const expected: string[] = [];
  const complaints: string[] = [];
  const complain = (words: string) => {
    if (!expected.some((each) => words.includes(each))) complaints.push(words);
  };
  page.on('pageerror', (error) => complain(error.stack ?? error.message));
  page.on('crash', () => complain('The page crashed.'));
  page.on('console', (message) => {
    if (message.type() === 'error') complain(`${message.text()} (${message.location().url})`);
  });
  return {
    page,
    complaints,
    expectComplaints: (words) => void expected.push(words),
    expectServerAway: () => void expected.push('net::ERR_CONNECTION_REFUSED', 'when fetching the script'),
    async end(origin) {
      await page.close(); // first: nothing may be written while it is thrown away
      const [blank] = context.pages();
      if (blank === undefined) throw new Error('the page that Chromium began with is gone');
      const chrome = await context.newCDPSession(blank);
      await chrome.send('Storage.clearDataForOrigin', { origin, storageTypes: 'all' });
      await chrome.detach();
    },
  };
}
