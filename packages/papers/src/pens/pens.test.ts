import { Refusal } from '@eaveline/physics';
import { expect, test } from 'vitest';
import { fonts } from '../../test/fonts.ts';
import { pdfContents, pdfCurvePoints, pdfGlyphs, pdfStretches, svgStretches } from '../../test/readBack.ts';
import {
  box,
  circle,
  type Drawing,
  dimension,
  group,
  hatched,
  type Item,
  line,
  polyline,
  running,
  segmentsOf,
  text,
  tube,
} from '../drawing/index.ts';
import { drawnSigns, runsOf } from '../type/index.ts';
import { pdfOf, svgOf } from './index.ts';

const createdAt = new Date('2026-05-15T06:10:00Z');
const options = { fonts, createdAt, title: 'Crew pack' };
const sheet = (...items: Item[]): Drawing => ({ title: 'North plane', widthMm: 210, heightMm: 297, items });

/** Every sign the papers use: units, marks, arithmetic, and the letters of Europe. */
const SIGNS = [
  'Ω µ μ ² ³ ≥ ≤ √ Δ η φ ρ θ Σ → ← ↑ ↓ ✓ ✗ ☐ ☑ ☒ ° − – — · × ÷ ± ≈ ≠ ∞ ‰ % § № … ’ ‘ “ ” „ « » € £ $ ½ ¼ ¾ ¹',
  'ÀÁÂÃÄÅÆÇÈÉÊËÌÍÎÏÐÑÒÓÔÕÖØÙÚÛÜÝÞßàáâãäåæçèéêëìíîïðñòóôõöøùúûüýþÿ',
  'ĀāĂăĄąĆćČčĎďĐđĒēĖėĘęĚěĞğĢģĪīĮįİıĶķĹĺĻļĽľŁłŃńŅņŇňŐőŒœŔŕŘřŚśŞşŠšȘșŢţȚțŤťŪūŮůŰűŲųŴŵŶŷŸŹźŻżŽž',
  'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789 !"#&\'()*+,-./:;<=>?@[]_{|}~\u00a0\u2009\u202f',
];

test('every sign we use is lettered in both faces and weights, in both pens, none missing', async () => {
  const looks = (['plain', 'close'] as const).flatMap((face) =>
    ([400, 700] as const).map((weight) => ({ face, weight })),
  );
  const texts = looks.flatMap((look) => SIGNS.map((signs) => ({ ...look, signs })));
  const drawing = sheet(...texts.map(({ signs, ...look }, k) => text(signs, [10, 280 - 6 * k], look)));

  const svg = svgOf(drawing);
  const [content] = pdfContents(await pdfOf([drawing], options));
  let lettered = 0;
  for (const { signs, ...look } of texts) {
    const runs = runsOf(signs, { ...look, capMm: 2.5 });
    expect(runs.map((run) => run.text).join('')).toBe(signs);
    for (const run of runs) if (run.font !== 'drawn') lettered += [...run.text].length;
  }
  const words = [...svg.matchAll(/<text [^>]*>([^<]*)<\/text>/g)].map(([, inner]) => unescaped(inner ?? ''));
  expect([...words.join('')].length).toBe(lettered);

  const glyphs = pdfGlyphs(content ?? '');
  expect(glyphs.length).toBe(lettered);
  expect(glyphs.filter((code) => code === 0)).toEqual([]);

  for (const sign of ['✓', '✗', '☐', '☑', '☒']) {
    expect(svg).toContain(`aria-label="${drawnSigns[sign]?.name}"`);
  }
  // five drawn signs in four looks, each with its sign as the text behind it
  expect(content?.match(/\/ActualText/g)?.length).toBe(20);
});

test('planted: a sign no face holds comes out as code 0, so the test above would see it', async () => {
  const PDFDocument = (await import('pdfkit')).default;
  const doc = new PDFDocument({ font: fonts['plain-400'] as unknown as string });
  const parts: Uint8Array[] = [];
  doc.on('data', (part: Uint8Array) => parts.push(part));
  doc.text('5 Ω', 10, 10, { lineBreak: false });
  doc.end();
  await new Promise((done) => doc.on('end', done));
  expect(pdfGlyphs(pdfContents(Buffer.concat(parts))[0] ?? '')).toContain(0);
});

function unescaped(words: string): string {
  return words.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&quot;', '"').replaceAll('&amp;', '&');
}

