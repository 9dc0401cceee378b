import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import process from 'node:process';
import { fileURLToPath } from 'node:url';
import { runNpm } from './runStep.mjs';

const ROOT = fileURLToPath(new URL('..', import.meta.url));

/**
 * What an installed tree lacks against the lockfile, by content: names of packages missing or of another version.
 * Parts for other machines (optional) may be absent.
 *
 * @param wanted   `packages` of package-lock.json.
 * @param present  `packages` of node_modules/.package-lock.json.
 */
export function missingPackages(wanted, present) {
  return Object.entries(wanted)
    .filter(([path]) => path.startsWith('node_modules/') || path.includes('/node_modules/'))
    .filter(([path, { version, link, optional, devOptional, peer }]) => {
      const found = present[path];
      if (found === undefined) return !(optional || devOptional || peer);
      return !link && found.version !== version;
    })
    .map(([path]) => path.replace(/^.*node_modules\//, ''));
}

function packagesOf(file) {
  return JSON.parse(readFileSync(file, 'utf8')).packages;
}

function treeIsWhole() {
  const present = join(ROOT, 'node_modules/.package-lock.json');
  if (!existsSync(present)) return false;
  // without the link, npx would look for the command elsewhere
  if (!existsSync(join(ROOT, 'node_modules/.bin/eaveline'))) return false;
  return missingPackages(packagesOf(join(ROOT, 'package-lock.json')), packagesOf(present)).length === 0;
}

/** Why the embedded store cannot be opened by this Node; undefined when it can. */
function storeTrouble() {
  const require = createRequire(import.meta.url);
  try {
    // opening a database in memory loads the compiled part; requiring the package alone does not
    new (require('better-sqlite3'))(':memory:').close();
    return undefined;
  } catch (error) {
    return error.message.split('\n')[0];
  }
}

const runs = (command) => spawnSync(command, ['--version'], { stdio: 'ignore' }).status === 0;

function nodeHeadersAt() {
  const places = [process.env.npm_config_nodedir, dirname(dirname(process.execPath)), '/usr'].filter(
    (place) => place !== undefined,
  );
  return places.find((place) => existsSync(join(place, 'include/node/node.h')));
}

/** What compiling the embedded store would need and this computer has not. */
export function missingTools() {
  const missing = [];
  if (!runs('python3') && !runs('python')) missing.push('python3');
  if (process.platform !== 'win32') {
    if (!runs('make')) missing.push('make');
    if (!['c++', 'g++', 'clang++'].some(runs)) missing.push('a C++ compiler');
    if (nodeHeadersAt() === undefined) missing.push('the Node headers (include/node/node.h)');
  }
  return missing;
}

/** One line that says what to do about a store that could not be built. */
export function storeAdvice(missing) {
  if (missing.length === 0) {
    return 'The embedded store (better-sqlite3) could not be built; npm says why above. Run npm rebuild better-sqlite3 once that is mended.';
  }
  return (
    `The embedded store (better-sqlite3) has no ready-built part for this computer, and compiling it lacks ${missing.join(', ')}. ` +
    'On Debian: apt-get install python3 make g++; Node from nodejs.org brings its headers. Then run the same command again.'
  );
}

/** Thrown when a step failed and the reader has been told, in one line, what to do. */
export class CannotGoOn extends Error {
  name = 'CannotGoOn';
}

async function npmOrStop(args, advice) {
  const { code, stoppedBy } = await runNpm(args, { cwd: ROOT });
  if (stoppedBy) throw new CannotGoOn(`Stopped while installing (${stoppedBy}). Run the same command again.`);
  if (code !== 0) throw new CannotGoOn(advice());
}

/**
 * Makes the packages on disk those of the lockfile, and the embedded store loadable; does nothing where both are so.
 *
 * @param say receives one line for each thing that is about to be done.
 * @throws {CannotGoOn} with the way out.
 */
export async function ensureInstalled(say) {
  if (!treeIsWhole()) {
    say('Installing the packages of package-lock.json.');
    await npmOrStop(['ci'], () => {
      const missing = missingTools();
      return missing.length > 0
        ? storeAdvice(missing)
        : 'npm ci failed; it says why above. Mend that, then run the same command again.';
    });
  }
  if (storeTrouble() === undefined) return;
  say('Building the embedded store for this Node.');
  await npmOrStop(['rebuild', 'better-sqlite3', '--ignore-scripts=false'], () => storeAdvice(missingTools()));
  const trouble = storeTrouble();
  if (trouble !== undefined) throw new CannotGoOn(`The embedded store still does not load: ${trouble}`);
}
