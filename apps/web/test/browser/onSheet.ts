import type { Locator, Page } from 'playwright-core';
import { soon } from './walk.ts';

/** The twelve sheets by their names in the register, with the keys that open them. */
export const SHEETS = [
  { no: '01', name: 'Site', key: '1' },
  { no: '02', name: 'Roof', key: '2' },
  { no: '03', name: 'Array', key: '3' },
  { no: '04', name: 'Trunks', key: '4' },
  { no: '05', name: 'Board', key: '5' },
  { no: '06', name: 'Backup', key: '6' },
  { no: '07', name: 'Energy', key: '7' },
  { no: '08', name: 'Checks', key: '8' },
  { no: '09', name: 'Kit', key: '9' },
  { no: '10', name: 'Day', key: '0' },
  { no: '11', name: 'Tests', key: '-' },
  { no: '12', name: 'Handover', key: '=' },
] as const;

export const head = (page: Page): Locator => page.getByRole('heading', { level: 1 });
export const register = (page: Page): Locator => page.getByRole('navigation', { name: 'Sheets' });
export const pad = (page: Page): Locator => page.getByRole('complementary', { name: 'Working' });

/** What a cell of the title block says: `weather`, `worked out`. */
export function titleCell(page: Page, what: string): Locator {
  return page.locator('main footer div').filter({ has: page.locator('small', { hasText: new RegExp(`^${what}$`) }) });
}

/** Waits until the sheet with this number stands, worked out from the job as it is now. */
export async function settled(page: Page, no: string): Promise<void> {
  await soon(() => page.locator('main > div > header > span').textContent()).toBe(no);
  await soon(() => page.locator('main').getAttribute('aria-busy')).toBeNull();
  await soon(() => titleCell(page, 'worked out').textContent()).toMatch(/^worked out\d?\d:\d\d$/);
}

/** Opens a sheet by its address, as a bookmark does. */
export async function openSheet(page: Page, url: string, job: string, no: string): Promise<void> {
  await page.goto(`${url}/job/${job}/${no}`);
  await settled(page, no);
}

/** What the register says beside a sheet: `2 fail`, or nothing. */
export async function tallyOf(page: Page, no: string): Promise<string> {
  const row = register(page).getByRole('link', { name: new RegExp(`^${no} `) });
  const words = await row.evaluate((link) => link.textContent ?? '');
  return words
    .replace(/^\d\d[A-Za-z]+/, '')
    .replace(/(\d)\s*/g, '$1 ')
    .replace(/\s+/g, ' ')
    .trim();
}

/** Types a figure over what stands in a field, and takes it with Enter: until then it is a draft. */
export async function typeInto(field: Locator, text: string): Promise<void> {
  await field.fill(text);
  await field.press('Enter');
}
