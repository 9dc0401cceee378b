import process from 'node:process';
import { endWithParent } from './endWithParent.mjs';
import { nodeTooOld } from './nodeVersion.mjs';

endWithParent();
const tooOld = nodeTooOld(process.versions.node);
if (tooOld === undefined) process.exitCode = await runTests(process.argv.slice(2));
else {
  console.error(tooOld);
  process.exitCode = 2;
}

/** Runs vitest with the given arguments; the last line says how many passed, failed and were skipped. */
async function runTests(args) {
  const { existsSync, mkdtempSync, readFileSync, rmSync } = await import('node:fs');
  const { tmpdir } = await import('node:os');
  const { join } = await import('node:path');
  const { fileURLToPath } = await import('node:url');
  const { CannotGoOn, ensureInstalled } = await import('./install.mjs');
  const { runStep } = await import('./runStep.mjs');
  const { chromiumPath, NO_CHROMIUM } = await import('./chromium.mjs');
  const { tally, tallyLine } = await import('./tally.mjs');

  try {
    await ensureInstalled((line) => console.log(line));
  } catch (error) {
    console.error(error instanceof CannotGoOn ? error.message : error);
    console.log(tallyLine({ passed: 0, failed: 1, skipped: 0 }));
    return 1;
  }
  if (chromiumPath() === undefined) console.log(NO_CHROMIUM);

  const root = fileURLToPath(new URL('..', import.meta.url));
  const scratch = mkdtempSync(join(tmpdir(), 'eaveline-test-'));
  try {
    const reportFile = join(scratch, 'report.json');
    const vitest = join(root, 'node_modules/vitest/vitest.mjs');
    const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${reportFile}`];
    const { code, stoppedBy, leftBehind } = await runStep(process.execPath, [vitest, 'run', ...reporters, ...args], {
      cwd: root,
    });
    const report = existsSync(reportFile) ? JSON.parse(readFileSync(reportFile, 'utf8')) : undefined;
    const counts = tally(report, code);
    if (stoppedBy) counts.remarks = [`Stopped by ${stoppedBy}; what had not been run by then is not counted.`];
    else if (leftBehind) {
      counts.failed += 1;
      counts.remarks.push('The tests left a process behind; it was ended.');
    }
    for (const remark of counts.remarks) console.log(remark);
    console.log(tallyLine(counts));
    return counts.failed === 0 && !stoppedBy ? 0 : 1;
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
}