test('both pens tell the same geometry as the model, to a hundredth of a millimetre', async () => {
  const drawing = sheet(
    box([20, 20], 40.333, 30),
    polyline(
      [
        [20, 80],
        [40, 95.5],
        [60, 80],
      ],
      { layer: 'CENTRE' },
    ),
    hatched([
      [70, 20],
      [100, 20],
      [100, 50],
    ]),
    dimension([20, 20], [20, 50], 6, '30'),
    running([20, 120], 'right', -8, [{ atMm: 30, text: '30' }]),
    group('turned', [line([0, 0], [10, 3]), box([0, 0], 5, 2)], { at: [150, 200], quarterTurns: 3, scale: 1.5 }),
    group('inner', [group('sign', [line([0, 0], [7, 0])], { at: [3, 3], quarterTurns: 1 })], { at: [100, 100] }),
  );
  const arcs = 180; // chords of the ring at the end of the running sizes, which both pens draw round
  const model = segmentsOf(drawing, { hatching: true }).map((s) => [...s.from, ...s.to]);
  const svg = svgStretches(svgOf(drawing));
  const pdf = pdfStretches(pdfContents(await pdfOf([drawing], options))[0] ?? '');
  expect(svg.length).toBe(model.length - arcs);
  expect(pdf.length).toBe(svg.length);
  svg.forEach((s, k) => {
    const t = pdf[k] as number[];
    // a PDF keeps points to 1/1000: 0.0004 mm
    for (const [n, value] of s.entries()) expect(Math.abs(value - (t[n] as number))).toBeLessThan(0.001);
    expect(model.some((m) => m.every((value, n) => Math.abs(value - (s[n] as number)) < 1e-6))).toBe(true);
  });
});

