import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join, relative } from 'node:path';
import process from 'node:process';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const CONFIG = join(ROOT, '.dependency-cruiser.cjs');
const CRUISER = join(ROOT, 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs');
const FOLDERS = ['packages', 'apps'];

/**
 * Reads the imports below `root` and judges them by the rules.
 * The verdict comes from the JSON alone: the cruiser's exit code is a count, and 256 errors exit as 0.
 */
function cruise(root) {
  const args = [CRUISER, '--config', CONFIG, '--output-type', 'json', ...FOLDERS];
  const { stdout, stderr, error } = spawnSync(process.execPath, args, {
    cwd: root,
    encoding: 'utf8',
    maxBuffer: 1 << 28,
  });
  if (error) throw error;
  if (!stdout.startsWith('{')) throw new Error(`The cruiser gave no report.\n${stderr}`);
  const { modules, summary } = JSON.parse(stdout);
  return { read: new Set(modules.map(({ source }) => source)), violations: summary.violations };
}

/** Every TypeScript source on disk; what the cruiser has not read of these, it has not judged. */
function sourcesBelow(folder) {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return ['node_modules', 'dist'].includes(entry.name) ? [] : sourcesBelow(path);
    return /\.tsx?$/.test(entry.name) && !entry.name.endsWith('.d.ts') ? [path] : [];
  });
}

/** A small house in which each rule is broken once, and one file that breaks none. */
const PLANTED = {
  'packages/physics/src/control.ts': "import type { K } from './k.ts';\nexport const control = (k: K): K => k;\n",
  'packages/physics/src/k.ts': 'export type K = number;\nexport const k: K = 1;\n',
  'packages/physics/src/byPath.ts': "export { low } from '../../plan/src/low.ts';\n",
  'packages/physics/src/byName.ts': "export { low } from '@eaveline/plan';\n",
  'packages/physics/src/byTypeOnly.ts': "import type { Low } from '@eaveline/plan';\nexport type Lower = Low;\n",
  'packages/physics/src/byPackage.ts': "import zod from 'zod';\nexport const z = zod;\n",
  'packages/formats/src/byFiles.ts': "import { readFileSync } from 'node:fs';\nexport const read = readFileSync;\n",
  'packages/formats/src/byBareName.ts': "import { readFileSync } from 'fs';\nexport const read = readFileSync;\n",
  'packages/papers/src/byLazyImport.ts': "export const later = () => import('../../../apps/server/src/index.ts');\n",
  'packages/plan/src/low.ts': "export type Low = number;\nexport const low: Low = 1;\nimport './circle.ts';\n",
  'packages/plan/src/circle.ts': "import './low.ts';\nexport const circle = 1;\n",
  'packages/plan/src/nowhere.ts': "import './nothing.ts';\nexport const nowhere = 1;\n",
  'packages/plan/src/screen.tsx': "import { createElement } from 'react';\nexport const screen = createElement;\n",
  'packages/plan/src/allowed.ts': "export { k } from '@eaveline/physics';\n",
  'apps/server/src/index.ts': 'export const server = 1;\n',
  'apps/web/src/store.ts': "export { server } from '@eaveline/server';\n",
  'apps/web/src/index.ts': 'export const sheets = 1;\n',
  'apps/cli/src/screens.ts': "export { sheets } from '@eaveline/web';\n",
};

/** `rule file` for each planted fault. */
const EXPECTED = [
  'physics-reaches-up packages/physics/src/byPath.ts',
  'physics-reaches-up packages/physics/src/byName.ts',
  'physics-reaches-up packages/physics/src/byTypeOnly.ts',
  'physics-stands-alone packages/physics/src/byPackage.ts',
  'core-is-pure packages/formats/src/byFiles.ts',
  'core-is-pure packages/formats/src/byBareName.ts',
  'papers-reaches-up packages/papers/src/byLazyImport.ts',
  'no-circles packages/plan/src/circle.ts',
  'every-import-resolves packages/plan/src/nowhere.ts',
  'react-stays-on-screen packages/plan/src/screen.tsx',
  'screens-keep-no-store apps/web/src/store.ts',
  'command-draws-no-screens apps/cli/src/screens.ts',
];
const INNOCENT = ['packages/physics/src/control.ts', 'packages/plan/src/allowed.ts'];

function plant(root) {
  for (const [path, text] of Object.entries(PLANTED)) {
    mkdirSync(dirname(join(root, path)), { recursive: true });
    writeFileSync(join(root, path), text);
  }
  mkdirSync(join(root, 'node_modules/@eaveline'), { recursive: true });
  for (const name of ['react', 'zod']) symlinkSync(join(ROOT, 'node_modules', name), join(root, 'node_modules', name));
  for (const room of ['packages/physics', 'packages/plan', 'apps/server', 'apps/web']) {
    const name = `@eaveline/${room.split('/')[1]}`;
    const door =
      room === 'packages/plan' ? './src/low.ts' : room === 'packages/physics' ? './src/k.ts' : './src/index.ts';
    writeFileSync(join(root, room, 'package.json'), JSON.stringify({ name, exports: { '.': { source: door } } }));
    symlinkSync(join(root, room), join(root, 'node_modules', name));
  }
}

/** What the rules miss, or blame wrongly, in the house of planted faults. */
function selfTest() {
  const root = mkdtempSync(join(tmpdir(), 'eaveline-arrows-'));
  try {
    plant(root);
    const found = cruise(root).violations.map(({ rule, from }) => `${rule.name} ${from}`);
    const missed = EXPECTED.filter((fault) => !found.includes(fault)).map((fault) => `self-test: not caught: ${fault}`);
    const blamed = found
      .filter((fault) => INNOCENT.some((file) => fault.endsWith(` ${file}`)))
      .map((fault) => `self-test: blamed wrongly: ${fault}`);
    return [...missed, ...blamed];
  } finally {
    rmSync(root, { recursive: true });
  }
}

function judgeHouse() {
  const onDisk = FOLDERS.flatMap((folder) => sourcesBelow(join(ROOT, folder))).map((path) => relative(ROOT, path));
  const { read, violations } = cruise(ROOT);
  const unread = onDisk.filter((path) => !read.has(path)).map((path) => `not read, so not judged: ${path}`);
  const why = new Map(createRequire(import.meta.url)(CONFIG).forbidden.map(({ name, comment }) => [name, comment]));
  const broken = violations.map(({ rule, from, to }) => `${rule.name}: ${from} → ${to}\n  ${why.get(rule.name)}`);
  const nothing = onDisk.length === 0 ? ['no source files were found: a check of nothing does not pass'] : [];
  return { count: onDisk.length, faults: [...nothing, ...unread, ...broken] };
}

const missed = selfTest();
const { count, faults } = judgeHouse();
for (const fault of [...missed, ...faults]) console.error(fault);
if (missed.length + faults.length === 0) {
  console.log(
    `Arrows: ${count} files read, every import leads down; all ${EXPECTED.length} planted faults were caught.`,
  );
} else {
  console.error(`Arrows: ${missed.length + faults.length} faults.`);
  process.exitCode = 1;
}
