import { spawn } from 'node:child_process';
import process from 'node:process';
import { setTimeout } from 'node:timers/promises';

/** Helpers of a program that has just ended may need this long to notice. */
const GRACE_MS = 1000;
const STOP_SIGNALS = ['SIGINT', 'SIGTERM', 'SIGHUP'];

/**
 * Runs one program to its end, in a process group of its own.
 *
 * A stop signal to us is passed to the whole group, and whatever the program leaves running
 * is ended and reported, so that no command of ours leaves a process behind.
 *
 * @returns {Promise<{ code: number, stoppedBy?: string, leftBehind: boolean }>} `code` is 1 where a signal ended it.
 */
export function runStep(command, args, options = {}) {
  return new Promise((resolve, reject) => {
    // on Windows there are no groups; there the child shares ours and the console stops both
    const grouped = process.platform !== 'win32';
    const child = spawn(command, args, { stdio: ['ignore', 'inherit', 'inherit'], ...options, detached: grouped });
    let stoppedBy;
    const pass = (signal) => {
      stoppedBy = signal;
      signalGroup(child.pid, signal, grouped);
    };
    for (const signal of STOP_SIGNALS) process.on(signal, pass);
    const letGo = () => {
      for (const signal of STOP_SIGNALS) process.off(signal, pass);
    };
    child.on('error', (error) => {
      letGo();
      reject(error);
    });
    child.on('close', async (code) => {
      if (child.pid === undefined) return; // never started: 'error' has said so
      const leftBehind = grouped && (await endGroup(child.pid));
      letGo();
      resolve({ code: code ?? 1, ...(stoppedBy ? { stoppedBy } : {}), leftBehind });
    });
  });
}

/** Gives what is left of a group a moment to end by itself, then ends it; true where that was needed. */
async function endGroup(pid) {
  for (let waitedMs = 0; waitedMs < GRACE_MS; waitedMs += 50) {
    if (!signalGroup(pid, 0, true)) return false;
    await setTimeout(50);
  }
  return signalGroup(pid, 'SIGKILL', true);
}

/** Sends a signal to a child or its whole group; false where nobody is left to hear it. */
function signalGroup(pid, signal, grouped) {
  try {
    process.kill(grouped ? -pid : pid, signal);
    return true;
  } catch (error) {
    // some systems answer EPERM for a group whose last member has just ended
    if (error.code === 'ESRCH' || error.code === 'EPERM') return false;
    throw error;
  }
}

/** npm itself, by the way it was called: the same copy that runs us, else the one on the path. */
export function runNpm(args, options = {}) {
  const own = process.env.npm_execpath;
  if (own?.endsWith('.js')) return runStep(process.execPath, [own, ...args], options);
  return runStep('npm', args, { ...options, shell: process.platform === 'win32' });
}
