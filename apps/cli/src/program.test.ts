import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { Io, Outcome } from './io.ts';
import { type Register, runCommandLine } from './program.ts';
import { VERSION } from './version.ts';

/** An io that keeps what was said and refuses to touch anything. */
function listeningIo() {
  const printed: string[] = [];
  const answers: Outcome[] = [];
  const refuse = () => Promise.reject(new Error('this test opens nothing'));
  const io: Io = {
    readText: refuse,
    readBytes: refuse,
    readStdin: refuse,
    writeFile: refuse,
    print: (text) => void printed.push(text),
    now: () => new Date(0),
    answer: (outcome) => void answers.push(outcome),
  };
  return { io, printed, answers };
}

const registerWeigh: Register = (program, io) => {
  program
    .command('weigh')
    .description('weigh one thing')
    .argument('<thing>')
    .action((thing: string) => io.answer({ text: `${thing}: too heavy`, verdict: 1 }));
};

async function run(...argv: string[]) {
  const heard = listeningIo();
  await runCommandLine(argv, [registerWeigh], heard.io);
  return heard;
}

test('a command that runs answers with its own verdict', async () => {
  const { answers } = await run('weigh', 'anvil');
  expect(answers).toEqual([{ text: 'anvil: too heavy', verdict: 1 }]);
});

test('--version prints the version of package.json and nothing goes wrong', async () => {
  const { printed, answers } = await run('--version');
  const { version } = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8'));
  expect(printed.join('')).toBe(`${version}\n`);
  expect(VERSION).toBe(version);
  expect(answers).toEqual([]);
});

test('--help lists the commands and the exit codes', async () => {
  const { printed, answers } = await run('--help');
  expect(printed.join('')).toMatch(/weigh <thing>\s+weigh one thing/);
  expect(printed.join('')).toContain('0 nothing fails, 1 something fails, 2 could not run');
  expect(answers).toEqual([]);
});

test.each([
  ['an unknown command', ['wiegh', 'anvil'], /unknown command 'wiegh'[\s\S]*weigh/],
  ['an unknown flag', ['weigh', 'anvil', '--kg'], /unknown option '--kg'/],
  ['a missing argument', ['weigh'], /missing required argument 'thing'/],
  ['nothing at all', [], /Usage: eaveline/],
])('refusal: %s could not run and says the way out', async (_what, argv, words) => {
  const { answers } = await run(...argv);
  expect(answers).toHaveLength(1);
  expect(answers[0]).toMatchObject({ verdict: 2, text: expect.stringMatching(words) });
  expect(answers[0]?.text).toContain('--help');
});

test('refusal: a file that is not there is one line, without a stack', async () => {
  const { io, answers } = listeningIo();
  const missing = Object.assign(new Error('ENOENT: no such file'), { code: 'ENOENT', path: 'roof.job.json' });
  const registerRead: Register = (program, withIo) => {
    program.command('read').action(async () => {
      await withIo.readText('roof.job.json');
    });
  };
  await runCommandLine(['read'], [registerRead], { ...io, readText: () => Promise.reject(missing) });
  expect(answers).toEqual([{ text: 'roof.job.json: There is no such file.', verdict: 2 }]);
});
