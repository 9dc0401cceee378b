import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { FastifyInstance, InjectOptions } from 'fastify';
import { afterAll, afterEach, beforeEach, describe, expect, test } from 'vitest';
import { makeServer } from './makeServer.ts';
import type { Problem, Validated } from './problem.ts';
import type { JobStore } from './store/jobStore.ts';
import { memoryStore } from './store/memoryStore.ts';

const webDir = mkdtempSync(join(tmpdir(), 'eaveline-web-'));
mkdirSync(join(webDir, 'assets'));
writeFileSync(join(webDir, 'index.html'), '<!doctype html><title>Book</title>');
writeFileSync(join(webDir, 'assets/sheet-abc123.js'), 'export {};');
writeFileSync(join(webDir, 'sw.js'), '// keeps the app');
writeFileSync(join(webDir, 'manifest.webmanifest'), '{ "name": "Eaveline" }');
afterAll(() => rmSync(webDir, { recursive: true }));

interface Roof {
  readonly id: string;
  readonly name: string;
  readonly region: string;
  readonly pitchDeg: number;
}

/** A stand-in for the job schema that finds two things at once. */
function validate(document: unknown): Validated {
  const { id, name, region, pitchDeg } = document as Roof;
  const problems: Problem[] = [];
  if (!name) problems.push({ at: 'name', found: 'nothing', wanted: 'a name', mend: 'Name the job.' });
  if (!(pitchDeg >= 0)) {
    problems.push({
      at: 'pitchDeg',
      found: `${pitchDeg}`,
      wanted: '0 or more',
      mend: 'Measure it with an inclinometer.',
    });
  }
  return problems.length > 0 ? { ok: false, problems } : { ok: true, id, name, region, document };
}

const kestrel: Roof = { id: 'kestrel', name: 'Kestrel Rise', region: 'au-nz', pitchDeg: 22.5 };
const nine = new Date(Date.UTC(2026, 2, 1, 9));

let store: JobStore;
let app: FastifyInstance;
const mistakes: Error[] = [];
beforeEach(() => {
  mistakes.length = 0;
  store = memoryStore();
  app = makeServer({ store, validate, now: () => nine, webDir, onMistake: (error) => void mistakes.push(error) });
});
afterEach(() => app.close());

const put = (document: unknown, headers: Record<string, string> = {}, id = 'kestrel') =>
  app.inject({
    method: 'PUT',
    url: `/api/jobs/${id}`,
    headers,
    payload: document as NonNullable<InjectOptions['payload']>,
  });

