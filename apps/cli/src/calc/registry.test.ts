import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { z } from 'zod';
import { camelKeys } from '../camelKeys.ts';
import type { CalcAnswer } from './calc.ts';
import { calcHelp, schemaOf } from './help.ts';
import { calcNamed, calcs } from './registry.ts';

interface FixtureRow {
  readonly name: string;
  readonly source: string;
  readonly row: Record<string, unknown>;
  readonly expected: Record<string, unknown>;
  readonly tolerance: { readonly abs?: number; readonly rel?: number };
}

// rows of published or independently computed reference data, keys as they stand there; each names its source
const fixtures: readonly FixtureRow[] = JSON.parse(
  readFileSync(new URL('../../fixtures/calc-rows.json', import.meta.url), 'utf8'),
);
const ISO = /^\d{4}-\d{2}-\d{2}T/;
/** Results may hold more than the source gives, never less. */
function compare(got: unknown, want: unknown, tolerance: FixtureRow['tolerance'], at: string): void {
  if (typeof want === 'number') {
    expect(typeof got, at).toBe('number');
    const allowed = Math.max(tolerance.abs ?? 0, (tolerance.rel ?? 0) * Math.abs(want)) + 1e-12;
    expect(Math.abs((got as number) - want), `${at}: ${got} for ${want}`).toBeLessThanOrEqual(allowed);
  } else if (typeof want === 'string' && ISO.test(want)) {
    // crossings are printed to 0.1 s and good to 2 s
    expect(Math.abs(Date.parse(got as string) - Date.parse(want)), at).toBeLessThanOrEqual(2000);
  } else if (Array.isArray(want)) {
    expect(got, at).toHaveLength(want.length);
    want.forEach((each, i) => void compare((got as unknown[])[i], each, tolerance, `${at}[${i}]`));
  } else if (typeof want === 'object' && want !== null) {
    for (const [key, each] of Object.entries(want))
      compare((got as Record<string, unknown>)[key], each, tolerance, `${at}.${key}`);
  } else expect(got, at).toEqual(want);
}

const resultOf = (answer: CalcAnswer) => ('result' in answer ? answer.result : { error: answer.problems });

test.each(fixtures.map((row, i) => [`${i} ${row.name}`, row] as const))('truth table: %s', (_, fixture) => {
  const calc = calcNamed(fixture.name);
  const answer = calc?.answer(camelKeys(fixture.row)) as CalcAnswer;
  expect(Object.keys(fixture.expected).length).toBeGreaterThan(0);
  compare(resultOf(answer), camelKeys(fixture.expected), fixture.tolerance, fixture.name);
});

test('every quantity but the one that needs a year of weather has a row in the truth table', () => {
  const tried = new Set(fixtures.map(({ name }) => name));
  expect(calcs.map(({ name }) => name).filter((name) => !tried.has(name))).toEqual(['plane-year']);
});

test.each(calcs.map((calc) => [calc.name, calc] as const))('contract: %s describes itself truly', (_, calc) => {
  expect(calc.line).not.toBe('');
  expect(calc.source).not.toBe('');
  // the schema as published takes the example, and refuses a row without its fields
  const published = z.fromJSONSchema(schemaOf(calc, 'input') as Parameters<typeof z.fromJSONSchema>[0]);
  expect(published.safeParse(calc.example).success).toBe(true);
  expect(published.safeParse({}).success).toBe(false);
  expect(calcHelp(calc)).toContain(calc.source);
  if (calc.name === 'plane-year') return; // its example names a file; see planeYear.test.ts
  const answer = calc.answer(calc.example);
  if (!('result' in answer)) throw new Error(JSON.stringify(answer.problems));
  const given = z.fromJSONSchema(schemaOf(calc, 'output') as Parameters<typeof z.fromJSONSchema>[0]);
  expect(given.safeParse(JSON.parse(JSON.stringify(answer.result))).error?.issues ?? []).toEqual([]);
  expect(answer.working.length).toBeGreaterThan(0);
  expect(answer.working.join('\n')).not.toMatch(/NaN|undefined|null|\[object/);
});

test('law: fields a row carries beyond the input, and nulls, change nothing', () => {
  for (const calc of calcs) {
    if (calc.name === 'plane-year') continue;
    const more = { ...(calc.example as object), id: 'row-1', notes: null };
    expect(resultOf(calc.answer(more))).toEqual(resultOf(calc.answer(calc.example)));
  }
});
