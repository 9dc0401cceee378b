import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { openSheet, register, settled } from './onSheet.ts';
import { phoneWalk, soon, walk } from './walk.ts';

const JOB = 'kestrel-rise';
const grid = (page: Page, name: string) => page.getByRole('grid', { name, exact: true });
const rowOf = (table: Locator, name: string) =>
  table.getByRole('row').filter({ has: table.page().getByRole('rowheader', { name, exact: true }) });
const focused = (page: Page) => page.locator(':focus');
const report = (page: Page) => page.getByRole('region', { name: 'What was pasted' });

/** The cell of a row below a head: `eave mm`. */
async function cell(table: Locator, row: string, head: string): Promise<Locator> {
  const heads = (await table.getByRole('columnheader').allTextContents()).map((words) => words.trim());
  const at = heads.indexOf(head);
  if (at < 0) throw new Error(`No column ${head} among ${heads.join(', ')}`);
  return rowOf(table, row).locator('th, td').nth(at);
}

/** What the server keeps of the planes. */
async function keptPlanes(page: Page, url: string) {
  const job = await (await page.request.get(`${url}/api/jobs/${JOB}`)).json();
  return job.facts.roof.planes as Record<string, { facingDeg: number; eaveLengthM: number; slopeLengthM: number }>;
}

async function paste(page: Page, text: string) {
  await page.evaluate((words) => navigator.clipboard.writeText(words), text);
  await page.keyboard.press('Control+v');
}

walk('feet typed into a length; what is no length is refused at the cell and put back', async ({ server, page }) => {
  await openSheet(page, server.url, JOB, '02');
  const planes = grid(page, 'planes');
  const eave = await cell(planes, 'South', 'eave mm');
  await eave.click();
  await soon(() => new URL(page.url()).searchParams.get('at')).toBe('plane:south');

  await page.keyboard.type('54 ft'); // the letters begin the cell and call no sheet
  await page.keyboard.press('Enter');
  await settled(page, '02');
  expect((await eave.textContent())?.replace(/\s/g, '')).toBe('16459.2');
  await soon(async () => (await keptPlanes(page, server.url)).south?.eaveLengthM).toBe(16.4592);

  await page.keyboard.press('ArrowUp');
  await page.keyboard.type('twelve');
  await page.keyboard.press('Tab');
  const field = focused(page);
  expect(await field.getAttribute('aria-label')).toBe('eave, mm, South');
  expect(await field.getAttribute('aria-invalid')).toBe('true');
  expect(await page.locator(`[id="${await field.getAttribute('aria-describedby')}"]`).textContent()).toBe(
    ' twelve is no number. Type it in mm, or with its unit: 1.2 m, 1200 mm or 3 ft 11 1/4 in.',
  );
  await page.keyboard.press('Escape');
  expect((await eave.textContent())?.replace(/\s/g, '')).toBe('16459.2');
  expect(new URL(page.url()).pathname).toBe(`/job/${JOB}/02`);
});

walk('an eave too short for its hips is refused at the cell with the way out', async ({ server, page }) => {
  await openSheet(page, server.url, JOB, '02');
  const before = await keptPlanes(page, server.url);
  const eave = await cell(grid(page, 'planes'), 'South', 'eave mm');
  await eave.click();
  // the ridge ends at 16.8 − 5.4 = 11.4 m; 12 ft = 3.6576 m, so 7.7424 m past the eave's end
  await page.keyboard.type('12 ft');
  await page.keyboard.press('Enter');
  const field = focused(page);
  expect(await field.getAttribute('aria-invalid')).toBe('true');
  const why = await page.locator(`[id="${await field.getAttribute('aria-describedby')}"]`).textContent();
  expect(why?.replace(/\s+/g, ' ').trim()).toBe(
    'The ridge would reach 7 742 mm past the right end of the eave, and a hip leans in. Lengthen the eave or draw in the ridge first, or call the right edge a valley.',
  );
  await page.keyboard.press('Escape');
  expect((await eave.textContent())?.replace(/\s/g, '')).toBe('16800');

  // pasted, it is refused in the same words and the table stays as it was
  await paste(page, '12 ft');
  await soon(() => report(page).textContent()).toContain('past the right end of the eave, and a hip leans in');
  expect(await keptPlanes(page, server.url)).toEqual(before);
});