describe('jobs', () => {
  test('a job put is listed and got back', async () => {
    const saved = await put(kestrel);
    const entry = { id: 'kestrel', name: 'Kestrel Rise', region: 'au-nz', updated: '2026-03-01T09:00:00.000Z' };
    expect([saved.statusCode, saved.json()]).toEqual([200, entry]);
    expect((await app.inject('/api/jobs')).json()).toEqual([entry]);
    const got = await app.inject('/api/jobs/kestrel');
    expect(got.json()).toEqual(kestrel);
    expect(got.headers.etag).toBe('"1"');
  });

  test('a document that does not hold is refused with every problem, and nothing is written', async () => {
    await put(kestrel);
    const answer = await put({ ...kestrel, name: '', pitchDeg: -3 });
    expect(answer.statusCode).toBe(400);
    expect(answer.json().problems.map(({ at }: Problem) => at)).toEqual(['name', 'pitchDeg']);
    expect((await store.get('kestrel'))?.document).toEqual(kestrel);
    expect(await store.history('kestrel')).toHaveLength(1);
  });

  test('a document is saved under its own id only', async () => {
    const answer = await put(kestrel, {}, 'larkspur');
    expect([answer.statusCode, answer.json().problems[0].at]).toEqual([400, 'id']);
    expect(await store.list()).toEqual([]);
  });

  test('two people from one revision: the second is told, and the first is kept', async () => {
    await put(kestrel);
    expect((await put({ ...kestrel, pitchDeg: 23 }, { 'if-match': '"1"' })).statusCode).toBe(200);
    const second = await put({ ...kestrel, pitchDeg: 24 }, { 'if-match': '"1"' });
    expect([second.statusCode, second.json().problems[0].at]).toEqual([412, 'If-Match']);
    expect((await app.inject('/api/jobs/kestrel')).json().pitchDeg).toBe(23);
    expect((await put({ ...kestrel, pitchDeg: 24 }, { 'if-match': 'W/"x"' })).statusCode).toBe(412);
  });

  test('the time of its save stands beside a document, and no browser guesses from it how long it is good', async () => {
    await put(kestrel);
    const [listed] = (await app.inject('/api/jobs')).json();
    const { headers } = await app.inject('/api/jobs/kestrel');
    expect(Date.parse(headers['last-modified'] as string)).toBe(Math.floor(Date.parse(listed.updated) / 1000) * 1000);
    expect(headers['cache-control']).toBe('no-cache');
  });

  test('a document can be read as it was saved then', async () => {
    await put(kestrel);
    await put({ ...kestrel, pitchDeg: 23 });
    const first = await app.inject('/api/jobs/kestrel/revisions/1');
    expect([first.statusCode, first.headers.etag, first.json()]).toEqual([200, '"1"', kestrel]);
    expect((await app.inject('/api/jobs/kestrel/revisions/2')).json().pitchDeg).toBe(23);
    for (const none of ['3', '0', 'x', '1.5']) {
      const answer = await app.inject(`/api/jobs/kestrel/revisions/${none}`);
      expect([answer.statusCode, answer.json().problems[0]]).toMatchObject([404, { at: 'revision', found: none }]);
    }
  });

  test('the plan at hand is answered as it is, and a save has another made soon', async () => {
    const saved: unknown[] = [];
    const plans = {
      answer: (document: unknown) => ((document as Roof).pitchDeg === 22.5 ? '{"plan":"of 22.5°"}' : undefined),
      soon: (document: unknown) => void saved.push(document),
    };
    await app.close();
    app = makeServer({ store, validate, now: () => nine, plans });
    await put(kestrel);
    const there = await app.inject('/api/jobs/kestrel/plan');
    expect([there.statusCode, there.headers['cache-control'], there.json()]).toEqual([
      200,
      'no-store',
      { plan: 'of 22.5°' },
    ]);
    await put({ ...kestrel, pitchDeg: 23 });
    const none = await app.inject('/api/jobs/kestrel/plan');
    expect([none.statusCode, none.body]).toEqual([204, '']);
    await put({ ...kestrel, pitchDeg: -1 });
    expect(saved).toEqual([kestrel, { ...kestrel, pitchDeg: 23 }]);
    expect((await app.inject('/api/jobs/nowhere/plan')).statusCode).toBe(404);
  });

  test('a job that is not there is a 404 with the way out', async () => {
    const answer = await app.inject('/api/jobs/nowhere');
    expect([answer.statusCode, answer.json().problems[0].found]).toEqual([404, 'nowhere']);
  });
});

describe('requests that make no sense', () => {
  test.each([
    ['not JSON', 'application/json', '{ "id": ', 400, 'body'],
    ['an empty body', 'application/json', '', 400, 'body'],
    ['text/plain, which a foreign form can send', 'text/plain', JSON.stringify(kestrel), 415, 'Content-Type'],
    ['more than 20 MB', 'application/json', `"${'x'.repeat(20 << 20)}"`, 413, 'body'],
  ])('%s', async (_what, type, body, status, at) => {
    const answer = await put(body, { 'content-type': type });
    expect([answer.statusCode, answer.json().problems[0].at]).toEqual([status, at]);
    expect(await store.list()).toEqual([]);
  });

  test('a mistake of ours is answered without its details, which go to whoever started the server', async () => {
    app = makeServer({
      store: { ...store, list: () => Promise.reject(new Error("disk on fire at Nia's desk")) },
      validate,
      now: () => nine,
      onMistake: (error) => void mistakes.push(error),
    });
    const answer = await app.inject('/api/jobs');
    expect(answer.statusCode).toBe(500);
    expect(answer.body).not.toContain('disk on fire');
    expect(mistakes.map(({ message }) => message)).toEqual(["disk on fire at Nia's desk"]);
  });
});

