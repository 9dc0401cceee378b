import { expect, test } from 'vitest';
import { tally, tallyLine } from './tally.mjs';

const oneFile = (status: string, tests: readonly string[]) => ({
  name: 'roof.test.ts',
  status,
  assertionResults: tests.map((each) => ({ status: each })),
});

const report = (files: ReturnType<typeof oneFile>[]) => {
  const all = files.flatMap((file) => file.assertionResults.map((each) => each.status));
  const count = (status: string) => all.filter((each) => each === status).length;
  return {
    numPassedTests: count('passed'),
    numFailedTests: count('failed'),
    numPendingTests: count('pending'),
    numTodoTests: count('todo'),
    testResults: files,
  };
};

test('counts what passed, failed and was skipped', () => {
  const counts = tally(report([oneFile('failed', ['passed', 'passed', 'failed', 'pending', 'todo'])]), 1);
  expect(tallyLine(counts)).toBe('2 passed, 1 failed, 2 skipped');
});

test('a file that fell over before its first test is a failure', () => {
  const counts = tally(report([oneFile('passed', ['passed']), oneFile('failed', [])]), 1);
  expect(tallyLine(counts)).toBe('1 passed, 1 failed, 0 skipped');
});

test('a run of nothing, a run of skipped tests only and a run without a report all fail', () => {
  expect(tally(report([]), 0).failed).toBe(1);
  expect(tally(report([oneFile('passed', ['pending'])]), 0).failed).toBe(1);
  expect(tally(undefined, 0).failed).toBe(1);
});

test('vitest calling a run failed is believed although every test passed', () => {
  expect(tally(report([oneFile('passed', ['passed'])]), 1).failed).toBe(1);
});
