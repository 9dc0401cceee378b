import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import process from 'node:process';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { type Browser, chromium, type Page } from 'playwright-core';
import { CHROMIUM_FLAGS, chromiumPath } from './chromium.mjs';
import shots from './shots.json' with { type: 'json' };

/** One address to take; `waitFor` is a selector that shows when the sheet stands. */
interface Route {
  readonly name: string;
  readonly path: string;
  readonly waitFor?: string;
}

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const DEVICES = [
  { suffix: '', width: 1440, height: 900, phone: false },
  { suffix: '-phone', width: 390, height: 844, phone: true },
] as const;

/** A server of its own, with a fresh store in a folder of its own. */
async function startOwnServer() {
  const data = mkdtempSync(join(tmpdir(), 'eaveline-shots-'));
  const args = [join(ROOT, 'scripts/start.mjs'), '--port', '0', '--data', data];
  const server = spawn(process.execPath, args, { cwd: ROOT, stdio: ['ignore', 'pipe', 'inherit'] });
  const ended = new Promise<void>((done) => {
    server.once('exit', () => done());
  });
  const stop = async () => {
    server.kill('SIGTERM');
    await ended;
    rmSync(data, { recursive: true, force: true });
  };
  const lines = createInterface({ input: server.stdout });
  try {
    for await (const line of lines) {
      const url = /^Eaveline is at (\S+)/.exec(line)?.[1];
      if (url === undefined) continue;
      server.stdout.resume(); // its table may come later than its address
      return { url, stop };
    }
    throw new Error('The server ended before it said its address.');
  } catch (error) {
    await stop();
    throw error;
  }
}

/** What the page itself complains of; a picture of a page that fell over is no picture. */
function complaintsOf(page: Page): string[] {
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  return complaints;
}

/** The screen as WebP: a hundred pictures are kept with the product, and as PNG they would weigh four times as much. */
async function pictureOf(page: Page): Promise<Buffer> {
  const chrome = await page.context().newCDPSession(page);
  try {
    const { data } = await chrome.send('Page.captureScreenshot', { format: 'webp', quality: 80 });
    return Buffer.from(data, 'base64');
  } finally {
    await chrome.detach();
  }
}

async function takeRoute(browser: Browser, url: string, out: string, route: Route): Promise<string[]> {
  const faults: string[] = [];
  for (const { suffix, width, height, phone } of DEVICES) {
    const context = await browser.newContext({
      ...{ viewport: { width, height }, isMobile: phone, hasTouch: phone },
      reducedMotion: 'reduce',
    });
    try {
      const page = await context.newPage();
      const complaints = complaintsOf(page);
      const answer = await page.goto(new URL(route.path, url).href, { waitUntil: 'networkidle' });
      if (!answer?.ok()) faults.push(`${route.path}: answered ${answer?.status()}`);
      if (route.waitFor) await page.waitForSelector(route.waitFor);
      for (const paper of shots.papers) {
        await page.evaluate(async (name) => {
          document.documentElement.dataset.paper = name;
          await document.fonts.ready;
        }, paper);
        const file = join(out, `${route.name}${suffix}-${paper}.webp`);
        writeFileSync(file, await pictureOf(page));
        console.log(file);
      }
      faults.push(...complaints.map((words) => `${route.name}${suffix}: ${words}`));
    } finally {
      await context.close();
    }
  }
  return faults;
}

const { values, positionals } = parseArgs({
  options: { out: { type: 'string', default: join(ROOT, 'docs/pictures') }, url: { type: 'string' } },
  allowPositionals: true,
});
const executablePath = chromiumPath();
if (executablePath === undefined) throw new Error('Pictures need Chromium: install it, or set CHROME_PATH.');

const out = resolve(values.out);
mkdirSync(out, { recursive: true });
const routes = (shots.routes as readonly Route[]).filter(
  ({ name }) => positionals.length === 0 || positionals.includes(name),
);
if (routes.length === 0) throw new Error(`scripts/shots.json has no route named ${positionals.join(', ')}.`);

const server = values.url === undefined ? await startOwnServer() : undefined;
const faults: string[] = [];
try {
  const browser = await chromium.launch({ executablePath, args: CHROMIUM_FLAGS });
  try {
    const url = values.url ?? server?.url ?? '';
    for (const route of routes) faults.push(...(await takeRoute(browser, url, out, route)));
  } finally {
    await browser.close();
  }
} finally {
  await server?.stop();
}
for (const fault of faults) console.error(fault);
process.exitCode = faults.length === 0 ? 0 : 1;
