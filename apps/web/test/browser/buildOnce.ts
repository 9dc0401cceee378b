import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { setTimeout } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { runStep } from '../../../../scripts/runStep.mjs';
import { realEnv } from './realEnv.ts';

const BUILD = fileURLToPath(new URL('../../../../scripts/build.mjs', import.meta.url));

/** Two test files run side by side; the first to come builds, the other waits. One sign for each user is enough. */
const BUSY = join(tmpdir(), `eaveline-building-${process.getuid?.() ?? 'one'}`);
const OWNER = join(BUSY, 'pid');
const LOOK_EVERY_MS = 100;

function holdSign(): boolean {
  try {
    mkdirSync(BUSY);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false;
    throw error;
  }
  writeFileSync(OWNER, `${process.pid}`);
  return true;
}

/** True where whoever put the sign up has ended without taking it down. A sign without a name was put up this instant. */
function signIsLeft(): boolean {
  try {
    process.kill(Number(readFileSync(OWNER, 'utf8')), 0);
    return false;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'ESRCH';
  }
}

/** Brings the command and the sheets up to their sources, at most once at a time. */
export async function buildOnce(): Promise<void> {
  while (!holdSign()) {
    if (signIsLeft()) rmSync(BUSY, { recursive: true, force: true });
    else await setTimeout(LOOK_EVERY_MS);
  }
  try {
    const { code } = await runStep(process.execPath, [BUILD], { env: realEnv });
    if (code !== 0) throw new Error(`The build ended with ${code}; it says why above.`);
  } finally {
    rmSync(BUSY, { recursive: true, force: true });
  }
}