test('letters are never turned over, and dashed lines keep their dashes', () => {
  const svg = svgOf(sheet(text('N1·7', [20, 20]), line([10, 10], [20, 10], { layer: 'UNDER' })));
  expect(svg).not.toMatch(/scale\(|matrix\(/);
  expect(svg).toContain('y="277"'); // 297 − 20
  expect(svg).toMatch(/class="ev-s ev-p025 ev-ink ev-hidden"/);
});

test('turned lettering runs counter-clockwise in both pens, about its own point', async () => {
  const upright = { ...sheet(text('1 722', [50, 40], { rotateDeg: 90 })), widthMm: 100, heightMm: 100 };
  expect(svgOf(upright)).toContain('transform="rotate(-90 50 60)"'); // a positive turn is clockwise where y runs down
  const [content] = pdfContents(await pdfOf([upright], options));
  // (cos, sin, −sin, cos) of −90°, inside the library's own mirrored page
  expect(content).toMatch(/^0 -1 1 0 [\d.-]+ [\d.-]+ cm$/m);
  expect(content).not.toMatch(/^0 1 -1 0 /m);
});

test('letters stand by their advance widths alone: no kerning moves them off what was measured', async () => {
  const [content] = pdfContents(await pdfOf([sheet(text('AVATAR To Ty fi', [20, 20]))], options));
  const shown = content?.match(/\[.*\] TJ/g) ?? [];
  expect(shown.length).toBe(1);
  expect(shown[0]).toMatch(/^\[<[0-9a-f]+> 0\] TJ$/);
});

test('an SVG arc bulges to the side the model says', () => {
  // upper half of a circle: from east over north to west; on the page north is a smaller y
  const svg = svgOf({ ...sheet({ ...circle([50, 50], 10), endDeg: 180 }), heightMm: 100 });
  expect(svg).toContain('M60 50A10 10 0 0 0 40 50');
});

test('an arc in the PDF keeps its radius to 3 in 10 000, and its own side', async () => {
  const half = { ...sheet({ ...circle([50, 50], 40), endDeg: 180 }), widthMm: 100, heightMm: 100 };
  const [content] = pdfContents(await pdfOf([half], options));
  const points = pdfCurvePoints(content ?? '');
  expect(points.length).toBe(18); // two quarter turns
  for (const [x, y] of points) {
    expect(Math.abs(Math.hypot(x - 50, y - 50) - 40)).toBeLessThan(40 * 3e-4);
    expect(y).toBeGreaterThan(49.99);
  }
});

test('a drawing can be themed: every colour is a custom property with the ink of print behind it', () => {
  const svg = svgOf(
    sheet(
      line([0, 0], [1, 1], { ink: 'fails' }),
      ...tube(
        [
          [0, 0],
          [9, 0],
        ],
        'L1',
        'brown',
      ),
    ),
  );
  expect(svg).toContain('.ev-s.ev-fails,');
  expect(svg).toContain('var(--ink-fails,#9c0d12)');
  expect(svg).toContain('var(--casing,#000000)');
  expect(svg).toContain('var(--wire-brown,#7c4a28)');
  expect(svg.replace(/<style>[\s\S]*<\/style>/, '')).not.toMatch(/#[0-9a-f]{3}/);
});

test('what a drawing shows can be reached as a button with a name, place and state', () => {
  const module = box([10, 10], 20, 30, { of: 'N1·7', label: 'N1·7, north plane row 1, 643 kWh, meets' });
  const on = svgOf(sheet(module), { focusable: true });
  expect(on).toContain(
    '<g data-of="N1·7" class="ev-of" role="button" tabindex="0" aria-label="N1·7, north plane row 1, 643 kWh, meets">',
  );
  const off = svgOf(sheet(module));
  expect(off).toContain('data-of="N1·7"');
  expect(off).not.toContain('tabindex');
});

test('words that would be markup stay words', () => {
  const svg = svgOf(
    { ...sheet(text('<b> & "c"', [10, 10], { of: 'x"y', label: '<i>' })), title: 'A & B' },
    { focusable: true },
  );
  expect(svg).toContain('&lt;b&gt; &amp; &quot;c&quot;');
  expect(svg).toContain('data-of="x&quot;y"');
  expect(svg).toContain('<title>A &amp; B</title>');
  expect(svg).not.toContain('<b>');
});

test('a file that stands alone carries its faces', () => {
  const svg = svgOf(sheet(text('A', [1, 1])), { fonts });
  const [, carried] = /font-family:"Eaveline Plain";font-weight:400;[^}]*base64,([A-Za-z0-9+/=]+)\)/.exec(svg) ?? [];
  expect(Buffer.from(carried ?? '', 'base64').equals(Buffer.from(fonts['plain-400']))).toBe(true);
});

test('the same drawings and hour give the same bytes; another hour gives others', async () => {
  const drawing = sheet(text('Trunk A rises 5.32 V.', [20, 20]), box([10, 10], 20, 30));
  const [first, again] = [await pdfOf([drawing], options), await pdfOf([drawing], options)];
  const later = await pdfOf([drawing], { ...options, createdAt: new Date('2026-05-15T06:11:00Z') });
  expect(Buffer.from(first).equals(Buffer.from(again))).toBe(true);
  expect(Buffer.from(first).equals(Buffer.from(later))).toBe(false);
});

test('a PDF has true size, an outline, tags for headings, tables and figures, and fonts as subsets', async () => {
  const cell = group('cell', [text('A5', [20, 50])], { role: 'cell' });
  const row = group('row', [cell], { role: 'row' });
  const drawing = sheet(
    text('North plane', [20, 270], { capMm: 5, heading: true }),
    group('table', [row], { role: 'table' }),
    group('plan', [box([20, 100], 30, 30), text('1·1', [25, 110])], { role: 'figure', label: 'Row 1 from above' }),
  );
  const pdf = await pdfOf([drawing, { ...drawing, title: 'South plane', widthMm: 297, heightMm: 210 }], options);
  const file = Buffer.from(pdf).toString('latin1');
  expect(file).toContain('/MediaBox [0 0 595.275591 841.889764]');
  expect(file).toContain('/MediaBox [0 0 841.889764 595.275591]');
  for (const tag of [
    '/S /H1',
    '/S /Table',
    '/S /TR',
    '/S /TD',
    '/S /Figure',
    '/Alt (Row 1 from above)',
    '/Marked true',
  ]) {
    expect(file).toContain(tag);
  }
  expect(file.match(/\/Title \((North|South) plane\)/g)?.length).toBe(2);
  // three letters and figures of B612, 32 kB as files: what is embedded is much less
  expect(pdf.length).toBeLessThan(20_000);
  expect(file.match(/\/Type \/Page\b/g)?.length).toBe(2);
});

test('everything marked is closed again, on every page', async () => {
  const drawing = sheet(
    text('a ✓ b', [20, 20], { halo: true }),
    box([1, 1], 5, 5),
    group('f', [box([1, 1], 3, 3)], { role: 'figure', label: 'f' }),
  );
  for (const content of pdfContents(await pdfOf([drawing, drawing], options))) {
    const opened = content.match(/ (BDC|BMC)$/gm)?.length ?? 0;
    expect(opened).toBeGreaterThan(3);
    expect(content.match(/^EMC$/gm)?.length).toBe(opened);
    expect(content.match(/^q$/gm)?.length).toBe(content.match(/^Q$/gm)?.length);
  }
});

test('a document without a page is refused, and so is an hour that is none', async () => {
  await expect(pdfOf([], options)).rejects.toThrow(Refusal);
  await expect(pdfOf([sheet()], { ...options, createdAt: new Date('no hour') })).rejects.toThrow('createdAt');
});