walk(
  'a pasted table with one cell that is no number: nothing is written, it is said which; the rest is taken when asked for',
  async ({ server, page }) => {
    await openSheet(page, server.url, JOB, '02');
    const before = await keptPlanes(page, server.url);
    const planes = grid(page, 'planes');
    const names = (await planes.getByRole('rowheader').allTextContents()).slice(0, 3);
    await (await cell(planes, names[0] ?? '', 'eave mm')).click();
    await paste(page, '16.8 m\t5800\r\n38\' 6"\tabout six\r\n16 800\t5,85 m\r\n');

    await soon(() => report(page).textContent()).toContain('One cell of 6 does not read. Nothing is written yet.');
    const refused = report(page).getByRole('row').nth(1);
    expect(await refused.locator('th, td').allTextContents()).toEqual([
      names[1],
      'slope, mm',
      'about six is no number',
      'a length in mm',
      'Type it in mm, or with its unit: 1.2 m, 1200 mm or 3 ft 11 1/4 in.',
    ]);
    expect(await keptPlanes(page, server.url)).toEqual(before);

    await report(page).getByRole('button', { name: 'Take the 5 that read' }).click();
    await settled(page, '02');
    // 38 ft 6 in = 38 · 304.8 + 6 · 25.4 = 11 734.8 mm: past the end of the ridge at 11.4 m, as hips ask
    const second = (names[1] ?? '').toLowerCase();
    const third = (names[2] ?? '').toLowerCase();
    await soon(async () => (await keptPlanes(page, server.url))[second]?.eaveLengthM).toBe(11.7348);
    const after = await keptPlanes(page, server.url);
    expect(after[second]?.slopeLengthM).toBe(before[second]?.slopeLengthM);
    expect(after[third]?.slopeLengthM).toBe(5.85);

    // all of it is one step: single letters belong to the page again once the table is left
    await register(page).getByRole('button', { name: 'Undo: pasted 5 cells into planes' }).waitFor();
    await page.getByRole('heading', { level: 1 }).click();
    await page.keyboard.press('z');
    await soon(() => keptPlanes(page, server.url)).toEqual(before);
  },
);

walk('take none leaves the table as it was, and so does Escape', async ({ server, page }) => {
  await openSheet(page, server.url, JOB, '05');
  const circuits = grid(page, 'circuits');
  const running = await cell(circuits, 'Oven', 'running W');
  await running.click();
  await paste(page, 'much');
  await report(page).getByRole('button', { name: 'Take none' }).click();
  await report(page).waitFor({ state: 'detached' });
  expect((await running.textContent())?.replace(/\s/g, '')).toBe('2800');
  expect(await running.evaluate((each) => each === document.activeElement)).toBe(true);
  await paste(page, 'much');
  await report(page).waitFor();
  await page.keyboard.press('Escape');
  await report(page).waitFor({ state: 'detached' });
  await soon(() => register(page).getByRole('status').textContent()).toContain('All kept');
});

walk(
  'by keyboard alone: one tab stop, a block copied, filled down, and letters that call no sheet',
  async ({ server, page }) => {
    await openSheet(page, server.url, JOB, '05');
    const circuits = grid(page, 'circuits');
    const stops = circuits.locator('[tabindex="0"]');
    expect(await stops.count()).toBe(1);
    await stops.focus();
    await page.keyboard.press('Control+Home');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Shift+ArrowDown');
    await page.keyboard.press('Shift+ArrowRight');
    expect(await circuits.locator('[aria-selected="true"]').count()).toBe(4);
    await page.keyboard.press('Control+c');
    const cells = circuits.locator('tbody tr').filter({ has: page.getByRole('rowheader') });
    const texts = async (row: number) =>
      (await cells.nth(row).locator('td').allTextContents()).map((words) => words.replace(/\s/g, ''));
    const top = await texts(0);
    const next = await texts(1);
    await soon(() => page.evaluate(() => navigator.clipboard.readText())).toBe(
      `${top[1]}\t${top[2]}\r\n${next[1]}\t${next[2]}`,
    );

    await page.keyboard.press('Control+d');
    await soon(async () => (await texts(1))[1]).toBe(top[1]);
    await register(page).getByRole('button', { name: 'Undo: filled 2 cells of circuits' }).waitFor();
    await page.keyboard.press('Control+z');
    await soon(async () => (await texts(1))[1]).toBe(next[1]);

    // a digit would be a sheet, a letter the Book
    await page.keyboard.press('Home');
    await page.keyboard.type('b4');
    expect(new URL(page.url()).pathname).toBe(`/job/${JOB}/05`);
    expect(await focused(page).inputValue()).toBe('b4');
    await page.keyboard.press('Escape');
  },
);

