import { crc32, deflateSync } from 'node:zlib';
import { type Job, kestrelRise, lookedFor, photoReason, surveySteps } from '@eaveline/job';
import { surveyStanding } from '@eaveline/plan';
import type { Page } from 'playwright-core';
import { expect, onTestFinished } from 'vitest';
import { typeInto } from './onSheet.ts';
import { soon, phoneWalk as walk } from './walk.ts';

const JOB = 'kestrel-rise';
/** A whole survey is longer than other walks. */
const LONG_WALK_MS = 240_000;
const before = { by: 'Ada', at: '2026-05-14T22:00:00Z' };

/** A grey picture of a size, as PNG: what a camera hands over, larger than is kept. */
function grey(width: number, height: number): Buffer {
  const chunk = (kind: string, data: Buffer) => {
    const body = Buffer.concat([Buffer.from(kind, 'latin1'), data]);
    const around = Buffer.alloc(8);
    around.writeUInt32BE(data.length, 0);
    around.writeUInt32BE(crc32(body), 4);
    return Buffer.concat([around.subarray(0, 4), body, around.subarray(4)]);
  };
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([8, 0, 0, 0, 0], 8); // eight bits, grey, no tricks
  const rows = Buffer.alloc(height * (width + 1), 0x80);
  for (let y = 0; y < height; y++) rows[y * (width + 1)] = 0;
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([
    signature,
    chunk('IHDR', head),
    chunk('IDAT', deflateSync(rows)),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

/**
 * Kestrel Rise half way through its survey: Ada was there yesterday, and left open the photograph of the board, the
 * loop, what stands there already, the plan width of the west plane, and its rafters.
 */
function halfSurveyed(): Job {
  const job = structuredClone(kestrelRise);
  job.state = 'survey';
  const { facts } = job;
  facts.provenance['supply.loopOhm'] = before;
  for (const { asks, photo, lists } of surveySteps(job)) {
    for (const { path, assumed } of asks) if (assumed) facts.provenance[path] = before;
    for (const list of lists) if (!lookedFor(job, list)) facts.provenance[list.at] = before;
    if (photo !== undefined && photo.of !== 'board')
      facts.provenance[photoReason(photo.of)] = { ...before, notMeasured: 'dark' };
  }
  for (const open of ['existing', 'supply.loopOhm']) delete facts.provenance[open];
  delete facts.supply.loopOhm;
  if (facts.roof.planes.west !== undefined) facts.roof.planes.west.planWidthM = 5.2;
  return job;
}

async function put(url: string, job: Job): Promise<void> {
  const headers = { 'content-type': 'application/json' };
  const answer = await fetch(`${url}/api/jobs/${JOB}`, { method: 'PUT', headers, body: JSON.stringify(job) });
  expect(answer.status).toBe(200);
}
const served = async (url: string): Promise<Job> => (await fetch(`${url}/api/jobs/${JOB}`)).json();
const title = (page: Page) => page.getByRole('banner').locator('b');
const next = (page: Page, words: string | RegExp) => page.getByRole('button', { name: words }).tap();
/** A question with its answer and the lines below it, by what it asks for. */
const question = (page: Page, ask: string) => page.getByLabel(ask, { exact: true }).locator('xpath=ancestor::div[1]');

walk(
  'a survey on a phone without signal: photograph, reading, a source, two measures, refused, filled, closed',
  async ({ server, page, opened }) => {
    page.setDefaultTimeout(LONG_WALK_MS / 4); // a guard against a hang: the plan of a house is worked out meanwhile
    opened.expectComplaints('ERR_INTERNET_DISCONNECTED');
    const job = halfSurveyed();
    expect(surveyStanding(job).holes.map(({ step, kind }) => `${step} ${kind}`)).toEqual([
      'board photo',
      'live fact',
      'existing list',
      'roof.planes.west two measures',
      'attic.west fact',
    ]);
    await put(server.url, job);

    await page.goto(`${server.url}/job/${JOB}`);
    await page.getByRole('link', { name: 'Go on with the survey: 5 open' }).tap();
    await soon(() => title(page).textContent()).toBe('Survey');
    await page.getByLabel('Surveyed by').fill('Nia');
    await page.getByText(/Instruments in the bag/).tap();
    await page.getByLabel('Loop tester').fill('loop tester 3');
    await page.getByLabel('Tape or laser').fill('laser 1');
    onTestFinished(() => page.context().setOffline(false)); // the browser serves the next walk too
    await page.context().setOffline(true);
    await next(page, 'Go on: Board');

    // the photograph first: made small, kept on the phone, named in the job
    await soon(() => title(page).textContent()).toBe('Board');
    await page
      .getByLabel('Photograph. The board closed, its plate legible: the cover stays on')
      .setInputFiles({ name: 'board.png', mimeType: 'image/png', buffer: grey(2000, 1500) });
    await page.getByText(/^Kept on this phone\./).waitFor();
    await page.getByRole('img', { name: 'The board closed' }).waitFor();
    expect(await keptPhoto(page)).toEqual({ of: 'board', by: 'Nia', width: 1600, height: 1200, type: 'image/jpeg' });

    // a reading, with its instrument and hour
    await next(page, 'Next: Measured live');
    await typeInto(page.getByLabel('Loop impedance, line to earth'), '310 mΩ');
    await soon(() => question(page, 'Loop impedance, line to earth').textContent()).toMatch(
      /\d\d:\d\d, loop tester 3, Nia/,
    );

    // something that stands there: begun, left, taken up
    await back(page);
    await page.getByRole('link', { name: /^Already there/ }).tap();
    await page.getByRole('link', { name: 'Add a source or load' }).tap();
    await page.getByRole('radio', { name: 'solar' }).check();
    await page.getByLabel('Name', { exact: true }).fill('Old array');
    await next(page, 'Put it in the job');
    await page.getByRole('alert').getByText('Not yet: two answers short. The first: Current at its rating').waitFor();
    await next(page, 'Leave it begun');
    await page.getByRole('link', { name: 'Go on with the source or load that is begun' }).tap();
    await typeInto(page.getByLabel('Current at its rating, each line'), '16');
    await page.getByRole('checkbox', { name: 'L1' }).check();
    await next(page, 'Put it in the job');
    await soon(() => title(page).textContent()).toBe('Old array');
    await page.getByRole('button', { name: 'No photograph' }).tap();
    await page.getByLabel('Why not').fill('behind the freezer');
    await page.getByRole('button', { name: 'Close it without one' }).tap();
    await page.getByText(/Not photographed: behind the freezer\./).waitFor();

    // two measures of the west slope: 5.2 m ÷ cos 22.5° = 5.628 m against 5.845 m, 3.8 in 100
    await back(page);
    await page.getByRole('link', { name: /^Roof/ }).tap();
    await page.getByRole('link', { name: /^West/ }).tap();
    const apart = page
      .getByRole('alert')
      .getByText('5\u202f845 and 5\u202f628: more than 1 in 100 apart. Which is right?');
    await apart.waitFor();
    await typeInto(page.getByLabel('Plan width, eave to below the ridge'), '5.4');
    await page.getByText(/They close\./).waitFor();

    // it does not close with a hole, and says which rule needs the fact
    await back(page);
    await page.getByRole('link', { name: /^Close the survey/ }).tap();
    await next(page, 'Close the survey');
    await page
      .getByRole('alert')
      .getByText(
        'Not closed. One thing is open. The first: West: rafters, middle to middle. Rafters, foot spacing and rail overhang need it.',
      )
      .waitFor();
    await page.getByRole('link', { name: /West: rafters, middle to middle/ }).tap();
    await typeInto(page.getByLabel('Rafters, middle to middle'), '600');
    await back(page);
    await page.getByRole('link', { name: /^Close the survey/ }).tap();
    await next(page, 'Close the survey');
    await soon(() => page.getByRole('heading', { level: 1 }).textContent()).toBe(
      'The survey of Kestrel Rise is closed.',
    );

    // with signal again all of it is on the server, each fact with who, when and with what
    await page.context().setOffline(false);
    await soon(async () => (await served(server.url)).state).toBe('design');
    const { facts } = await served(server.url);
    expect(facts.surveyClosed?.by).toBe('Nia');
    expect(facts.supply.loopOhm).toBe(0.31);
    expect(facts.provenance['supply.loopOhm']).toMatchObject({ by: 'Nia', with: 'loop tester 3' });
    expect(facts.provenance.board?.photo).toMatch(/^photo-\d{8}-\d{6}-[0-9a-f]{4}$/);
    expect(facts.existing['old-array']).toEqual({ kind: 'solar', name: 'Old array', ratedA: 16, lines: ['L1'] });
    expect(facts.roof.planes.west?.rafters.spacingMm).toBe(600);
    expect(surveyStanding(await served(server.url)).holes).toEqual([]);
  },
  LONG_WALK_MS,
);

walk(
  'a fact that cannot be measured closes with a reason, and one step back takes both away',
  async ({ server, page }) => {
    await put(server.url, halfSurveyed());
    await page.goto(`${server.url}/job/${JOB}/survey/attic.west`);
    await page.getByLabel('Surveyed by').fill('Nia');
    const rafters = question(page, 'Rafters, middle to middle');
    await rafters.getByRole('button', { name: 'More' }).tap();
    await rafters.getByLabel('Why it could not be measured').fill('the hatch is painted shut');
    await rafters.getByRole('button', { name: 'Close it without a value' }).tap();
    await page.getByText(/^Could not be measured: the hatch is painted shut\./).waitFor();
    const seen = async () => (await served(server.url)).facts.provenance['roof.planes.west.rafters.spacingMm'];
    await soon(async () => (await seen())?.notMeasured).toBe('the hatch is painted shut');

    await page.getByRole('button', { name: 'Undo' }).tap();
    await soon(seen).toBeUndefined();
  },
);

/** Back to the walk, the way out under the left thumb. */
const back = (page: Page) => page.getByRole('button', { name: 'The walk' }).tap();

/** The photograph in the browser's own database. */
function keptPhoto(page: Page) {
  return page.evaluate(async () => {
    const open = await new Promise<IDBDatabase>((done, fail) => {
      const request = indexedDB.open('eaveline-photos');
      request.onsuccess = () => done(request.result);
      request.onerror = () => fail(request.error);
    });
    const [photo] = await new Promise<{ of: string; by: string; picture: Blob }[]>((done, fail) => {
      const request = open.transaction('photos').objectStore('photos').getAll();
      request.onsuccess = () => done(request.result);
      request.onerror = () => fail(request.error);
    });
    open.close();
    if (photo === undefined) return undefined;
    const { width, height } = await createImageBitmap(photo.picture);
    return { of: photo.of, by: photo.by, width, height, type: photo.picture.type };
  });
}

walk('a figure typed before anybody is named is taken up once somebody is', async ({ server, page }) => {
  await put(server.url, halfSurveyed());
  await page.goto(`${server.url}/job/${JOB}/survey/live`);
  const loop = page.getByLabel('Loop impedance, line to earth');
  await typeInto(loop, '0.31');
  const said = question(page, 'Loop impedance, line to earth').getByText(/Nobody is named/);
  await said.waitFor();
  expect((await served(server.url)).facts.supply.loopOhm).toBeUndefined();
  await page.getByLabel('Surveyed by').pressSequentially('Nia');
  await said.waitFor({ state: 'detached' });
  await page.getByLabel('Surveyed by').blur();
  await soon(async () => (await served(server.url)).facts.supply.loopOhm).toBe(0.31);
  expect((await served(server.url)).facts.provenance['supply.loopOhm']?.by).toBe('Nia');
});
