import process from 'node:process';

const LOOK_EVERY_MS = 200;

/**
 * Stops this process when the shell that npm started it from is gone.
 *
 * npm passes a stop signal to that shell only. Some shells replace themselves by the command they run,
 * and all is well; others die alone, and the command would live on without anybody to stop it.
 * Started by hand, a command may outlive its shell, and nothing is watched.
 */
export function endWithParent() {
  if (process.env.npm_lifecycle_event === undefined) return;
  const parent = process.ppid;
  const watch = setInterval(() => {
    if (process.ppid === parent) return;
    clearInterval(watch);
    // the same way as any other stop, so that whoever handles it closes what is open
    process.kill(process.pid, 'SIGTERM');
  }, LOOK_EVERY_MS);
  watch.unref();
}
