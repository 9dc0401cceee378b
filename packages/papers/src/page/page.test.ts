import { Refusal } from '@eaveline/physics';
import { expect, test } from 'vitest';
import { fonts } from '../../test/fonts.ts';
import { type Drawing, flawsOf, type Item, leavesOf, mark, ruleGauge, settle, textBoxesOf } from '../drawing/index.ts';
import { metrics } from '../type/index.ts';
import {
  bodyOf,
  caution,
  drawingsOf,
  flow,
  frameOf,
  gap,
  headline,
  layOut,
  ledger,
  makeDocument,
  type Part,
  paragraph,
  picture,
  type Row,
  type Sheet,
  type SheetSize,
  sheetSizes,
  stacked,
  subhead,
  table,
  together,
  zoneOf,
} from './index.ts';

const block = {
  firm: 'Lantern & Ridge Electrical',
  firmLine: 'licence 00-000',
  job: 'Kestrel Rise',
  jobLine: '26 modules, three trunks',
  sheet: '04.N',
  drawnFrom: '88 facts',
  drawnAt: '15 May, 06:10',
  rules: 'AU/NZ',
  edition: '2024 editions',
  scale: '1:50',
  signed: 'checked and signed',
  pack: 'crew pack',
  issue: 'B',
};
const banners = [
  { kind: 'invented', words: 'Invented job. Not for construction.' },
  { kind: 'fails', words: '2 figures fail and 3 wait for an answer: sheet 08.' },
] as const;
const sheetOf = (size: SheetSize, body: readonly Item[]): Sheet => ({
  size,
  title: 'North plane',
  banners,
  block,
  notice: 'Confirm against the current edition. The licensed person decides.',
  body,
});
const wordsOf = (drawing: Drawing) => textBoxesOf(drawing).map((box) => box.text);
const loose = (items: readonly Item[]): Drawing => ({ title: 'loose', widthMm: 210, heightMm: 297, items });
const alone = (part: Part, widthMm = 170, roomMm = 200) => part([25, 280], widthMm, roomMm);

const columns = [
  { head: 'place', share: 1, weight: 700 },
  { head: 'from end', share: 1.6, align: 'end' },
  { head: 'rise, V', share: 1.4, align: 'point' },
  { head: 'phase', share: 2 },
  { head: 'serial, last eight', share: 4 },
  { head: 'clicked, tugged', share: 2.4 },
] as const;
const unit = (k: number): Row => ({
  cells: [
    `1·${k}`,
    `${k}\u202f018`,
    k % 2 ? '1.3' : '12.25',
    { wire: 'brown', conductor: 'L1' },
    { write: [4, 4] },
    { boxes: 2 },
  ],
});

const fullPage: Part[] = [
  headline('Trunk A rises 5.32 V. The limit is 4.60 V.', 'Fed at its fifth drop it rises 4.25 V.'),
  gap(4),
  caution(
    'Lock breaker A before you touch a drop. Prove the trunk dead at the roof box.',
    'Never open a d.c. plug under load.',
  ),
  gap(4),
  table({ columns, rows: Array.from({ length: 60 }, (_, k) => unit(k + 1)) }),
  gap(6),
  together(
    subhead('Far unit above the street'),
    ledger({
      lines: [
        { what: 'Trunk, 2.5 mm² at 75 °C', factor: '46.6 m', value: '1.461 V' },
        { what: 'Home run, 6 mm² at 60 °C', factor: '31.0 m', value: '3.459 V' },
      ],
      total: { what: 'Far unit above the street', value: '4.92 V' },
    }),
  ),
  picture(24, ([x, y], widthMm) => [
    ruleGauge({
      at: [x + 5, y + 12],
      widthMm: widthMm - 17,
      from: 0,
      to: 6,
      unit: 'V',
      limit: { value: 4.6, forbidden: 'above', text: 'limit 4.60' },
      predicted: { low: 3.9, middle: 4.1, high: 4.4 },
      reading: { value: 4.92, text: '4.92' },
      offered: { value: 4.85, text: '4.85' },
      label: '4.92 V against a limit of 4.60 V',
    }),
  ]),
  table({
    columns: [
      { head: 'check', share: 4 },
      { head: 'value', share: 1.5, align: 'point' },
      { head: 'stands', share: 1.5 },
      { head: 'read', share: 2 },
    ],
    rows: [
      {
        cells: [
          'Voltage rise to the last unit of trunk A, all units at their rated export',
          '5.32 V',
          { state: 'fails', words: 'Fails' },
          { stroke: true, unit: 'V' },
        ],
        marked: true,
      },
      { cells: ['Insulation of the trunk', '512 MΩ', { state: 'meets', words: 'Meets' }, ''] },
      { cells: ['Is the backing asbestos?', '', { state: 'ask', words: 'Ask' }, { words: 'not yet', ink: 'quiet' }] },
    ],
  }),
  paragraph('Middle of each unit, from the west end of the rail. Rails run 50 past the frames; eaves 350 below them.', {
    ink: 'quiet',
  }),
];

