import { expect, test } from 'vitest';
import type { Io, Outcome } from '../io.ts';
import { runCommandLine } from '../program.ts';
import { registerCalc } from './calc.ts';

/** Runs one command line against files and a standard input that are given. */
async function run(
  argv: readonly string[],
  stdin = '',
  files: Readonly<Record<string, string>> = {},
): Promise<Outcome> {
  const answers: Outcome[] = [];
  const open = async (path: string) => {
    const text = files[path];
    if (text === undefined) throw Object.assign(new Error('ENOENT'), { code: 'ENOENT', path });
    return text;
  };
  const io: Io = {
    readText: open,
    readBytes: async (path) => new TextEncoder().encode(await open(path)),
    readStdin: async () => stdin,
    writeFile: () => Promise.reject(new Error('calc writes nothing')),
    print: () => {},
    now: () => new Date(0),
    answer: (outcome) => void answers.push(outcome),
  };
  await runCommandLine(['calc', ...argv], [registerCalc], io);
  expect(answers).toHaveLength(1);
  return answers[0] as Outcome;
}

// 20 A over 25 m of 2.5 mm² at 70 °C: 2 · 20 · 25 · 8.86606/1000 V by hand
const run20A = { kind: 'two-wire', currentA: 20, lengthM: 25, rOhmPerKm: 8.86606, nominalV: 230 };

test('worked example: one object in, one object out, exit 0', async () => {
  const { text, verdict } = await run(['voltage-change'], JSON.stringify(run20A));
  expect(verdict).toBe(0);
  expect(JSON.parse(text).volts).toBeCloseTo(8.86606, 9);
  expect(JSON.parse(text).percent).toBeCloseTo(3.854809, 5);
});

test('worked example: a list from a file, in the same order, a line a row', async () => {
  const rows = [run20A, { ...run20A, currentA: 10 }];
  const { text, verdict } = await run(['voltage-change', 'rows.json'], '', { 'rows.json': JSON.stringify(rows) });
  expect(verdict).toBe(0);
  expect(JSON.parse(text).map(({ volts }: { volts: number }) => volts)).toEqual([
    expect.closeTo(8.86606, 9),
    expect.closeTo(4.43303, 9),
  ]);
  expect(text.trim().split('\n')).toHaveLength(4);
});

test('a row with an error stands in its place, the others are answered, exit 1', async () => {
  const rows = [run20A, { ...run20A, lengthM: -25 }, { kind: 'two-wire', currentA: '20' }, 'nothing'];
  const { text, verdict } = await run(['voltage-change'], JSON.stringify(rows));
  const [good, refused, unfit, noRow] = JSON.parse(text);
  expect(verdict).toBe(1);
  expect(good.volts).toBeCloseTo(8.86606, 9);
  expect(refused).toEqual({
    error: { code: 'not-positive', at: 'lengthM', got: -25, want: 'greater than 0', mend: 'Measure along the cable.' },
  });
  expect(unfit.error).toMatchObject({ code: 'wrong-type', at: 'currentA', got: '20', want: 'a number' });
  expect(unfit.more.map(({ at, code }: { at: string; code: string }) => [at, code])).toEqual([
    ['lengthM', 'missing'],
    ['rOhmPerKm', 'missing'],
    ['nominalV', 'missing'],
  ]);
  expect(noRow.error).toMatchObject({ code: 'wrong-type', at: 'row', want: 'an object' });
  for (const { error } of [refused, unfit, noRow])
    expect(Object.keys(error)).toEqual(['code', 'at', 'got', 'want', 'mend']);
});

test('an unknown kind is refused with the kinds there are', async () => {
  const { text } = await run(['voltage-change'], JSON.stringify({ ...run20A, kind: 'two wire' }));
  expect(JSON.parse(text).error).toMatchObject({
    code: 'unknown-name',
    at: 'kind',
    got: 'two wire',
    want: expect.stringContaining('two-wire, three-phase'),
  });
});