describe('pages of other sites', () => {
  test.each([
    'eaves.example',
    'eaves.example:4170',
    '127.0.0.1.eaves.example',
    'localhost@eaves.example',
    'eaves.example@localhost',
    '[::1]:80',
  ])('a request to the name %j is turned away', async (host) => {
    expect((await app.inject({ url: '/api/jobs', headers: { host } })).statusCode).toBe(403);
  });

  test.each(['localhost', 'localhost:4170', '127.0.0.1:4170'])('a request to %s is answered', async (host) => {
    expect((await app.inject({ url: '/api/jobs', headers: { host } })).statusCode).toBe(200);
  });

  test.each([
    { origin: 'http://eaves.example' },
    { origin: 'null' },
    { origin: 'http://localhost:9999' },
    { origin: 'https://localhost:4170' },
    { 'sec-fetch-site': 'cross-site' },
    { 'sec-fetch-site': 'same-site' },
  ])('a write with %j is turned away and writes nothing', async (headers: Record<string, string>) => {
    expect((await put(kestrel, { host: 'localhost:4170', ...headers })).statusCode).toBe(403);
    expect(await store.list()).toEqual([]);
  });

  test('a write from a page of ours, and one from no page at all, are taken', async () => {
    const host = 'localhost:4170';
    expect((await put(kestrel, { host, origin: 'http://localhost:4170' })).statusCode).toBe(200);
    expect((await put(kestrel, { host })).statusCode).toBe(200);
  });
});

describe('sheets', () => {
  const page = { accept: 'text/html,*/*' };

  test('any address of a sheet opens the page, which is asked for anew each time', async () => {
    for (const url of ['/', '/jobs/kestrel/03-array', '/jobs/kestrel?paper=roof']) {
      const answer = await app.inject({ url, headers: page });
      expect([answer.statusCode, answer.body]).toEqual([200, '<!doctype html><title>Book</title>']);
      expect(answer.headers['cache-control']).toBe('no-cache');
    }
  });

  test('a built file may be kept for ever', async () => {
    const answer = await app.inject('/assets/sheet-abc123.js');
    expect(answer.statusCode).toBe(200);
    expect(answer.headers['cache-control']).toContain('immutable');
  });

  test.each([
    ['/sw.js', 'javascript'],
    ['/manifest.webmanifest', 'application/manifest+json'],
  ])('%s is asked for anew each time, so that a newer app is found', async (url, type) => {
    const answer = await app.inject(url);
    expect([answer.statusCode, answer.headers['cache-control']]).toEqual([200, 'no-cache']);
    expect(answer.headers['content-type']).toContain(type);
  });

  test.each([
    ['data that is not there', '/api/nothing', page],
    ['a file that is not there', '/assets/gone.js', { accept: '*/*' }],
    ['a way out of the folder', '/..%2f..%2fetc%2fpasswd', { accept: '*/*' }],
  ])('%s is not answered with the page', async (_what, url, headers) => {
    const answer = await app.inject({ url, headers });
    expect(answer.statusCode).toBeGreaterThanOrEqual(400);
    expect(answer.body).not.toContain('Book');
  });

  test('the policy lets wasm, workers and sockets run and does not ask a house network for https', async () => {
    const { headers } = await app.inject({ url: '/', headers: page });
    const policy = `${headers['content-security-policy']}`;
    expect(policy).toContain("script-src 'self' 'wasm-unsafe-eval'");
    expect(policy).toContain("connect-src 'self' ws:");
    expect(policy).toContain("worker-src 'self' blob:");
    expect(policy).not.toContain('upgrade-insecure-requests');
    expect(headers['strict-transport-security']).toBeUndefined();
  });
});

test('health says how many jobs are kept', async () => {
  await put(kestrel);
  expect((await app.inject('/api/health')).json()).toEqual({ ok: true, jobs: 1 });
});

describe('the pack of a job', () => {
  const withPack = () =>
    makeServer({
      store,
      validate,
      now: () => nine,
      pack: async (document, drawnAt) =>
        new TextEncoder().encode(`%PDF ${(document as Roof).name} ${drawnAt.toISOString()}`),
    });

  test('is drawn from what is kept, at the hour it is asked for', async () => {
    await store.put({ ...kestrel, document: kestrel, savedAt: nine });
    const answer = await withPack().inject('/api/jobs/kestrel/pack.pdf');
    expect(answer.statusCode).toBe(200);
    expect(answer.headers['content-type']).toBe('application/pdf');
    expect(answer.body).toBe('%PDF Kestrel Rise 2026-03-01T09:00:00.000Z');
  });

  test('of a job that is not in the book is a 404 with the way out', async () => {
    const answer = await withPack().inject('/api/jobs/heron/pack.pdf');
    expect(answer.statusCode).toBe(404);
    expect(answer.json().problems[0].mend).toContain('GET /api/jobs');
  });
});
