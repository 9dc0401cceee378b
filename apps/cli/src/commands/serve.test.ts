import { mkdtempSync, rmSync } from 'node:fs';
import { createServer, type Server } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import type { Io, Outcome } from '../io.ts';
import { runCommandLine } from '../program.ts';
import { type FindingTally, registerServe, type ServeParts, startServing } from './serve.ts';

const folder = mkdtempSync(join(tmpdir(), 'eaveline-serve-'));
let folders = 0;
const newDataDir = () => join(folder, `${++folders}`, 'data');
afterAll(() => rmSync(folder, { recursive: true }));

interface Doc {
  readonly id: string;
  readonly name: string;
  readonly region: string;
  readonly tally: FindingTally;
}

const kestrel: Doc = { id: 'kestrel', name: 'Kestrel Rise', region: 'au-nz', tally: { fails: 1, ask: 3, meets: 14 } };
const quay: Doc = { id: 'quay', name: 'Quayside Terrace', region: 'gb', tally: { fails: 0, ask: 2, meets: 11 } };

const parts: ServeParts = {
  demoJobs: () => [kestrel, quay],
  validate(document) {
    const { id, name, region } = document as Doc;
    return { ok: true, id, name, region, document };
  },
  summary: (document) => (document as Doc).tally,
  untilStopped: () => new Promise(() => {}),
};

const now = () => new Date(Date.UTC(2026, 2, 1, 9));
const loud = (error: Error) => {
  throw error;
};
const start = (dataDir: string, port?: number) => startServing({ dataDir, port }, parts, now, loud);

/** Holds a port of 127.0.0.1 for as long as the work takes. */
async function whileTaken(port: number, work: (port: number) => Promise<void>) {
  const holder: Server = createServer();
  await new Promise<void>((resolve, reject) => {
    holder.once('error', reject).listen(port, '127.0.0.1', resolve);
  });
  try {
    await work((holder.address() as { port: number }).port);
  } finally {
    await new Promise((resolve) => holder.close(resolve));
  }
}

test('the first start fills the book with the demo jobs and shows how their findings stand', async () => {
  const serving = await start(newDataDir(), 0);
  const book = (await (await fetch(`${serving.url}/api/jobs`)).json()) as Doc[];
  expect(book.map(({ id }) => id).sort()).toEqual(['kestrel', 'quay']);
  expect(await serving.demoTable()).toBe(
    [
      'Job               Region  Fails  Ask  Meets',
      'Kestrel Rise      au-nz       1    3     14',
      'Quayside Terrace  gb          0    2     11',
    ].join('\n'),
  );
  await serving.stop();
});

test('a later start leaves what was changed as it was changed, and shows that', async () => {
  const dataDir = newDataDir();
  const first = await start(dataDir, 0);
  const mended = { ...kestrel, tally: { fails: 0, ask: 3, meets: 15 } };
  const headers = { 'content-type': 'application/json' };
  await fetch(`${first.url}/api/jobs/kestrel`, { method: 'PUT', headers, body: JSON.stringify(mended) });
  await first.stop();

  const second = await start(dataDir, 0);
  expect(await (await fetch(`${second.url}/api/jobs/kestrel`)).json()).toEqual(mended);
  expect(await second.demoTable()).toMatch(/Kestrel Rise +au-nz +0 +3 +15/);
  await second.stop();
});

test('a stopped server answers nobody', async () => {
  const serving = await start(newDataDir(), 0);
  await serving.stop();
  await expect(fetch(`${serving.url}/api/health`)).rejects.toThrow();
});

test('a port that was asked for and is in use is refused with the way out', async () => {
  await whileTaken(0, async (port) => {
    await expect(start(newDataDir(), port)).rejects.toThrow(
      `Port ${port} is in use. Name another with --port, or leave it out for the next free one.`,
    );
  });
});

test('without a port asked for, the next free one is taken', async () => {
  const one = await start(newDataDir());
  const two = await start(newDataDir());
  const [portOne, portTwo] = [one, two].map(({ url }) => Number(new URL(url).port));
  expect(portOne).toBeGreaterThanOrEqual(4170);
  expect(portTwo).toBeGreaterThan(portOne as number);
  await one.stop();
  await two.stop();
});

/** The command as typed, stopped by `stop` once its table is out. */
async function runServe(argv: readonly string[]) {
  const printed: string[] = [];
  const answers: Outcome[] = [];
  let stop = () => {};
  const stopped = new Promise<void>((resolve) => {
    stop = resolve;
  });
  const refuse = () => Promise.reject(new Error('serve opens no files by itself'));
  const io: Io = {
    readText: refuse,
    readBytes: refuse,
    readStdin: refuse,
    writeFile: refuse,
    print(text) {
      printed.push(text);
      if (text.includes('Quayside Terrace')) stop();
    },
    now,
    answer: (outcome) => void answers.push(outcome),
  };
  await runCommandLine(argv, [registerServe({ ...parts, untilStopped: () => stopped })], io);
  return { printed: printed.join('\n'), answers };
}

test('the command says its address, runs until stopped and ends well', async () => {
  const { printed, answers } = await runServe(['serve', '--port', '0', '--data', newDataDir()]);
  expect(printed).toMatch(/Eaveline is at http:\/\/127\.0\.0\.1:\d+\n/);
  expect(answers).toEqual([{ text: 'Stopped. Everything saved is kept.', verdict: 0 }]);
});

test.each(['http', '-1', '70000'])('refusal: %j is no port', async (port) => {
  const { answers } = await runServe(['serve', `--port=${port}`, '--data', newDataDir()]);
  expect(answers[0]).toMatchObject({ verdict: 2, text: expect.stringContaining('whole number up to 65535') });
});
