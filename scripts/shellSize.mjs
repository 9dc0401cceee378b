import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import process from 'node:process';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';

/** Why each is held: what a phone in a cellar has to fetch before it shows a sheet, and before the first edit. */
const BUDGETS = {
  shell: { bytes: 250_000, why: 'everything index.html needs before a part is asked for' },
  histories: { bytes: 1_200_000, why: 'the core that keeps histories, fetched beside the first sheet' },
};

const STATIC_IMPORT = /(?:^|[;}\s])(?:import|export)(?:[\w$*{},\s]+from)?\s*["'](\.{1,2}\/[^"']+\.js)["']/g;

/** Addresses that a page fetches at once: its scripts, what is to be preloaded for them, its styles. */
function atOnce(html) {
  const tags = html.match(/<(?:script|link)\b[^>]*>/g) ?? [];
  return tags
    .filter((tag) => /^<script/.test(tag) || /rel="(?:modulepreload|stylesheet)"/.test(tag))
    .map((tag) => /(?:src|href)="(\/[^"]+)"/.exec(tag)?.[1])
    .filter((address) => address !== undefined);
}

/**
 * The files a page loads before anything is asked for, with those that their scripts import one from another.
 *
 * @param site  folder of the built app.
 * @returns     addresses below the site, and their sizes zipped, largest first.
 */
export function shellFiles(site) {
  const sizes = new Map();
  const todo = ['/index.html'];
  for (let address = todo.pop(); address !== undefined; address = todo.pop()) {
    if (sizes.has(address)) continue;
    const content = readFileSync(join(site, address));
    sizes.set(address, gzipSync(content, { level: 9 }).length);
    if (address.endsWith('.html')) todo.push(...atOnce(content.toString()));
    if (!address.endsWith('.js')) continue;
    for (const [, relative] of content.toString().matchAll(STATIC_IMPORT)) {
      todo.push(posix.join(posix.dirname(address), relative));
    }
  }
  return [...sizes].map(([address, bytes]) => ({ address, bytes })).sort((a, b) => b.bytes - a.bytes);
}

/** Sizes of the built app against their budgets, a line each; `tooLarge` names what is over. */
export function weigh(site, budgets = BUDGETS) {
  if (!existsSync(join(site, 'index.html'))) throw new Error(`${site} holds no built app: node scripts/build.mjs`);
  const kB = (bytes) => `${(bytes / 1000).toFixed(1)} kB`;
  const shell = shellFiles(site);
  const scripts = shell.filter(({ address }) => address.endsWith('.js'));
  if (scripts.length === 0) throw new Error(`${site}/index.html loads no script: nothing was weighed.`);
  const cores = readdirSync(site, { recursive: true })
    .map(String)
    .filter((file) => file.endsWith('.wasm') && /automerge/.test(file))
    .map((file) => ({ address: `/${file}`, bytes: gzipSync(readFileSync(join(site, file)), { level: 9 }).length }));

  const lines = [];
  const tooLarge = [];
  for (const [name, files] of Object.entries({ shell, histories: cores })) {
    const bytes = files.reduce((sum, file) => sum + file.bytes, 0);
    const { bytes: most, why } = budgets[name];
    lines.push(`${name}: ${kB(bytes)} zipped of ${kB(most)} at most, ${files.length} files (${why})`);
    for (const file of files) lines.push(`  ${kB(file.bytes).padStart(9)}  ${file.address}`);
    if (bytes > most) tooLarge.push(`${name} is ${kB(bytes - most)} too large; most of it is ${files[0].address}.`);
  }
  return { lines, tooLarge };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const site = fileURLToPath(new URL('../apps/web/dist/site', import.meta.url));
  const { lines, tooLarge } = weigh(site);
  for (const line of [...lines, ...tooLarge]) console.log(line);
  process.exitCode = tooLarge.length === 0 ? 0 : 1;
}
