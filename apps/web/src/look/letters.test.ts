import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { signsOf } from '../../test/fonts/signsOf.ts';
import { DRAWN, FACES, SIGNS } from '../specimens/signs.ts';

const HERE = new URL('./', import.meta.url);

interface Face {
  readonly family: string;
  readonly weights: readonly [number, number];
  readonly ranges: readonly (readonly [number, number])[];
  readonly signs: ReadonlySet<number>;
}

/** The faces our styles declare, with what their files hold. */
function facesIn(file: string): Face[] {
  const css = readFileSync(new URL(file, HERE), 'utf8');
  return [...css.matchAll(/@font-face \{([^}]*)\}/g)].map(([, body = '']) => {
    const of = (name: string) => new RegExp(`${name}:\\s*([^;]*);`).exec(body)?.[1]?.trim();
    const [first = '400', last = first] = (of('font-weight') ?? '400').split(' ');
    const url = /url\(([^)]*)\)/.exec(body)?.[1] ?? '';
    const ranges = (of('unicode-range') ?? 'U+0-10FFFF').split(',').map((range) => {
      const [low = '0', high = low] = range.trim().replace('U+', '').split('-');
      return [Number.parseInt(low, 16), Number.parseInt(high, 16)] as const;
    });
    return {
      family: (of('font-family') ?? '').replaceAll('"', ''),
      weights: [Number(first), Number(last)],
      ranges,
      signs: signsOf(readFileSync(new URL(url, HERE))),
    };
  });
}

const faces = [...facesIn('tokens.css'), ...facesIn('letters.css')];

/** True where a browser finds the sign in a file of ours: in its range, and in the file. */
function isLettered(name: string, weight: number, sign: string): boolean {
  const code = sign.codePointAt(0) as number;
  return faces.some(
    ({ family, weights: [first, last], ranges, signs }) =>
      family === `Eaveline ${name}` &&
      weight >= first &&
      weight <= last &&
      ranges.some(([low, high]) => code >= low && code <= high) &&
      signs.has(code),
  );
}

test('the styles declare faces, and their files are read', () => {
  expect(faces.length).toBeGreaterThanOrEqual(12);
  for (const { signs } of faces) expect(signs.size).toBeGreaterThan(50);
  expect(isLettered('Plain', 400, 'A')).toBe(true);
  expect(isLettered('Plain', 400, '漢')).toBe(false);
});

test.each(FACES.flatMap(({ name, weights, groups }) => weights.map((weight) => ({ name, weight, groups }))))(
  '$name $weight letters every sign it is asked for',
  ({ name, weight, groups }) => {
    const wanted = groups.flatMap((group) => [...SIGNS[group as keyof typeof SIGNS]]);
    expect(wanted.filter((sign) => !isLettered(name, weight, sign))).toEqual([]);
  },
);

/** Signs that have nothing to show. */
const SPACES = '\u00a0\u2009\u202f\u200b';

/** Every sign beyond ASCII that stands in what a room says: its sources without comments and tests. */
function signsSaid(room: string): ReadonlyMap<string, string> {
  const said = new Map<string, string>();
  const root = new URL(`../../../../${room}/`, HERE);
  for (const file of readdirSync(root, { recursive: true, encoding: 'utf8' })) {
    if (!/\.tsx?$/.test(file) || /\.(test|bench)\.|specimens\//.test(file)) continue;
    const text = readFileSync(new URL(file.replaceAll('\\', '/'), root), 'utf8')
      .replace(/\/\*[\s\S]*?\*\//g, '')
      .replace(/(^|\s)\/\/.*$/gm, '');
    for (const [sign] of text.matchAll(/\P{ASCII}/gu)) said.set(sign, file);
  }
  return said;
}

test.each(['apps/web/src', 'packages/plan/src', 'packages/job/src'])('every sign that %s says is lettered', (room) => {
  const drawn: readonly string[] = DRAWN;
  const said = [...signsSaid(room)].filter(([sign]) => !SPACES.includes(sign) && !drawn.includes(sign));
  expect(said.length).toBeGreaterThan(10);
  const lost = said.filter(([sign]) => !isLettered('Plain', 400, sign) || !isLettered('Plain', 700, sign));
  expect(lost.map(([sign, file]) => `${sign} in ${file}`)).toEqual([]);
});
