import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { CHROMIUM_FLAGS, chromiumPath, NO_CHROMIUM } from './chromium.mjs';

/*
 * Draws the pictures under which a device files the app, from the sign of the house in public/sign.svg.
 * They are committed; run this again when the sign changes, and look at them.
 */

const PUBLIC = fileURLToPath(new URL('../apps/web/public', import.meta.url));

/** A maskable picture may lose everything outside the middle 80 % of its width; the sign keeps well inside. */
const ICONS = [
  { file: 'sign-192.png', px: 192, part: 0.84 },
  { file: 'sign-512.png', px: 512, part: 0.84 },
  { file: 'sign-maskable-512.png', px: 512, part: 0.62 },
  { file: 'sign-apple-180.png', px: 180, part: 0.78 },
];

const path = chromiumPath();
if (path === undefined) throw new Error(NO_CHROMIUM);
const sign = readFileSync(join(PUBLIC, 'sign.svg'), 'utf8');
const paper = /<rect [^>]*fill="(#[0-9a-f]{6})"/.exec(sign)?.[1];
if (paper === undefined) throw new Error('public/sign.svg has no sheet of paper behind the sign.');

const browser = await chromium.launch({ executablePath: path, headless: true, args: [...CHROMIUM_FLAGS] });
try {
  const page = await browser.newPage();
  for (const { file, px, part } of ICONS) {
    await page.setViewportSize({ width: px, height: px });
    const side = Math.round(px * part);
    await page.setContent(
      `<body style="margin:0;height:${px}px;display:grid;place-items:center;background:${paper}">` +
        `${sign.replace('<svg ', `<svg width="${side}" height="${side}" `)}</body>`,
    );
    await page.screenshot({ path: join(PUBLIC, file) });
  }
} finally {
  await browser.close();
}