test('the frame leaves 20 mm at the binding edge and 10 mm elsewhere; zones are near 50 mm and even', () => {
  expect(frameOf('A4-portrait')).toEqual({ leftMm: 20, bottomMm: 10, rightMm: 200, topMm: 287, columns: 4, rows: 6 });
  expect(frameOf('A3-landscape')).toEqual({ leftMm: 20, bottomMm: 10, rightMm: 410, topMm: 287, columns: 8, rows: 6 });
  expect(frameOf('A4-landscape')).toMatchObject({ columns: 6, rows: 4 });
});

test('a place is named by its zone: rows lettered from the top, columns numbered from the left', () => {
  // A4 upright: zones of 45 by 46.17 mm; (150, 160) lies in column (150−20)/45 = 2.9, row (287−160)/46.17 = 2.75
  expect(zoneOf('A4-portrait', [150, 160])).toBe('C3');
  expect(zoneOf('A4-portrait', [20, 287])).toBe('A1');
  expect(zoneOf('A4-portrait', [200, 10])).toBe('F4');
});

for (const size of ['A4-portrait', 'A4-landscape', 'A3-landscape'] as const) {
  test(`${size}: pages full of everything have no flaw, and the body keeps to its place`, () => {
    const column = bodyOf(size, banners.length, true);
    const bodies = flow(fullPage, column);
    expect(bodies.length).toBeGreaterThan(1);
    const { widthMm, heightMm } = sheetSizes[size];
    for (const drawing of drawingsOf(bodies.map((body) => sheetOf(size, body)))) {
      const flaws = flawsOf(drawing, { leftMm: 4, bottomMm: 4, rightMm: widthMm - 4, topMm: heightMm - 4 });
      expect(flaws.texts).toBeGreaterThan(60);
      expect(flaws.segments).toBeGreaterThan(100);
      expect({ ...flaws, texts: 0, segments: 0 }).toEqual({
        texts: 0,
        segments: 0,
        textOnText: [],
        lineThroughText: [],
        outside: [],
      });
    }
    const [left, top] = column.topLeft;
    const area = { leftMm: left, rightMm: left + column.widthMm, topMm: top, bottomMm: top - column.heightMm };
    for (const body of bodies) expect(flawsOf({ ...loose(body), widthMm, heightMm }, area).outside).toEqual([]);
  });
}

test('planted: a body that runs into the title block is found', () => {
  const astray = paragraph('This line lies on the job.')([82, 40], 60, 20).items;
  const flaws = flawsOf(layOut(sheetOf('A4-portrait', astray), '1 of 1'), {
    leftMm: 0,
    bottomMm: 0,
    rightMm: 210,
    topMm: 297,
  });
  expect(flaws.textOnText.length + flaws.lineThroughText.length).toBeGreaterThan(0);
});

test('banners, page numbers, issue and the line to sign stand on every page', () => {
  const pages = drawingsOf([[], [], []].map((body) => sheetOf('A4-portrait', body)));
  pages.forEach((page, k) => {
    const words = wordsOf(page);
    for (const said of [
      ...banners.map((b) => b.words),
      `${k + 1} of 3`,
      'B',
      'checked and signed',
      'measure nothing off',
      '04.N',
    ]) {
      expect(words).toContain(said);
    }
  });
});

test('a signature on record stands on its line; where nobody signed the line is free and says so', () => {
  const said = (signedBy?: { who: string; when: string }) =>
    wordsOf(
      layOut(
        { ...sheetOf('A4-portrait', []), block: { ...block, ...(signedBy === undefined ? {} : { signedBy }) } },
        '1',
      ),
    );
  expect(said({ who: 'Nia Rees', when: '12 May 2026' })).toEqual(expect.arrayContaining(['Nia Rees', '12 May 2026']));
  expect(said({ who: 'not signed', when: '' })).toContain('not signed');
  expect(said()).not.toContain('not signed');
  // lettering of the cell keeps off its line: caps of 3 mm at 10.2 mm down, line at 11.6, caps of 2.5 from 13.1 to 15.6
  for (const signedBy of [
    { who: 'Nia Rees', when: '12 May 2026' },
    { who: 'not signed', when: '' },
  ]) {
    const flaws = flawsOf(layOut({ ...sheetOf('A4-portrait', []), block: { ...block, signedBy } }, '1 of 1'), {
      leftMm: 0,
      bottomMm: 0,
      rightMm: 210,
      topMm: 297,
    });
    expect(flaws.lineThroughText).toEqual([]);
  }
});

test('the title block is 36 mm high over the full width, the sheet number in 5 mm letters', () => {
  const leaves = leavesOf(settle(layOut(sheetOf('A4-portrait', []), '1 of 1')).items);
  expect(
    leaves.some((l) => l.kind === 'line' && l.from[1] === 46 && l.from[0] === 20 && l.to[0] === 200 && l.pen === 0.7),
  ).toBe(true);
  expect(leaves.find((l) => l.kind === 'text' && l.text === '04.N')).toMatchObject({ capMm: 5, weight: 700 });
});

