import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readWoff } from '../../fonts/readWoff.ts';
import { fonts } from '../../test/fonts.ts';
import { fontNames } from './faces.ts';
import { type Run, runsOf } from './runs.ts';

/** What the font files themselves hold, beside the table that layout goes by. */
const held = new Map(fontNames.map((name) => [name, readWoff(fonts[name]).advances]));

/** Signs that a run sets in a font whose file has no glyph for them. */
function lostIn(runs: readonly Run[]): string[] {
  return runs.flatMap((run) =>
    run.font === 'drawn' ? [] : [...run.text].filter((sign) => !held.get(run.font)?.has(sign.codePointAt(0) as number)),
  );
}

const WORDS = [
  'Ω µ ² ≥ ≤ √ Δ → ✓ ✗ ☐ ± × ÷ − · ° % ‰ ⅝ ½ ₂',
  'ÀÁÂÃÄÅÆÇÈÉÊËÌÍÎÏÐÑÒÓÔÕÖØÙÚÛÜÝÞß àáâãäåæçèéêëìíîïðñòóôõöøùúûüýþÿ',
  'ĄąĆćČčĎďĐđĘęĚěŁłŃńŇňŐőŔŕŘřŚśŠšŤťŮůŰűŹźŻżŽž ĀāĒēĢģĪīĶķĻļŅņŪūĖėĮįŲų ĞğİıŞşȘșȚț ŴŵŶŷ',
  'αβγδεηθλμπρσφωΔΣΦ',
];

test.each(['plain', 'close'] as const)('%s letters the signs of the trade and the letters of Europe', (face) => {
  for (const weight of [400, 700] as const) {
    for (const words of WORDS) {
      const sayable = face === 'close' ? words.replace(/[✓✗☐]/g, '') : words;
      const runs = runsOf(sayable, { face, weight, capMm: 2.5 });
      expect(runs.map(({ text }) => text).join('')).toBe(sayable);
      expect(lostIn(runs), `${face} ${weight}: ${words}`).toEqual([]);
    }
  }
});

test('ticks, crosses and boxes are drawn with a pen', () => {
  const runs = runsOf('✓✗☐', { face: 'plain', weight: 400, capMm: 2.5 });
  expect(runs.every(({ font }) => font === 'drawn')).toBe(true);
});

/** Every sign beyond ASCII in the sources of a room, comments and tests left out. */
function signsSaid(room: string): string[] {
  const root = new URL(`../../../${room}/src/`, import.meta.url);
  const texts = readdirSync(root, { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.ts$/.test(file) && !/\.(test|bench)\./.test(file))
    .map((file) => readFileSync(new URL(file.replaceAll('\\', '/'), root), 'utf8'))
    .map((text) => text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/(^|\s)\/\/.*$/gm, ''));
  return [...new Set(texts.flatMap((text) => text.match(/\P{ASCII}/gu) ?? []))];
}

test.each(['papers', 'plan', 'job'])('every sign that %s says can stand on a page', (room) => {
  const said = signsSaid(room);
  expect(said.length).toBeGreaterThan(10);
  for (const weight of [400, 700] as const) {
    const lost = said.filter((sign) => {
      try {
        return lostIn(runsOf(sign, { face: 'plain', weight, capMm: 2.5 })).length > 0;
      } catch {
        return true; // runsOf refuses a sign no font holds: that is what is looked for
      }
    });
    expect(lost.map((sign) => `${sign} U+${sign.codePointAt(0)?.toString(16)}`)).toEqual([]);
  }
});
