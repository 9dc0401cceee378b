import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { openSheet, SHEETS, titleCell } from './onSheet.ts';
import { phoneWalk, soon, walk } from './walk.ts';

/** Another paper changes colours and the height of targets, nothing else: those rules are asked again on each. */
const PAPERS = ['day', 'dark', 'roof'] as const;
const OF_PAPER = ['color-contrast', 'link-in-text-block', 'target-size'];

async function layPaper(page: Page, paper: (typeof PAPERS)[number]): Promise<void> {
  await page.evaluate((name) => {
    document.documentElement.dataset.paper = name;
  }, paper);
}

/** What axe finds, a line each: the paper, the rule, the place, what is wrong there. */
async function violations(page: Page, papers: readonly (typeof PAPERS)[number][] = PAPERS): Promise<string[]> {
  const lines: string[] = [];
  // the whole sheet in view: axe cannot judge a table that runs sideways and is cut by the sheet it scrolls in
  await page.setViewportSize({ width: page.viewportSize()?.width ?? 1440, height: 4000 });
  // and nothing on its way from one paper's colour to the next
  await page.emulateMedia({ reducedMotion: 'reduce' });
  for (const paper of papers) {
    await layPaper(page, paper);
    const axe = new AxeBuilder({ page });
    // of what passes one place is enough to know that it was looked at
    axe.options({ resultTypes: ['violations'], rules: { 'target-size': { enabled: true } } });
    if (paper !== 'day') axe.withRules(OF_PAPER);
    const { violations: found, passes } = await axe.analyze();
    if (!passes.some(({ id }) => id === 'color-contrast')) lines.push(`${paper}: axe saw no lettering`);
    for (const { id, nodes } of found) {
      for (const { target, failureSummary } of nodes)
        lines.push(`${paper}: ${id}: ${target.join(' ')}: ${failureSummary?.replace(/\s+/g, ' ')}`);
    }
  }
  return lines;
}

walk('axe finds nothing in the Book, on day, dark and roof paper', async ({ server, page }) => {
  await page.goto(server.url);
  await soon(() => titleCell(page, 'worked out').textContent()).toBe('worked out5 of 5');
  expect(await violations(page)).toEqual([]);
});

for (const { no, name } of SHEETS) {
  walk(`axe finds nothing on sheet ${no} ${name}, on day, dark and roof paper`, async ({ server, page }) => {
    await openSheet(page, server.url, 'kestrel-rise', no);
    expect(await violations(page)).toEqual([]);
  });
}

for (const { name, path, waitFor } of [
  { name: 'the history', path: 'history', waitFor: 'One step so far.' },
  { name: 'the walk of the survey', path: 'survey', waitFor: 'One thing is open at Kestrel Rise.' },
  { name: 'a place of the survey', path: 'survey/board', waitFor: 'Board: nothing open.' },
]) {
  walk(`axe finds nothing in ${name}, on day, dark and roof paper`, async ({ server, page }) => {
    await page.goto(`${server.url}/job/kestrel-rise/${path}`);
    await page.getByRole('heading', { level: 1 }).getByText(waitFor).waitFor();
    expect(await violations(page)).toEqual([]);
  });
}

phoneWalk('axe finds nothing in the list of sheets on a phone', async ({ server, page }) => {
  await page.goto(`${server.url}/job/kestrel-rise`);
  await page.getByRole('button', { name: 'Save job file' }).waitFor();
  expect(await violations(page)).toEqual([]);
});

// colours are those of the wide sheets; what is arranged another way is asked on one paper
phoneWalk('axe finds nothing on any sheet of a phone', { timeout: 300_000 }, async ({ server, page }) => {
  const found: string[] = [];
  for (const { no } of SHEETS) {
    await openSheet(page, server.url, 'kestrel-rise', no);
    found.push(...(await violations(page, ['day'])).map((line) => `${no} ${line}`));
  }
  expect(found).toEqual([]);
});

walk(
  'axe would see a field without a name, and lettering that is too pale on one paper only',
  async ({ server, page }) => {
    await openSheet(page, server.url, 'kestrel-rise', '09');
    await page.evaluate(() => {
      const planted = document.createElement('p');
      planted.innerHTML = '<input type="text"> <span id="pale">pale</span>';
      planted.style.background = '#fff';
      document.querySelector('main h1')?.after(planted);
      const style = document.createElement('style');
      style.textContent = '#pale { color: #000 } [data-paper="roof"] #pale { color: #999 }';
      document.head.append(style);
    });
    const found = await violations(page);
    expect(found.map((line) => line.split(':', 2).join(':'))).toEqual(['day: label', 'roof: color-contrast']);
  },
);
