import { readFileSync } from 'node:fs';
import { kestrelRise, writeJob } from '@eaveline/job';
import { expect, test } from 'vitest';
import type { Io, Outcome } from '../io.ts';
import { runCommandLine } from '../program.ts';
import { readOutcome, registerRead } from './read.ts';

/** Three days of published weather; `packages/formats/fixtures/weather/README.md` says whose. */
const weather = (name: string) =>
  readFileSync(new URL(`../../../../packages/formats/fixtures/weather/${name}`, import.meta.url), 'utf8');
const bytes = (text: string) => new TextEncoder().encode(text);
const read = (text: string, name = 'file') => readOutcome(bytes(text), name);
const data = (text: string, name = 'file') => JSON.parse(readOutcome(bytes(text), name, { json: true }).text);

test('weather: what it is, where, how much of it there is, and every remark', () => {
  const { text, verdict } = read(weather('boston-3-days.epw'), 'boston.epw');
  expect(text).toMatch(/^boston\.epw: EPW weather year\. The first line begins with LOCATION\./);
  expect(text).toMatch(/place +Boston Logan.* 42\.370° N, 71\.020° W, 6 m, UTC−5\.0 h/);
  expect(text).toMatch(/hours +72 of 8760, every value there/);
  expect(text).toMatch(/warn .*72 of 8760 hours present/);
  // three days where a year is wanted: usable, and something to look at
  expect(verdict).toBe(1);
});

test('weather as data: the sums are those of the rows', () => {
  // column 14 of an EPW row is the global horizontal radiation of the hour, Wh/m²
  const text = weather('boston-3-days.epw');
  const rows = text.split(/\r?\n/).filter((line) => /^\d{4},/.test(line));
  const ghiKwh = rows.reduce((sum, line) => sum + Number(line.split(',')[13]) / 1000, 0);
  const { kind, usable, holds, remarks } = data(text);
  expect([kind, usable]).toEqual(['epw', true]);
  expect(holds.sums.ghiKwhM2).toBeCloseTo(ghiKwh, 9);
  expect(holds).toMatchObject({ annual: null, hours: 72, covered: { ghi: 72, airC: 72 }, sunShiftH: 0 });
  expect(holds.place).toMatchObject({ latitudeDeg: 42.37, longitudeDeg: -71.02, utcOffsetH: -5 });
  expect(remarks[0]).toMatchObject({ severity: 'warn', code: 'year-not-whole' });
});

test('a whole year with nothing to say against it exits 0', () => {
  const hours = Array.from({ length: 8760 }, (_, k) => {
    const at = new Date(Date.UTC(2025, 0, 1, 0, 30) + k * 3_600_000);
    // some light at noon UTC, warmer then: values that no check finds odd
    const light = Math.max(0, Math.round(600 * Math.cos(((at.getUTCHours() - 12) / 12) * Math.PI)));
    const fields = [light, Math.round(light / 2), Math.round(light / 2), 10 + light / 100 + (k % 3), 2 + (k % 2)];
    return `${at.toISOString().slice(0, 19)}Z,${at.getUTCMonth() + 1},${fields.join(',')}`;
  });
  const { text, verdict } = read(['sun_time_utc,month,ghi,dni,dhi,air_c,wind_m_s', ...hours].join('\n'));
  expect(verdict).toBe(0);
  expect(text).toMatch(/hours +8760 of 8760/);
  expect(text).toMatch(/note .*does not say where it was taken/);
  expect(text).toMatch(/Usable as it is\.$/);
});

test('a row left out is named by its line, exit 1', () => {
  const lines = weather('boston-3-days.epw').split('\n');
  lines[20] = (lines[20] as string).split(',').slice(0, 12).join(',');
  const { text, verdict } = read(lines.join('\n'));
  expect(text).toMatch(/drop {2}line 21: .*12 fields.* At least 22 are needed\./);
  expect(verdict).toBe(1);
});

test('a job: what it is called, which rules, exit 0', () => {
  const { text, verdict } = read(writeJob(kestrelRise), 'kestrel.job.json');
  expect(text).toContain('kestrel.job.json: Eaveline job.');
  expect(text).toMatch(new RegExp(`job +${kestrelRise.name} \\(${kestrelRise.id}\\), version \\d+`));
  expect(verdict).toBe(0);
});

test('a broken job is still a job: every fault with its path, its line and the way out, exit 2', () => {
  const broken = writeJob(kestrelRise).replace(/"version":\s*\d+/, '"version": 999');
  const { text, verdict } = read(broken);
  expect(text).toMatch(
    /stop {2}(line \d+, )?version: Found version 999\. Wanted version \d+ or older\. Open it with a newer/,
  );
  expect(verdict).toBe(2);
  expect(read('{"format": ', 'half.job.json')).toMatchObject({ verdict: 2, text: expect.stringContaining('stop') });
});

test.each([
  ['a meter file', '100,NEM12,200506081149,UNITEDDP,NEMMCO\n', 'nem12', 'no-reader-yet', /does not read this kind yet/],
  ['a table', 'a,b\n1,2\n', 'table', 'not-known', /of a kind not known here/],
  ['nothing at all', '', 'unknown', 'not-known', /Nothing was read/],
  ['a page of a service', '<!doctype html><title>Busy</title>', 'web-page', 'service-error', /Busy/],
  ['an EPW without its place', 'DESIGN CONDITIONS,0\n', 'epw', 'no-location', /LOCATION/],
])('not usable: %s says so plainly, exit 2', (_, text, kind, code, words) => {
  expect(data(text)).toMatchObject({ kind, usable: false, verdict: 2, remarks: [{ severity: 'stop', code }] });
  expect(read(text)).toEqual({ text: expect.stringMatching(words), verdict: 2 });
});

/** The command as typed, with one file on disk. */
async function run(argv: readonly string[], files: Readonly<Record<string, string>>) {
  const printed: string[] = [];
  const answers: Outcome[] = [];
  const refuse = () => Promise.reject(new Error('read opens one file'));
  const io: Io = {
    readText: refuse,
    readBytes: async (path) => {
      const text = files[path];
      if (text === undefined) throw Object.assign(new Error('ENOENT'), { code: 'ENOENT', path });
      return bytes(text);
    },
    readStdin: refuse,
    writeFile: refuse,
    print: (text) => void printed.push(text),
    now: () => new Date(0),
    answer: (outcome) => void answers.push(outcome),
  };
  await runCommandLine(['read', ...argv], [registerRead], io);
  return { printed: printed.join(''), answers };
}

test('the answer is printed whatever the verdict, so that it can be read by a program', async () => {
  const { printed, answers } = await run(['some/meter.csv', '--json'], {
    'some/meter.csv': '100,NEM12,200506081149,A,B\n',
  });
  expect(JSON.parse(printed)).toMatchObject({ file: 'meter.csv', kind: 'nem12', verdict: 2 });
  expect(answers).toEqual([{ text: '', verdict: 2 }]);
});

test('could not run: a file that is not there', async () => {
  const { answers } = await run(['gone.epw'], {});
  expect(answers).toEqual([{ text: 'gone.epw: There is no such file.', verdict: 2 }]);
});
