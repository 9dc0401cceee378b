import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { realEnv } from './realEnv.ts';

const COMMAND = fileURLToPath(new URL('../../../cli/bin/eaveline.mjs', import.meta.url));

/** A server of a test's own: the real command, a fresh book of the five demo jobs, a free port. */
export interface OwnServer {
  readonly url: string;
  /** Stops it the way a person does; what it keeps stays. */
  stop(): Promise<void>;
  /** Starts it again at the same address, over what it had kept. */
  startAgain(): Promise<void>;
  /** Puts every job of the book back as it was at the first start, and starts it again where a walk left it stopped. */
  layBookAnew(): Promise<void>;
  /** Stops it and throws away what it kept. */
  end(): Promise<void>;
}

interface Running {
  readonly url: string;
  readonly child: ChildProcess;
  readonly ended: Promise<void>;
}

async function run(dataDir: string, port: string): Promise<Running> {
  const args = [COMMAND, 'serve', '--port', port, '--data', dataDir];
  const child = spawn(process.execPath, args, { env: realEnv, stdio: ['ignore', 'pipe', 'inherit'] });
  const ended = new Promise<void>((done) => {
    child.once('exit', () => done());
  });
  const said: string[] = [];
  for await (const line of createInterface({ input: child.stdout })) {
    said.push(line);
    const url = /^Eaveline is at (\S+)/.exec(line)?.[1];
    if (url === undefined) continue;
    child.stdout.resume(); // its table may come later than its address
    return { url, child, ended };
  }
  throw new Error(`The server ended before it said its address.\n${said.join('\n')}`);
}

async function readBook(url: string): Promise<ReadonlyMap<string, string>> {
  const listed = (await (await fetch(`${url}/api/jobs`)).json()) as readonly { readonly id: string }[];
  const texts = listed.map(async ({ id }) => [id, await (await fetch(`${url}/api/jobs/${id}`)).text()] as const);
  return new Map(await Promise.all(texts));
}

async function putBook(url: string, book: ReadonlyMap<string, string>): Promise<void> {
  for (const [id, body] of book) {
    const headers = { 'content-type': 'application/json' };
    const answer = await fetch(`${url}/api/jobs/${id}`, { method: 'PUT', headers, body });
    if (!answer.ok) throw new Error(`${id} could not be put back: ${await answer.text()}`);
  }
}

/** Starts a server of its own on 127.0.0.1, in a process of its own, with its data in a folder of its own. */
export async function startServer(): Promise<OwnServer> {
  const dataDir = mkdtempSync(join(tmpdir(), 'eaveline-walk-data-'));
  let running = await run(dataDir, '0');
  let stopped = false;
  const { url } = running;
  const book = await readBook(url);
  const stop = async () => {
    stopped = true;
    running.child.kill('SIGTERM');
    await running.ended;
  };
  const startAgain = async () => {
    running = await run(dataDir, new URL(url).port);
    stopped = false;
  };
  return {
    url,
    stop,
    startAgain,
    async layBookAnew() {
      if (stopped) await startAgain();
      await putBook(url, book);
    },
    async end() {
      await stop();
      rmSync(dataDir, { recursive: true, force: true });
    },
  };
}
