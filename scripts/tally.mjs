/**
 * Counts a vitest JSON report.
 *
 * A file that fell over before its first test counts as one failed, and so does a run that
 * vitest itself calls failed although no test is: an unhandled rejection between tests.
 *
 * @param report    the parsed report; undefined where vitest wrote none.
 * @param exitCode  vitest's own.
 * @returns {{ passed: number, failed: number, skipped: number, remarks: string[] }}
 */
export function tally(report, exitCode) {
  if (report === undefined) return { passed: 0, failed: 1, skipped: 0, remarks: ['vitest ended without a report.'] };
  const passed = report.numPassedTests;
  const skipped = report.numPendingTests + report.numTodoTests;
  const fellOver = report.testResults.filter(
    ({ status, assertionResults }) => status === 'failed' && !assertionResults.some((test) => test.status === 'failed'),
  );
  const remarks = fellOver.map(({ name }) => `${name} fell over outside its tests.`);
  let failed = report.numFailedTests + fellOver.length;
  if (failed === 0 && passed === 0) {
    remarks.push('No test was run: a run that looked at nothing does not pass.');
    failed = 1;
  }
  if (failed === 0 && exitCode !== 0) {
    remarks.push(`vitest ended with ${exitCode} although no test failed; it says why above.`);
    failed = 1;
  }
  return { passed, failed, skipped, remarks };
}

/** The line by which a run is known. */
export const tallyLine = ({ passed, failed, skipped }) => `${passed} passed, ${failed} failed, ${skipped} skipped`;
