import { expect } from 'vitest';
import { openSheet, settled, titleCell } from './onSheet.ts';
import { soon, walk } from './walk.ts';

walk(
  'a signed design asks for a new signature once a mend is taken, and no longer when it is taken back',
  async ({ server, page }) => {
    await openSheet(page, server.url, 'kestrel-rise', '12');
    const main = page.getByRole('main');
    expect(await titleCell(page, 'checked').textContent()).toBe('checkednot signed');

    await main.getByRole('button', { name: 'Sign the design' }).click();
    await soon(() => main.getByText('Nobody is named.').count()).toBe(1);
    const form = main.locator('section').filter({ has: page.getByRole('heading', { name: 'Sign the design' }) });
    await form.getByLabel('Licensed person').fill('Nia Rees');
    await form.getByLabel('Licence number').fill('E 1234');
    await main.getByRole('button', { name: 'Sign the design' }).click();
    await soon(() => titleCell(page, 'checked').textContent()).toMatch(/^checkedNia Rees, \d+ \w+ \d{4}$/);

    await openSheet(page, server.url, 'kestrel-rise', '04');
    await main.getByRole('button', { name: 'Feed it at the fifth drop', exact: true }).click();
    await soon(() => titleCell(page, 'checked').textContent()).toBe('checkedNia Rees, for an earlier design');
    await page.keyboard.press('=');
    await settled(page, '12');
    await soon(() => main.getByText('One part changed since: trunks. It needs a new signature.').count()).toBe(1);

    await page.keyboard.press('z');
    await soon(() => titleCell(page, 'checked').textContent()).toMatch(/^checkedNia Rees, \d+ \w+ \d{4}$/);
  },
);
