import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire, isBuiltin } from 'node:module';
import { dirname, join, relative } from 'node:path';
import process from 'node:process';
import { fileURLToPath } from 'node:url';
import { runStep } from './runStep.mjs';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const CORE = ['packages/physics', 'packages/formats', 'packages/job', 'packages/plan', 'packages/papers'];

/** What is built, from which rooms, into which folder. */
const PARTS = {
  cli: { rooms: [...CORE, 'apps/server', 'apps/cli'], out: 'apps/cli/dist', make: bundleCommand },
  web: { rooms: [...CORE, 'packages/sync', 'apps/web'], out: 'apps/web/dist/site', make: buildSheets },
};

const NOT_SOURCE = /(^|\/)(node_modules|dist|test|fixtures)(\/|$)|\.(test|bench)\.tsx?$|\.tsbuildinfo$/;

/** Names the engine: two builds work out the same plans exactly when it is the same. */
export const engineName = () => stateOf({ rooms: CORE }).slice(0, 16);

/** Every source file below a folder, sorted, so that the same tree always gives the same list. */
function sourcesBelow(folder) {
  return readdirSync(folder, { withFileTypes: true })
    .flatMap((entry) => {
      const path = join(folder, entry.name);
      if (NOT_SOURCE.test(relative(ROOT, path))) return [];
      return entry.isDirectory() ? sourcesBelow(path) : [path];
    })
    .sort();
}

/** A name for the state of the sources: the same exactly when nothing that goes into the part has changed. */
function stateOf({ rooms }) {
  const hash = createHash('sha256');
  const own = ['package-lock.json', 'scripts/build.mjs'].map((file) => join(ROOT, file));
  for (const file of [...own, ...rooms.flatMap((room) => sourcesBelow(join(ROOT, room)))]) {
    hash.update(relative(ROOT, file)).update('\0').update(readFileSync(file)).update('\0');
  }
  return hash.digest('hex');
}

const stampOf = (part) => join(ROOT, part.out, '.built-from');

function isStale(part, state) {
  const stamp = stampOf(part);
  return !existsSync(stamp) || readFileSync(stamp, 'utf8') !== state;
}

/** The folder of a package as Node would find it from a folder, walking up; undefined where there is none. */
function packageSeenFrom(folder, name) {
  for (let at = folder; ; at = dirname(at)) {
    const found = join(at, 'node_modules', name);
    if (existsSync(found)) return found;
    if (at === dirname(at)) return undefined;
  }
}

/**
 * What the bundle writes for a package that stays outside: its name, or the way to the file
 * where npm has put the package into the room's own folder and the bundle would not see it.
 */
function outsidePath(path, from, out) {
  const name = path.startsWith('@') ? path.split('/').slice(0, 2).join('/') : path.split('/')[0];
  if (isBuiltin(path) || packageSeenFrom(from, name) === packageSeenFrom(out, name)) return path;
  return relative(out, createRequire(join(from, 'room.js')).resolve(path)).replaceAll('\\', '/');
}

/**
 * One file for the command. Our own rooms are bundled from their sources; npm packages stay outside,
 * for some of them open files that lie beside their modules.
 */
async function bundleCommand(out) {
  const esbuild = await import('esbuild');
  const ours = /^@eaveline\//;
  try {
    const { outputFiles } = await esbuild.build({
      absWorkingDir: ROOT,
      entryPoints: ['apps/cli/src/main.ts'],
      outfile: join(out, 'main.js'),
      bundle: true,
      write: false,
      platform: 'node',
      format: 'esm',
      target: 'node20',
      conditions: ['source'],
      // one name in the command and in the page, so that a page can take plans of the server that serves it
      define: { EAVELINE_ENGINE: JSON.stringify(engineName()) },
      sourcemap: 'linked',
      logLevel: 'warning',
      plugins: [
        {
          name: 'npm packages stay outside',
          setup(build) {
            build.onResolve({ filter: /^[^./]/ }, ({ path, kind, resolveDir }) =>
              kind === 'entry-point' || ours.test(path)
                ? undefined
                : { path: outsidePath(path, resolveDir, out), external: true },
            );
          },
        },
      ],
    });
    // beside the target first: a command that starts meanwhile reads the old bundle or the new, never half of one
    for (const { path, contents } of outputFiles) {
      const half = `${path}.${process.pid}.half`;
      writeFileSync(half, contents);
      renameSync(half, path);
    }
  } finally {
    await esbuild.stop();
  }
}

async function buildSheets(out) {
  if (!existsSync(join(ROOT, 'apps/web/index.html'))) {
    process.stderr.write('This checkout holds no sheets (apps/web/index.html): only the data is served.\n');
    return;
  }
  const vite = join(ROOT, 'node_modules/vite/bin/vite.js');
  const args = [vite, 'build', '--outDir', out, '--emptyOutDir', '--logLevel', 'warn'];
  // what vite says belongs to the build, not to the answer on standard output
  const { code } = await runStep(process.execPath, args, {
    cwd: join(ROOT, 'apps/web'),
    stdio: ['ignore', process.stderr, 'inherit'],
    // a page built for tests by a shell that says so would be slow and noisy
    env: { ...process.env, NODE_ENV: 'production', VITE_ENGINE: engineName() },
  });
  if (code !== 0) throw new Error(`vite build ended with ${code}; it says why above.`);
}

/**
 * Builds the parts whose sources differ from those they were last built from.
 *
 * @param names  of `cli` and `web`.
 * @param say    receives one line for each part that is about to be built.
 */
export async function ensureBuilt(names, say) {
  for (const name of names) {
    const part = PARTS[name];
    const state = stateOf(part);
    if (!isStale(part, state)) continue;
    say(`Building ${part.out}.`);
    const out = join(ROOT, part.out);
    rmSync(stampOf(part), { force: true });
    mkdirSync(out, { recursive: true });
    await part.make(out);
    writeFileSync(stampOf(part), state);
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  await ensureBuilt(Object.keys(PARTS), (line) => process.stderr.write(`${line}\n`));
}