walk(
  'a row is added once nothing of it is missing, and taken out again; a plane that carries rows stays',
  async ({ server, page }) => {
    await openSheet(page, server.url, JOB, '01');
    await page.getByRole('button', { name: 'Add an object' }).click();
    const objects = grid(page, 'near objects');
    await soon(() => objects.getByRole('row').count()).toBe(3);
    const typed = ['neighbour', 'building', '6 m', '-4.5', '', '19\' 8 1/4"', '9'];
    for (const words of typed) {
      if (words !== '') await page.keyboard.type(words);
      await page.keyboard.press('Tab');
      if (words === '') await (await objects.locator('tr[data-draft] td').nth(4)).click();
    }
    const kept = async () =>
      (await (await page.request.get(`${server.url}/api/jobs/${JOB}`)).json()).facts.site.objects;
    // 19 ft 8 1/4 in = 19 · 304.8 + 8.25 · 25.4 = 6 000.75 mm
    await soon(async () => Object.values(await kept())).toContainEqual(
      expect.objectContaining({
        name: 'neighbour',
        kind: 'building',
        eastM: 6,
        northM: -4.5,
        heightM: 6.00075,
        widthM: 9,
      }),
    );
    await page.getByRole('button', { name: 'Take out neighbour' }).click();
    await soon(async () => Object.values(await kept()).length).toBe(1);

    await openSheet(page, server.url, JOB, '02');
    await (await cell(grid(page, 'planes'), 'North', 'faces °')).click();
    await page.getByRole('button', { name: 'Take out North' }).click();
    await page
      .getByText('North stays. Two rows and two obstructions stand on it: move them or take them out first.')
      .waitFor();
  },
);

phoneWalk('on a phone a press opens the cell, and cells are as high as a thumb asks', async ({ server, page }) => {
  await openSheet(page, server.url, JOB, '04');
  const home = await cell(grid(page, 'trunks'), 'B', 'home run m');
  await home.scrollIntoViewIfNeeded();
  expect((await home.boundingBox())?.height).toBeGreaterThanOrEqual(48);
  await home.tap();
  const field = focused(page);
  expect(await field.getAttribute('aria-label')).toBe('home run, m, B');
  expect(await field.getAttribute('inputmode')).toBe('text');
  await field.fill('21.5');
  await page.keyboard.press('Enter');
  await settled(page, '04');
  await soon(async () => (await home.textContent())?.trim()).toBe('21.5');
  await page.evaluate(() => {
    document.documentElement.dataset.paper = 'roof';
  });
  expect((await home.boundingBox())?.height).toBeGreaterThanOrEqual(60);
});

walk('a cable size typed into a table is that very size, or it is refused', async ({ server, page }) => {
  await openSheet(page, server.url, 'practice-yard', '04');
  const all = page.getByText('All trunks');
  await all.click();
  const trunks = grid(page, 'trunks');
  const names = await trunks.getByRole('rowheader').allTextContents();
  const home = await cell(trunks, names[0]?.trim() ?? '', 'home run in');
  await home.scrollIntoViewIfNeeded();
  await home.click();
  const was = await home.textContent();
  expect(was).toContain('2.5 mm²');

  await page.keyboard.type('10 AWG');
  await page.keyboard.press('Enter');
  await page.getByText('10 AWG is not offered here. Type one of 2.5 mm²').waitFor();
  expect(await focused(page).inputValue()).toBe('10 AWG');
  await page.keyboard.press('Escape');
  expect(await home.textContent()).toBe(was);

  // looked through with Enter first, a letter begins words as well
  await page.keyboard.press('Enter');
  await page.keyboard.type('16mm2');
  await page.keyboard.press('Enter');
  await page.getByText('16mm2 is not offered here.').waitFor();
  await page.keyboard.press('Escape');
  expect(await home.textContent()).toBe(was);

  await page.keyboard.type('4 mm2');
  await page.keyboard.press('Enter');
  await soon(() => home.textContent()).toBe('4 mm² line, neutral, earth');

  // the list pressed open: what is typed over it is read as well
  await home.click();
  await home.click();
  await home.getByRole('option', { name: '10 mm² line, neutral, earth', exact: true }).waitFor();
  await page.keyboard.type('10 AWG');
  await page.keyboard.press('Enter');
  await page.getByText('10 AWG is not offered here.').waitFor();
  await page.keyboard.press('Escape');
  expect(await home.textContent()).toBe('4 mm² line, neutral, earth');
  await home.click(); // it is the cell one is on
  await home.getByRole('option', { name: '10 mm² line, neutral, earth', exact: true }).click();
  await soon(() => home.textContent()).toBe('10 mm² line, neutral, earth');
});

walk('a row half filled in is there again when one comes back from another sheet', async ({ server, page }) => {
  await openSheet(page, server.url, JOB, '01');
  await page.getByRole('button', { name: 'Add an object' }).click();
  await page.keyboard.type('neighbour');
  await page.keyboard.press('Tab');
  const draft = grid(page, 'near objects').locator('tr[data-draft]');
  await soon(() => draft.textContent()).toContain('neighbour');
  await register(page).getByRole('link', { name: /^02 / }).click();
  await settled(page, '02');
  await register(page).getByRole('link', { name: /^01 / }).click();
  await settled(page, '01');
  await soon(() => draft.textContent()).toContain('neighbour');
  await page.reload();
  await settled(page, '01');
  await soon(() => draft.textContent()).toContain('neighbour');
  await page.getByRole('button', { name: 'Drop the new object' }).click();
  await soon(() => draft.count()).toBe(0);
  await page.reload();
  await settled(page, '01');
  expect(await draft.count()).toBe(0);
});
