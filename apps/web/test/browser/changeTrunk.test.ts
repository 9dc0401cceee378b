import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { head, openSheet, pad, register, settled, tallyOf, typeInto } from './onSheet.ts';
import { soon, walk } from './walk.ts';

const JOB = 'kestrel-rise';
const trunkA = (page: Page) => page.locator('main svg [data-subject="rise:a"]');
const saysOfA = async (page: Page) => (await trunkA(page).getAttribute('aria-label')) ?? '';

/** What the server keeps of trunk A. */
async function keptTrunkA(page: Page, url: string) {
  const job = await (await page.request.get(`${url}/api/jobs/${JOB}`)).json();
  return job.choices.trunks.a as { feedDrop: number; homeRun: { lengthM: number } };
}

/*
 * Trunk A has nine drops and is fed at the first, through 31 m of 6 mm²: as drawn it rises more than 2 % of 230 V.
 * Fed in the middle, at the fifth, its own part is a quarter (four spans to each side in place of eight to one):
 * demo.md's arithmetic, and sheet 04 words it so.
 */
walk(
  'trunk A fed at its fifth drop: the finding turns, the tally falls, undo brings both back',
  async ({ server, page }) => {
    await openSheet(page, server.url, JOB, '04');
    expect(await saysOfA(page)).toMatch(/fed at drop 1, rises 5\.\d\d V, fails$/);
    expect(await tallyOf(page, '04')).toBe('2 fail');
    const before = await tallyOf(page, '08');
    expect(before).toMatch(/^3 fail /);

    await page.getByLabel('Fed at', { exact: true }).selectOption({ label: (await dropFive(page)) ?? '' });
    await settled(page, '04');
    expect(await saysOfA(page)).toMatch(/fed at drop 5, rises 4\.\d\d V, meets$/);
    expect(await tallyOf(page, '04')).toBe('1 fails');
    expect(await tallyOf(page, '08')).toBe(before.replace('3 fail', '2 fail'));

    await register(page)
      .getByRole('button', { name: /^Undo: .*fed at 5/i })
      .click();
    await settled(page, '04');
    expect(await saysOfA(page)).toMatch(/fed at drop 1, rises 5\.\d\d V, fails$/);
    expect(await tallyOf(page, '08')).toBe(before);
    await soon(async () => (await keptTrunkA(page, server.url)).feedDrop).toBe(1);
  },
);

walk('the mend on the pad does the same at one press, and Z takes it back', async ({ server, page }) => {
  await openSheet(page, server.url, JOB, '04');
  await trunkA(page).click();
  await soon(() => pad(page).textContent()).toContain('Trunk A, voltage rise');
  expect(await head(page).textContent()).toContain('Trunk A');

  await pad(page).getByRole('button', { name: 'Feed it at the fifth drop' }).click();
  await settled(page, '04');
  expect(await saysOfA(page)).toMatch(/fed at drop 5, .* meets$/);
  expect(await page.getByRole('main').getByRole('status').textContent()).toBe(
    'Trunk A: feed it at the fifth drop. Done; Z takes it back.',
  );
  await soon(async () => (await keptTrunkA(page, server.url)).feedDrop).toBe(5);

  await page.keyboard.press('z');
  await settled(page, '04');
  expect(await saysOfA(page)).toMatch(/fed at drop 1, .* fails$/);
  await soon(async () => (await keptTrunkA(page, server.url)).feedDrop).toBe(1);
});

walk(
  'a length that makes no sense is refused in words, and the job keeps its last sound one',
  async ({ server, page }) => {
    await openSheet(page, server.url, JOB, '04');
    await trunkA(page).click();
    const length = page.getByLabel('Home run', { exact: true });
    const said = page.locator(`[id="${await length.getAttribute('aria-describedby')}"]`);
    const drawn = await saysOfA(page);

    // typed, it is a draft: read out beside the field, and nothing of it is in the job
    await length.fill('12 ft');
    expect(await said.textContent()).toBe('12 ft = 3.6576\u00a0m. The job keeps 31 m until this is taken.');
    expect(await length.getAttribute('aria-invalid')).toBe('false');
    await typeInto(length, '12 furlongs');
    expect(await length.getAttribute('aria-invalid')).toBe('true');
    expect(await said.textContent()).toMatch(/The job keeps 31 m\.$/);
    await length.press('Escape');
    expect(await length.inputValue()).toBe('31');

    await typeInto(length, 'about thirty');
    expect(await said.textContent()).toBe(
      ' about thirty is no number. Type it in m, or with its unit: 1.2 m, 1200 mm or 3 ft 11 1/4 in. The job keeps 31 m.',
    );
    expect(await length.getAttribute('aria-invalid')).toBe('true');

    await typeInto(length, '-4');
    expect(await said.textContent()).toMatch(/cannot be: it has to be .*\. The job keeps 31 m\.$/);

    await typeInto(length, '');
    expect(await said.textContent()).toBe(' It cannot be left empty. The job keeps 31 m.');

    expect(await saysOfA(page)).toBe(drawn);
    await soon(() => register(page).getByRole('status').textContent()).toContain('All kept');
    expect((await keptTrunkA(page, server.url)).homeRun.lengthM).toBe(31);

    // Escape gives the field back what the job keeps; a sound length is then taken
    await length.press('Escape');
    expect(await length.inputValue()).toBe('31');
    await typeInto(length, '20,5 m');
    await settled(page, '04');
    expect(await saysOfA(page)).not.toBe(drawn);
    await soon(async () => (await keptTrunkA(page, server.url)).homeRun.lengthM).toBe(20.5);
  },
);

/** The words of the fifth drop in the list; they hold a figure of the plan. */
async function dropFive(page: Page) {
  const words = await page.getByLabel('Fed at', { exact: true }).getByRole('option').allTextContents();
  return words.find((each) => each.startsWith('drop 5:'));
}

/* Nothing is selected, so the sheet shows the worst: A at 31 m. With 12 m it rises less than B; the fields stay A's. */
walk(
  'fields stay those of the trunk they are typed into, and two trunks are two steps back',
  async ({ server, page }) => {
    await openSheet(page, server.url, JOB, '04');
    const length = page.getByLabel('Home run', { exact: true });
    await length.click();
    await typeInto(length, '12');
    await settled(page, '04');
    expect(await saysOfA(page)).toMatch(/meets$/);
    await page.getByRole('heading', { name: 'Trunk A, as chosen' }).waitFor();
    expect(await length.inputValue()).toBe('12');

    await page.locator('main svg [data-subject="rise:b"]').click();
    await page.getByRole('heading', { name: 'Trunk B, as chosen' }).waitFor();
    await typeInto(length, '9');
    await settled(page, '04');
    await register(page).getByRole('button', { name: 'Undo: Trunk B: home run 9 m' }).click();
    await register(page).getByRole('button', { name: 'Undo: Trunk A: home run 12 m' }).click();
    await soon(async () => (await keptTrunkA(page, server.url)).homeRun.lengthM).toBe(31);
  },
);
