import { spawn } from 'node:child_process';
import process from 'node:process';

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
    child.on('close', (code) => {
      letGo();
      const leftBehind = grouped && signalGroup(child.pid, 'SIGKILL', true);
      resolve({ code: code ?? 1, ...(stoppedBy ? { stoppedBy } : {}), leftBehind });
    });
  });
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
