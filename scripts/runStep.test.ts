import process from 'node:process';
import { expect, test } from 'vitest';
import { runStep } from './runStep.mjs';

const quiet = { stdio: 'ignore' } as const;
const node = (code: string) => runStep(process.execPath, ['-e', code], quiet);

test('the exit code of a program comes back', async () => {
  expect(await node('process.exitCode = 3')).toEqual({ code: 3, leftBehind: false });
});

test('a process that a program leaves running is ended and reported', async () => {
  const forever =
    "require('child_process').spawn(process.execPath, ['-e', 'setInterval(() => {}, 1000)'], { stdio: 'ignore' }).unref()";
  expect(await node(forever)).toEqual({ code: 0, leftBehind: true });
});

test('a program that cannot be started is an error, not a success', async () => {
  await expect(runStep('no-such-program-anywhere', [], quiet)).rejects.toThrow('ENOENT');
});
