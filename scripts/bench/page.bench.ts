import process from 'node:process';
import type { BrowserContext, CDPSession, Page } from 'playwright-core';
import { buildOnce } from '../../apps/web/test/browser/buildOnce.ts';
import { openBrowser } from '../../apps/web/test/browser/openBrowser.ts';
import { type OwnServer, startServer } from '../../apps/web/test/browser/startServer.ts';
import { chromiumPath } from '../chromium.mjs';
import type { MeasuredBench } from '../measured.ts';

const SHEET = '/job/kestrel-rise/04';
/** What the head of sheet 04 says once it has figures: a trunk and its volts. */
const USEFUL = '\\d\\.\\d\\d\\sV';

const BROWSER_RESTS_MS = 4000;

/** A guard against a hang, not a measure: a computer with other work is slow. */
const PATIENCE_MS = 60_000;

interface Surroundings {
  readonly server: OwnServer;
  end(): Promise<void>;
}

async function surroundings(): Promise<Surroundings> {
  const chromium = chromiumPath();
  if (chromium === undefined) throw new Error('No Chromium: the benches of the page need one.');
  process.env.CHROME_PATH = chromium;
  await buildOnce();
  const server = await startServer();
  return { server, end: () => server.end() };
}

/** Notes in the page when its head sentence has figures and has been painted, ms after the navigation began. */
async function noteUseful(page: Page): Promise<void> {
  await page.addInitScript((useful) => {
    const figures = new RegExp(useful);
    const look = new MutationObserver(() => {
      if (!figures.test(document.querySelector('main h1')?.textContent ?? '')) return;
      look.disconnect();
      // a frame's callbacks come before its painting, a message to oneself after it
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => Object.assign(window, { usefulAtMs: performance.now() });
        port2.postMessage(undefined);
      });
    });
    look.observe(document, { subtree: true, childList: true, characterData: true });
  }, USEFUL);
}

async function loadedInMs(page: Page, url: string): Promise<number> {
  await page.goto(url);
  const at = await page.waitForFunction(() => (window as { usefulAtMs?: number }).usefulAtMs);
  return (await at.jsonValue()) as number;
}

async function inFreshBrowser<T>(use: (page: Page, context: BrowserContext) => Promise<T>): Promise<T> {
  const browser = await openBrowser('desktop');
  try {
    const page = await browser.context.newPage();
    page.setDefaultTimeout(PATIENCE_MS);
    // what runs this file gives every function its name through a helper, which a page does not have
    await page.addInitScript('globalThis.__name = (named) => named');
    await noteUseful(page);
    // a browser just started loads pages of its own beside the first one and takes both cores for seconds: what is
    // measured is the app in a browser that is up and has never seen it
    await page.goto('about:blank');
    await new Promise((rested) => setTimeout(rested, BROWSER_RESTS_MS));
    return await use(page, browser.context);
  } finally {
    await browser.end();
  }
}

/** A server works the jobs out that it finds when it starts; that is over some seconds later. */
async function hasPlan(url: string): Promise<void> {
  const until = Date.now() + PATIENCE_MS;
  while ((await fetch(`${url}/api/jobs/kestrel-rise/plan`)).status !== 200) {
    if (Date.now() > until) throw new Error('The server has not worked Kestrel Rise out.');
    await new Promise((later) => setTimeout(later, 200));
  }
}

const firstLoad: MeasuredBench = {
  name: 'web: first load of sheet 04 of Kestrel Rise until its head has figures, browser without anything of it',
  unit: 'ms',
  budget: { p50: 1000, why: 'a person opens the app on a stranger’s computer and waits for it once' },
  async measure(times) {
    const { server, end } = await surroundings();
    const samples: number[] = [];
    try {
      await hasPlan(server.url); // the server has stood a while, the browser has never seen the app
      for (let n = 0; n < times; n++) {
        samples.push(await inFreshBrowser((page) => loadedInMs(page, `${server.url}${SHEET}`)));
      }
    } finally {
      await end();
    }
    return { samples };
  },
};

