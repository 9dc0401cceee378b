import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, expect, test } from 'vitest';
import { finderIn, readReferenceFiles } from './files.ts';
import { runReference } from './runReference.ts';
import type { QuantityLine } from './summary.ts';
import type { Skipped } from './tally.ts';

const fixture = (name: string) => fileURLToPath(new URL(`../../fixtures/reference/${name}`, import.meta.url));
const scratch = mkdtempSync(join(tmpdir(), 'eaveline-reference-'));
afterAll(() => rmSync(scratch, { recursive: true }));

function run(dir: string) {
  const { files, unread } = readReferenceFiles(dir);
  const { text, verdict } = runReference(files, finderIn(dir), { json: true }, unread);
  const report: { quantities: QuantityLine[]; skipped: Skipped[]; unknown: string[] } = JSON.parse(text);
  const line = (quantity: string) => report.quantities.find((each) => each.quantity === quantity);
  return { ...report, verdict, line, words: runReference(files, finderIn(dir), {}, unread).text };
}

test('a sound folder: every figure within tolerance, exit 0', () => {
  const { verdict, line } = run(fixture('sound'));
  expect(verdict).toBe(0);
  expect(line('sky-split dni')).toMatchObject({ rows: 3, within: 3, withinSameModel: 3 });
  expect(line('adiabatic nextStandardMm2')).toMatchObject({ rows: 1, within: 1 });
  expect(line('response-curve reactivePercentOfRatedVa')).toMatchObject({ rows: 1, within: 1 });
  expect(line('worked W15')).toMatchObject({ rows: 3, within: 3 });
  expect(line('cut-stock count')).toMatchObject({ rows: 1, within: 1 });
});

test('what is not worked out is named and counted, never dropped', () => {
  const { skipped, unknown, words } = run(fixture('sound'));
  expect(skipped).toContainEqual({
    what: 'lightning distance',
    where: 'checks.json',
    why: 'not yet worked out',
    count: 1,
  });
  expect(skipped).toContainEqual(expect.objectContaining({ what: 'battery_dispatch', count: 1 }));
  expect(skipped).toContainEqual(expect.objectContaining({ what: 'sky-split diffuseFraction', count: 3 }));
  expect(unknown).toEqual(['other.json']);
  for (const name of ['lightning distance', 'battery_dispatch', 'other.json']) expect(words).toContain(name);
});

test('a planted row is found: 40 W/m² too much beam where 3 W/m² or 1 % is allowed', () => {
  const { verdict, line, words } = run(fixture('planted'));
  expect(verdict).toBe(1);
  expect(line('sky-split dni')).toMatchObject({
    rows: 3,
    within: 2,
    largest: expect.closeTo(40, 1),
    worstRow: 'de-13',
  });
  expect(line('sky-split dhi')).toMatchObject({ rows: 3, within: 3 });
  expect(words).toMatch(/sky-split dni .* de-13 +OUTSIDE/);
});

test('a row that is refused counts as outside and says why', () => {
  const dir = join(scratch, 'refused');
  mkdirSync(dir);
  const checks = [
    { id: 'a', kind: 'adiabatic', inputs: { fault_current_a: 3000, time_s: 9, k: 115 }, expected: { minimum_mm2: 78 } },
  ];
  writeFileSync(join(dir, 'checks.json'), JSON.stringify({ checks }));
  const { verdict, line, words } = run(dir);
  expect(verdict).toBe(1);
  expect(line('adiabatic minimumMm2')).toMatchObject({ rows: 1, within: 0, largest: null, worstRow: 'a' });
  expect(words).toContain('adiabatic minimumMm2, a: timeS is 9; it has to be 0.1 to 5');
});

/** A year of even diffuse light, and a row that says what a flat plane makes of it: 4408 h of 0.1 kW at the equator. */
function evenYearFolder(name: string, weatherAt: string): string {
  const dir = join(scratch, name, 'reference');
  const hours = Array.from({ length: 8760 }, (_, k) => {
    const at = new Date(Date.UTC(2025, 0, 1, 0, 30) + k * 3_600_000).toISOString();
    return `${at.slice(0, 19)}Z,${Number(at.slice(5, 7))},100,0,100,20,0`;
  });
  mkdirSync(join(dir, 'sun'), { recursive: true });
  mkdirSync(join(scratch, name, weatherAt), { recursive: true });
  const csv = ['sun_time_utc,month,ghi,dni,dhi,air_c,wind_m_s', ...hours].join('\n');
  writeFileSync(join(scratch, name, weatherAt, 'even.csv'), csv);
  const five_parameters = { I_L_ref_a: 11.6, I_o_ref_a: 1e-11, R_s_ohm: 0.18, R_sh_ref_ohm: 164, a_ref_v: 1.48 };
  const document = {
    parameters: { gamma_per_k: -0.004, module_stc_w: 375, alpha_isc_a_per_k: 0.005, five_parameters },
    files: [{ key: 'even', hourly_file: 'hourly/even.csv', lat: 0, lon: 0, altitude_m: 0 }],
    tolerance: { annual_energy: { acceptable_rel: 0.01 } },
    rows: [{ id: 'y', weather: 'even', tilt_deg: 0, surface_azimuth_deg: 0, annual: { poa_isotropic_kwh_m2: 440.8 } }],
  };
  writeFileSync(join(dir, 'sun', 'annual.json'), JSON.stringify(document));
  return dir;
}

test.each([
  ['beside the file', 'reference/sun/hourly'],
  ['in a folder of the same tree', 'reference/weather/hourly'],
  ['in a folder beside the tree', 'data/weather/hourly'],
  ['under its key alone', 'data/typical'],
])('the weather of a year is found %s', (name, weatherAt) => {
  const { verdict, line } = run(evenYearFolder(name.replaceAll(' ', '-'), weatherAt));
  expect(line('plane-year annual poaIsotropicKwhM2')).toMatchObject({ rows: 1, within: 1 });
  expect(verdict).toBe(0);
});

test('weather that is nowhere about is a row skipped by name, and nothing tried does not pass', () => {
  const dir = evenYearFolder('gone', 'data');
  rmSync(join(scratch, 'gone', 'data'), { recursive: true });
  const { verdict, skipped } = run(dir);
  expect(skipped).toEqual([expect.objectContaining({ what: 'plane-year', why: expect.stringContaining('even.csv') })]);
  expect(verdict).toBe(2);
});

test('the script exits 0, 1 and 2 as the run comes out', () => {
  const empty = join(scratch, 'empty');
  mkdirSync(empty);
  const script = fileURLToPath(new URL('./run.ts', import.meta.url));
  const exitOf = (dir: string) => {
    try {
      execFileSync(process.execPath, ['--import', 'tsx', '--conditions=source', script, dir], { stdio: 'pipe' });
      return 0;
    } catch (error) {
      return (error as { status: number }).status;
    }
  };
  expect(exitOf(fixture('sound'))).toBe(0);
  expect(exitOf(fixture('planted'))).toBe(1);
  expect(exitOf(empty)).toBe(2);
  expect(exitOf(join(scratch, 'nowhere'))).toBe(2);
}, 30_000);