test('of two shapes, the faults named are those of the nearer one', async () => {
  const nec = { standard: 'NEC 310.16', conductor: 'copper', awg: '12', insulationColumnC: 90, ambientC: 48 };
  const { text } = await run(['cable-capacity'], JSON.stringify({ ...nec, currentCarryingConductors: 3 }));
  expect(JSON.parse(text)).toMatchObject({ error: { code: 'missing', at: 'terminalColumnC' } });
});

test('--working adds the sum to each result', async () => {
  const { text } = await run(['adiabatic', '--working'], JSON.stringify({ faultCurrentA: 3000, timeS: 0.4, k: 115 }));
  expect(JSON.parse(text).working).toEqual([
    'S = √(I²·t)/k = √(3000² · 0.4)/115 = 16.4988 mm²',
    'next standard size: 25 mm²',
  ]);
});

test('a file that a row names is looked for here, then beside the rows', async () => {
  const row = { weatherFile: 'w.csv', tiltDeg: 0, surfaceAzimuthDeg: 0, gammaPerK: -0.004, moduleStcW: 400 };
  const five = { ILRefA: 11.6, IORefA: 1e-11, RSOhm: 0.18, RShRefOhm: 164, aRefV: 1.48 };
  const text = JSON.stringify({ ...row, alphaIscAPerK: 0.005, fiveParameters: five });
  const unread = await run(['plane-year', 'jobs/rows.json'], '', { 'jobs/rows.json': text });
  expect(JSON.parse(unread.text).error).toMatchObject({ code: 'missing', at: 'weatherFile', got: 'w.csv' });
  const read = await run(['plane-year', 'jobs/rows.json'], '', { 'jobs/rows.json': text, 'jobs/w.csv': '<html>' });
  expect(JSON.parse(read.text).error).toMatchObject({ code: 'inconsistent', at: 'weatherFile' });
});

test('--list names every quantity with one line; with --json the schemas', async () => {
  const { text, verdict } = await run(['--list']);
  expect(verdict).toBe(0);
  expect(text).toMatch(/sun-position\s+where the sun stands/);
  const schemas = JSON.parse((await run(['--list', '--json'])).text);
  expect(schemas.length).toBeGreaterThanOrEqual(26);
  for (const { name, input, output } of schemas) {
    expect(name).toMatch(/^[a-z-]+$/);
    expect(input.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(input.properties ?? input.oneOf ?? input.anyOf, name).toBeDefined();
    expect(output.properties ?? output.oneOf ?? output.anyOf, name).toBeDefined();
  }
});

test('NAME --help prints fields, units and source', async () => {
  const { text, verdict } = await run(['fault-loop', '--help']);
  expect(verdict).toBe(0);
  expect(text).toMatch(/zeOhm\s+Ω\s+loop outside the installation/);
  expect(text).toMatch(/temperatureFactor\s+1\s+may be left out\s+cold to hot; default 1\.2/);
  expect(text).toContain('Source: BS 7671:2018 Table 41.3');
});

test.each([
  ['an unknown name, with the near one', ['sun-postion'], '', /no quantity "sun-postion". Did you mean sun-position\?/],
  ['a name like no other', ['xylophone'], '', /no quantity "xylophone". eaveline calc --list/],
  ['no name', [], '', /Name a quantity/],
  ['no JSON', ['adiabatic'], '{"k": 115,}', /Standard input is not JSON/],
  [
    'a hundred thousand lists in one another',
    ['adiabatic'],
    `${'['.repeat(1e5)}${']'.repeat(1e5)}`,
    /deeper than 64 levels/,
  ],
  ['an empty input', ['adiabatic'], ' \n', /Standard input is empty/],
  ['a bare number', ['adiabatic'], '115', /Give one JSON object, or a list/],
  ['a file that is not there', ['adiabatic', 'rows.json'], '', /rows.json: There is no such file/],
])('could not run: %s', async (_, argv, stdin, words) => {
  expect(await run(argv, stdin)).toEqual({ text: expect.stringMatching(words), verdict: 2 });
});