const secondLoad: MeasuredBench = {
  name: 'web: the same again, from the copy of the app on the device',
  unit: 'ms',
  budget: { p50: 1000, why: 'the same patience' },
  async measure(times) {
    const { server, end } = await surroundings();
    const samples: number[] = [];
    try {
      await inFreshBrowser(async (page) => {
        const url = `${server.url}${SHEET}`;
        await loadedInMs(page, url);
        await page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');
        for (let n = 0; n < times; n++) samples.push(await loadedInMs(page, url));
      });
    } finally {
      await end();
    }
    return { samples };
  },
};

/** Seconds of scripts and of all work of the page's own thread until now. */
async function threadTimes(chrome: CDPSession) {
  const { metrics } = await chrome.send('Performance.getMetrics');
  const read = (name: string) => metrics.find((each) => each.name === name)?.value ?? Number.NaN;
  return { scriptS: read('ScriptDuration'), taskS: read('TaskDuration') };
}

const EDITS_REST_MS = 120;

/** Picks another size for trunk A's home run and waits until its volts are others and painted, so many times. */
async function editCableSize(page: Page, times: number): Promise<number[]> {
  return page.evaluate(
    async ({ times, restMs }) => {
      const figure = () => document.querySelector('main [data-subject="rise:a"]')?.getAttribute('aria-label') ?? '';
      const field = () => {
        const label = [...document.querySelectorAll('label')].find(({ textContent }) => textContent === 'Home run in');
        const select = document.getElementById(label?.htmlFor ?? '');
        if (!(select instanceof HTMLSelectElement)) throw new Error('sheet 04 has no field "Home run in"');
        return select;
      };
      const painted = () =>
        new Promise<void>((done) => {
          requestAnimationFrame(() => {
            const { port1, port2 } = new MessageChannel();
            port1.onmessage = () => done();
            port2.postMessage(undefined);
          });
        });
      const samples: number[] = [];
      for (let n = 0; n < times; n++) {
        const select = field();
        const before = figure();
        const changed = new Promise<void>((done) => {
          const look = new MutationObserver(() => {
            if (figure() === before) return;
            look.disconnect();
            done();
          });
          look.observe(document, { subtree: true, childList: true, attributes: true, characterData: true });
        });
        const from = performance.now();
        // two sizes to and fro; React hears of a pick only through the element's own setter
        const value = select.options[(select.selectedIndex + 1) % 2]?.value ?? '';
        Object.getOwnPropertyDescriptor(HTMLSelectElement.prototype, 'value')?.set?.call(select, value);
        select.dispatchEvent(new Event('change', { bubbles: true }));
        await changed;
        await painted();
        samples.push(performance.now() - from);
        await new Promise((rested) => setTimeout(rested, restMs));
      }
      return samples;
    },
    { times, restMs: EDITS_REST_MS },
  );
}

const cableEdit: MeasuredBench = {
  name: 'web: a size of cable changed on sheet 04 until its volts are repainted',
  unit: 'ms',
  budget: { p95: 50, why: 'three frames: the figure follows the hand' },
  async measure(times) {
    const { server, end } = await surroundings();
    try {
      return await inFreshBrowser(async (page, context) => {
        await loadedInMs(page, `${server.url}${SHEET}`);
        await editCableSize(page, 5);
        const chrome = await context.newCDPSession(page);
        await chrome.send('Performance.enable');
        const before = await threadTimes(chrome);
        const samples = await editCableSize(page, times * 6);
        const after = await threadTimes(chrome);
        const each = (from: number, to: number) => ((to - from) * 1000) / samples.length;
        return {
          samples,
          more: { scriptMs: each(before.scriptS, after.scriptS), taskMs: each(before.taskS, after.taskS) },
        };
      });
    } finally {
      await end();
    }
  },
};

export const measuredBenches = [firstLoad, secondLoad, cableEdit];
