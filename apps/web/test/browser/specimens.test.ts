import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { SPECIMENS } from '../../src/specimens/all.ts';
import { openSheet, pad } from './onSheet.ts';
import { soon, walk } from './walk.ts';

const GROUPS = [...new Set(SPECIMENS.map(({ group }) => group))];

async function openSpecimens(page: Page, url: string): Promise<void> {
  await page.goto(`${url}/specimens`);
  await soon(() => page.locator('[data-specimen]').count()).toBeGreaterThan(30);
  await page.evaluate(() => document.fonts.ready);
}

/** What axe finds, a line each. */
async function violations(axe: AxeBuilder): Promise<string[]> {
  const { violations: found, passes } = await axe.analyze();
  expect(passes.length).toBeGreaterThan(0);
  return found.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id}: ${target}: ${failureSummary}`),
  );
}

/** Rules that look at the page as a whole. */
const OF_PAGE = ['document-title', 'heading-order', 'landmark-one-main', 'landmark-unique', 'page-has-heading-one'];

walk('axe finds nothing in how the page of specimens is put together', async ({ server, page }) => {
  await openSpecimens(page, server.url);
  expect(await violations(new AxeBuilder({ page }).withRules(OF_PAGE))).toEqual([]);
});

// the parts lie on all three papers at once; each group is looked at by itself, for the page is long
for (const group of GROUPS) {
  walk(`axe finds nothing in ${group.toLowerCase()}, on day, dark and roof paper`, async ({ server, page }) => {
    await openSpecimens(page, server.url);
    expect(await violations(new AxeBuilder({ page }).include(`[data-group="${group}"]`))).toEqual([]);
  });
}

walk('axe finds nothing in the frame and on the pad, whichever paper is laid', async ({ server, page }) => {
  await openSpecimens(page, server.url);
  for (const paper of ['dark', 'roof']) {
    await page.evaluate((name) => {
      document.documentElement.dataset.paper = name;
    }, paper);
    const axe = new AxeBuilder({ page }).withRules(['color-contrast', 'target-size']);
    for (const part of ['[data-specimen="Pad"]', 'main > div > header', 'main footer']) axe.include(part);
    expect(await violations(axe), paper).toEqual([]);
  }
});

walk('every sign of the proof is drawn from a file of ours, in every face and weight', async ({ server, page }) => {
  await openSpecimens(page, server.url);
  const chrome = await page.context().newCDPSession(page);
  await chrome.send('DOM.enable');
  await chrome.send('CSS.enable');
  const fontsOf = async (selector: string) => {
    const { root } = await chrome.send('DOM.getDocument');
    const { nodeIds } = await chrome.send('DOM.querySelectorAll', { nodeId: root.nodeId, selector });
    const all = await Promise.all(nodeIds.map((nodeId) => chrome.send('CSS.getPlatformFontsForNode', { nodeId })));
    return all.map(({ fonts }) => fonts);
  };
  // a sign in a face of the machine would be counted: planted, it is
  await page.evaluate(() => {
    const planted = document.createElement('p');
    planted.id = 'planted';
    planted.style.fontFamily = 'monospace';
    planted.textContent = 'Ω';
    document.querySelector('main h1')?.after(planted);
  });
  await soon(async () => (await fontsOf('#planted'))[0]?.some(({ isCustomFont }) => !isCustomFont)).toBe(true);

  await soon(async () => {
    const proofs = await fontsOf('[data-proof]');
    expect(proofs.length).toBeGreaterThan(50);
    return proofs.flat().filter(({ isCustomFont }) => !isCustomFont);
  }).toEqual([]);
});

walk('a part is shown on all three papers at once, and printed on one', async ({ server, page }) => {
  await openSpecimens(page, server.url);
  const act = page.locator('[data-specimen="Act"]');
  const grounds = () =>
    act.locator('[data-paper]').evaluateAll((papers) => papers.map((paper) => getComputedStyle(paper).backgroundColor));
  expect(new Set(await grounds()).size).toBe(3);
  await page.emulateMedia({ media: 'print' });
  expect(await act.locator('[data-paper]:visible').count()).toBe(1);
  expect((await grounds())[0]).toBe('rgb(255, 255, 255)');
});

walk('a working is copied as text for a letter, and says so', async ({ server, page }) => {
  await openSheet(page, server.url, 'kestrel-rise', '04');
  await pad(page).getByRole('button', { name: 'Copy this working' }).click();
  await soon(() => pad(page).getByRole('status').textContent()).toBe('Copied.');
  const text = await page.evaluate(() => navigator.clipboard.readText());
  expect(text).toContain('ΔU = ΔU₁ + ΔU₂ + ΔU₃');
  expect(text).toMatch(/\n {2}= \d\.\d+ V \+ \d\.\d+ V \+ \d\.\d+ V\n/);
  expect(text).toMatch(/Kestrel Rise, page 04\.\d+\. Worked out \d+ \w+ \d{4}, \d\d:\d\d\./);
  expect(text).toContain('AS/NZS 4777.1 2024');
});

walk('where the clipboard refuses, the text stands there, selected', async ({ server, page }) => {
  await openSheet(page, server.url, 'kestrel-rise', '04');
  await page.evaluate(() => {
    navigator.clipboard.writeText = () => Promise.reject(new Error('not here'));
  });
  await pad(page).getByRole('button', { name: 'Copy this working' }).click();
  const area = pad(page).getByRole('textbox', { name: 'The working as text' });
  await soon(() => area.inputValue()).toContain('Source: ');
  const taken = await area.evaluate((element) => {
    const { selectionStart, selectionEnd, value } = element as HTMLTextAreaElement;
    return [selectionStart, selectionEnd === value.length];
  });
  expect(taken).toEqual([0, true]);
});
