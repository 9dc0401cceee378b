import process from 'node:process';
import { endWithParent } from './endWithParent.mjs';
import { nodeTooOld } from './nodeVersion.mjs';

// everything beyond the check of Node is loaded afterwards: an old Node could not even read it
const tooOld = nodeTooOld(process.versions.node);
endWithParent();
if (tooOld === undefined) await start();
else {
  console.error(tooOld);
  process.exitCode = 2;
}

async function start() {
  const say = (line) => console.log(line);
  const { CannotGoOn, ensureInstalled } = await import('./install.mjs');
  try {
    await ensureInstalled(say);
    const { ensureBuilt } = await import('./build.mjs');
    await ensureBuilt(['cli', 'web'], say);
  } catch (error) {
    console.error(error instanceof CannotGoOn ? error.message : error);
    process.exitCode = 2;
    return;
  }
  // in this process, so that stopping it stops everything
  const { main } = await import('../apps/cli/dist/main.js');
  await main(['serve', ...process.argv.slice(2)]);
}
