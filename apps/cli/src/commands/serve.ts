import { mkdir } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { setImmediate } from 'node:timers/promises';
import { type JobStore, makeServer, type PlansAtHand, sqliteStore, type Validated } from '@eaveline/server';
import { InvalidArgumentError } from 'commander';
import type { Register } from '../program.ts';
import { textTable } from '../textTable.ts';

/** How the findings of one job stand. */
export interface FindingTally {
  readonly fails: number;
  readonly ask: number;
  readonly meets: number;
}

/** What serving needs of the rooms below and of the world around. */
export interface ServeParts {
  /** The documents that a store which was never used is filled with. */
  demoJobs(): readonly unknown[];
  /** Judges a whole job document and finds what the book shows of it. */
  validate(document: unknown): Validated;
  /** Works a valid document out and counts its findings; without it the table names the jobs only. */
  readonly summary?: (document: unknown) => FindingTally;
  /** Draws the install pack of a valid document as one PDF. */
  readonly pack?: (document: unknown, drawnAt: Date) => Promise<Uint8Array>;
  /** Plans at hand for pages that open a job for the first time. */
  readonly plans?: PlansAtHand & { close(): void };
  /** The folder of the built sheets; undefined where none are built. */
  readonly webDir?: string | undefined;
  /** Settles when the person, or the system, wants the server to end. */
  untilStopped(): Promise<void>;
}

export interface ServeOptions {
  /** Folder of the store; made where there is none. */
  readonly dataDir: string;
  /** Undefined: 4170, or the next free one. */
  readonly port?: number | undefined;
}

export interface Serving {
  readonly url: string;
  /** One row for each demo job that is still in the book; a row takes as long as its plan. */
  demoTable(): Promise<string>;
  stop(): Promise<void>;
}

const FIRST_PORT = 4170;
const PORTS_TRIED = 20;
/** The server knows no accounts, so nobody but this computer may reach it. */
const HOST = '127.0.0.1';

const isTaken = (error: unknown) => error instanceof Error && 'code' in error && error.code === 'EADDRINUSE';

/** Thrown where the server cannot be started as asked; the message is the whole answer. */
export class CannotServe extends Error {
  override readonly name = 'CannotServe';
}

async function listen(app: ReturnType<typeof makeServer>, port: number | undefined): Promise<string> {
  const ports = port === undefined ? Array.from({ length: PORTS_TRIED }, (_, k) => FIRST_PORT + k) : [port];
  for (const each of ports) {
    try {
      return await app.listen({ host: HOST, port: each });
    } catch (error) {
      if (!isTaken(error)) throw error;
    }
  }
  throw new CannotServe(
    port === undefined
      ? `Ports ${FIRST_PORT} to ${FIRST_PORT + PORTS_TRIED - 1} are all in use. Name a free one with --port.`
      : `Port ${port} is in use. Name another with --port, or leave it out for the next free one.`,
  );
}

async function fillWithDemoJobs(store: JobStore, parts: ServeParts, savedAt: Date): Promise<void> {
  for (const document of parts.demoJobs()) {
    const judged = parts.validate(document);
    if (!judged.ok) throw new Error(`A demo job does not hold: ${JSON.stringify(judged.problems)}`);
    await store.put({ ...judged, savedAt });
  }
}

async function demoTable(store: JobStore, parts: ServeParts): Promise<string> {
  const rows: string[][] = [];
  for (const demo of parts.demoJobs()) {
    const judged = parts.validate(demo);
    const kept = judged.ok ? await store.get(judged.id) : undefined;
    if (kept === undefined) continue; // taken off the book since
    await setImmediate(); // a plan takes a moment; requests come first
    const tally = parts.summary?.(kept.document);
    rows.push([kept.name, kept.region, ...(tally ? [tally.fails, tally.ask, tally.meets].map(String) : [])]);
  }
  const head = ['Job', 'Region', ...(parts.summary ? ['Fails', 'Ask', 'Meets'] : [])];
  return rows.length === 0 ? '' : textTable(head, rows, [2, 3, 4]);
}

/**
 * Opens the store, fills it with the demo jobs where it was never used, and listens.
 *
 * @throws {CannotServe} where no port is to be had.
 */
export async function startServing(
  { dataDir, port }: ServeOptions,
  parts: ServeParts,
  now: () => Date,
  onMistake: (error: Error) => void,
): Promise<Serving> {
  // names, addresses and telephone numbers of customers lie in it
  await mkdir(dataDir, { recursive: true, mode: 0o700 });
  const store = sqliteStore(join(dataDir, 'jobs.db'));
  const { validate, webDir, pack, plans } = parts;
  const app = makeServer({ store, validate, now, webDir, pack, plans, onMistake });
  const stop = async () => {
    plans?.close();
    await app.close();
    await store.close();
  };
  try {
    if (await store.isUntouched()) await fillWithDemoJobs(store, parts, now());
    return { url: await listen(app, port), demoTable: () => demoTable(store, parts), stop };
  } catch (error) {
    await stop();
    throw error;
  }
}

function portOf(text: string): number {
  const port = Number(text);
  if (!/^\d+$/.test(text) || port > 65_535) throw new InvalidArgumentError('A port is a whole number up to 65535.');
  return port;
}

/** `eaveline serve`: the sheets and the jobs of this computer, until it is stopped. */
export function registerServe(parts: ServeParts): Register {
  return (program, io) => {
    program
      .command('serve')
      .description('serve the sheets and the jobs of this computer, until stopped')
      .option('--data <dir>', 'folder of the store', '.eaveline')
      .option('--port <n>', `port to listen on (default: ${FIRST_PORT}, or the next free one)`, portOf)
      .action(async ({ data, port }: { data: string; port?: number }) => {
        const stopped = parts.untilStopped();
        const dataDir = resolve(data);
        const serving = await startServing({ dataDir, port }, parts, io.now, (error) => io.print(`${error.stack}`));
        try {
          io.print(`Eaveline is at ${serving.url}\nJobs are kept in ${dataDir}. Stop with Ctrl-C.\n\n`);
          io.print(await Promise.race([serving.demoTable(), stopped.then(() => '')]));
          await stopped;
        } finally {
          await serving.stop();
        }
        io.answer({ text: 'Stopped. Everything saved is kept.', verdict: 0 });
      });
  };
}
