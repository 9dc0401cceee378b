import { readFileSync } from 'node:fs';
import { Refusal } from '@eaveline/physics';
import PDFDocument from 'pdfkit';
import { expect, test } from 'vitest';
import { readWoff } from '../../fonts/readWoff.ts';
import { advanceMm, emMm, fit, fontNames, holds, metrics, runsOf, wrap } from './index.ts';

const bytesOf = (name: string) => readFileSync(new URL(`../../fonts/${name}.woff`, import.meta.url));
const plain = { face: 'plain', weight: 400, capMm: 2.5 } as const;

test('the table of widths agrees with the font files, sign by sign', () => {
  let looked = 0;
  for (const name of fontNames) {
    const { unitsPerEm, capHeight, advances } = readWoff(bytesOf(name));
    expect(emMm(name, 2.5)).toBeCloseTo((2.5 * unitsPerEm) / capHeight, 9);
    for (const [code, advance] of advances) {
      const sign = String.fromCodePoint(code);
      if (!holds(name, sign)) continue;
      looked++;
      expect(advanceMm(name, sign, capHeight / unitsPerEm)).toBeCloseTo(advance / unitsPerEm, 9);
    }
  }
  expect(looked).toBeGreaterThan(2900);
});

test('our reading of the fonts agrees with the reader inside the PDF library', () => {
  // the other reader sets widths in 1/1000 of the em, hence 0.001
  const doc = new PDFDocument({ font: bytesOf('plain-400') as unknown as string });
  const words = 'Trunk A rises 5.32 V; 16 mm² at −5 °C';
  for (const name of ['plain-400', 'plain-700', 'close-500', 'second-700'] as const) {
    doc.font(bytesOf(name)).fontSize(1);
    const features = { kern: false, liga: false } as unknown as PDFKit.Mixins.OpenTypeFeatures[];
    const theirs = doc.widthOfString(words, { features });
    expect(advanceMm(name, words, 1) / emMm(name, 1)).toBeCloseTo(theirs, 3);
  }
});

test('B612 by hand: every figure is 0.65 of the em, capitals 0.75', () => {
  // ten figures at 3 mm: em = 3/0.75 = 4 mm, width 10 · 0.65 · 4 = 26 mm; both parts stated by the design of the face
  expect(metrics.widthMm('0123456789', { ...plain, capMm: 3 })).toBeCloseTo(26, 1);
  expect(emMm('plain-400', 3)).toBeCloseTo(4, 9);
});

test('an ohm comes from the second face, and stands as high as the other capitals', () => {
  const runs = runsOf('0.35 MΩ', plain);
  expect(runs.map((run) => [run.font, run.text])).toEqual([
    ['plain-400', '0.35 '],
    ['second-400', 'MΩ'],
  ]);
  expect(runs[1]?.xMm).toBeCloseTo(runs[0]?.widthMm ?? Number.NaN, 9);
});

test('symbols of quantities stay italic, Greek and Latin', () => {
  const runs = runsOf('ΔU', { face: 'symbol', weight: 400, capMm: 2.5 });
  expect(runs.map((run) => run.font)).toEqual(['symbol-greek-400', 'symbol-400']);
});

test('a word with a letter the face lacks comes whole from the second face', () => {
  expect(runsOf('by Jiří at 3', plain).map((run) => [run.font, run.text])).toEqual([
    ['plain-400', 'by '],
    ['second-400', 'Jiří'],
    ['plain-400', ' at 3'],
  ]);
});

test('a sign that nothing letters is refused by name', () => {
  expect(() => metrics.widthMm('電 5 V', plain)).toThrow(Refusal);
  expect(() => metrics.widthMm('電 5 V', plain)).toThrow('U+96FB');
});

test('only letters that descend reach below the baseline', () => {
  expect(metrics.descentMm('1 864', plain)).toBe(0);
  expect(metrics.descentMm('page', plain)).toBeCloseTo(0.75, 9);
});

test('wrapping keeps every word, fills no line beyond its width and holds thin spaces', () => {
  const words = 'Middle of each unit, from the west end of the rail. Rails run 16\u202f800 past the frames.';
  const lines = wrap(words, 40, plain);
  expect(lines.length).toBeGreaterThan(2);
  expect(lines.join(' ')).toBe(words);
  for (const line of lines) expect(metrics.widthMm(line, plain)).toBeLessThanOrEqual(40);
  expect(lines.some((line) => line.includes('16\u202f800'))).toBe(true);
});

test('a word longer than the line is broken, none of it lost', () => {
  const lines = wrap('AAAAAAAAAAAAAAAAAAAAAAAA', 12, plain);
  expect(lines.length).toBeGreaterThan(2);
  expect(lines.join('')).toBe('AAAAAAAAAAAAAAAAAAAAAAAA');
});

test('a title is lettered as large as its cell allows, then close, then cut with a sign that says so', () => {
  expect(fit('Kestrel Rise', 60, [5, 3.5, 3], { weight: 700 })).toMatchObject({ capMm: 5, face: 'plain' });
  expect(fit('Kestrel Rise', 32, [5, 3.5, 3], { weight: 700 }).capMm).toBeLessThan(5);
  expect(fit('Kestrel Rise', 20, [3.5, 3], { weight: 700 })).toMatchObject({ capMm: 3, face: 'close' });
  expect(fit('Kestrel Rise on the long hill', 20, [3], { weight: 700 }).lines[0]).toMatch(/…$/);
});