test('a sheet with a scale carries a bar of 100 mm; one without says there is none', () => {
  const bar = (drawing: Drawing) =>
    leavesOf(settle(drawing).items).filter(
      (l) => l.kind === 'line' && l.layer === 'SIZE' && l.to[0] - l.from[0] === 100,
    );
  expect(bar(layOut(sheetOf('A4-portrait', []), '1 of 1')).length).toBe(1);
  const { scale, ...rest } = block;
  const flat = layOut({ ...sheetOf('A4-portrait', []), block: rest }, '1 of 1');
  expect(scale).toBe('1:50');
  expect(bar(flat).length).toBe(0);
  expect(wordsOf(flat)).toContain('none');
});

test('a long table loses no row, doubles none and repeats its heads, wherever the column ends', () => {
  const rows = Array.from({ length: 23 }, (_, k) => unit(k + 1));
  for (let heightMm = 20; heightMm <= 180; heightMm += 3.5) {
    const bodies = flow([table({ columns, rows })], { topLeft: [25, 280], widthMm: 170, heightMm });
    const places = bodies.flatMap((body) => wordsOf(loose(body)).filter((words) => words.startsWith('1·')));
    expect(places).toEqual(rows.map((row) => row.cells[0]));
    for (const body of bodies) expect(wordsOf(loose(body))).toContain('serial, last eight');
  }
});

test('figures stand under each other by their point, units after them', () => {
  const rows = ['1.3', '12.25', '512 MΩ', '−4'].map((value) => ({ cells: [value] }));
  const boxes = textBoxesOf(loose(alone(table({ columns: [{ head: '', share: 1, align: 'point' }], rows }), 40).items));
  const ends = boxes.map((box) => {
    const whole = /^\D*\d+/.exec(box.text)?.[0] ?? '';
    return box.corners[0][0] + metrics.widthMm(whole, { capMm: 2.5, weight: 400, face: 'plain' });
  });
  expect(ends.length).toBe(4);
  for (const end of ends) expect(Math.abs(end - (ends[0] as number))).toBeLessThan(0.02);
});

test('a row with a cell too few is refused by its number', () => {
  expect(() => table({ columns, rows: [unit(1), { cells: ['1·2'] }] })).toThrow('rows[1].cells.length is 1');
});

test('boxes to tick are 3.2 mm', () => {
  const items = alone(table({ columns: [{ head: 'done', share: 1 }], rows: [{ cells: [{ boxes: 3 }] }] })).items;
  const boxes = leavesOf(settle(loose(items)).items).filter((l) => l.kind === 'polyline');
  expect(boxes.length).toBe(3);
  for (const drawn of boxes) {
    const [a, , c] = drawn.points as [[number, number], unknown, [number, number]];
    expect([c[0] - a[0], c[1] - a[1]].map((side) => Math.round(side * 100) / 100)).toEqual([3.2, 3.2]);
  }
});

test('a sum has one rule above its total and two below', () => {
  const { items } = alone(ledger({ lines: [{ what: 'one', value: '1' }], total: { what: 'all', value: '1' } }));
  const drawing = loose(items);
  const total = textBoxesOf(drawing).find((box) => box.text === 'all')?.corners[0][1] ?? 0;
  const rules = leavesOf(settle(drawing).items).flatMap((l) => (l.kind === 'line' ? [l.from[1]] : []));
  expect(rules.filter((y) => y > total).length).toBe(1);
  expect(rules.filter((y) => y < total).length).toBe(2);
});

test('a paragraph goes on where the column ends, word for word', () => {
  const words = 'Lock breaker A before you touch a drop. Prove the trunk dead at the roof box. '.repeat(8).trim();
  const bodies = flow([paragraph(words)], { topLeft: [25, 280], widthMm: 60, heightMm: 30 });
  expect(bodies.length).toBeGreaterThan(2);
  expect(bodies.flatMap((body) => wordsOf(loose(body))).join(' ')).toBe(words);
});

test('what belongs together moves together', () => {
  const pair = together(subhead('Heading'), paragraph('Its one line.'));
  const short = stacked([pair], [25, 280], 100, 8);
  expect(short.items).toEqual([]);
  expect(alone(short.rest as Part).items.length).toBe(2);
});

test('a picture higher than an empty page is refused, not drawn over the edge', () => {
  const tall = picture(300, ([x, y]) => [mark('meets', [x, y])]);
  expect(() => flow([tall], { topLeft: [25, 280], widthMm: 170, heightMm: 200 })).toThrow(Refusal);
});

test('a document has as many pages in either pen', async () => {
  const bodies = flow(fullPage, bodyOf('A4-portrait', banners.length, true));
  const sheets = bodies.map((body) => sheetOf('A4-portrait', body));
  const { svg, pdf } = await makeDocument(sheets, {
    title: 'Crew pack',
    fonts,
    createdAt: new Date('2026-05-15T06:10:00Z'),
  });
  expect(svg.length).toBe(sheets.length);
  expect(
    Buffer.from(pdf)
      .toString('latin1')
      .match(/\/Type \/Page\b/g)?.length,
  ).toBe(sheets.length);
  for (const file of svg) expect(file).toContain('Invented job. Not for construction.');
});
