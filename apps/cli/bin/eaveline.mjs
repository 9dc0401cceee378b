#!/usr/bin/env node
import process from 'node:process';

// in a checkout the bundle is made, or made anew after a change, before it is used; a published package has no scripts
const { existsSync } = await import('node:fs');
const build = new URL('../../../scripts/build.mjs', import.meta.url);
if (existsSync(build)) {
  const { ensureBuilt } = await import(build.href);
  await ensureBuilt(['cli'], (line) => process.stderr.write(`${line}\n`));
}
const { main } = await import('../dist/main.js');
await main(process.argv.slice(2));
