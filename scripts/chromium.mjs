import { existsSync } from 'node:fs';
import process from 'node:process';

const USUAL = '/usr/bin/chromium';

/** The browser that walks and pictures use: CHROME_PATH where set, else Debian's; undefined where there is none. */
export function chromiumPath() {
  const asked = process.env.CHROME_PATH;
  if (asked) {
    if (!existsSync(asked)) throw new Error(`CHROME_PATH is ${asked}; there is no such file. Unset it or mend it.`);
    return asked;
  }
  return existsSync(USUAL) ? USUAL : undefined;
}

/** What to say where there is none. */
export const NO_CHROMIUM = `No Chromium at ${USUAL} and CHROME_PATH is not set: tests that need a browser are skipped.`;

/** Flags for a quiet headless run that also works as root. */
export const CHROMIUM_FLAGS = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];
