import type { KitLine, RailCut } from '@eaveline/plan';
import { box, corners, group, hatched, type Item, type Scale, scaleFor, text } from '../drawing/index.ts';
import { gap, headline, type Part, paragraph, type Sheet, table, whole } from '../page/index.ts';
import { metrics } from '../type/index.ts';
import { capital, counted, figure, perCent, withUnit } from './figures.ts';
import type { Pack } from './packContext.ts';
import { headed, pagesOf } from './pagesOf.ts';

const CLOSE = { capMm: 2.5, weight: 400, face: 'close' } as const;
const GROUPS: readonly KitLine['group'][] = [
  'array',
  'mounting',
  'trunks',
  'cables',
  'board',
  'battery',
  'labels',
  'tools and tests',
];

/** What goes into the van, and how the rails are cut. */
export function kitPages(pack: Pack): Sheet[] {
  return [...kitList(pack), ...cutList(pack)];
}

function kitList(pack: Pack): Sheet[] {
  const { lines, labels } = pack.plan.kit;
  if (lines.length === 0) return [];
  const groups = GROUPS.flatMap((name) => {
    // labels have a table of their own, with their words and where they go
    const own = lines.filter((line) => line.group === name && !(name === 'labels' && labels.length > 0));
    return own.length === 0 ? [] : [gap(3), headed(capital(name), kitTable(own))];
  });
  return pagesOf(pack, { no: '09', title: 'Kit' }, [
    headline(
      `${counted(lines.length, 'line')} of kit.`,
      'Each count with what it was counted from. Tick it out of the store and into the van.',
    ),
    ...groups,
    ...(labels.length === 0 ? [] : [gap(3), headed('Words of the labels', labelTable(pack))]),
  ]);
}

function kitTable(lines: readonly KitLine[]): Part {
  return table({
    label: 'kit',
    columns: [
      { head: 'what', share: 4, weight: 700 },
      { head: 'count', share: 1.2, align: 'end' },
      { head: 'unit', share: 1, face: 'close' },
      { head: 'counted from', share: 4.6 },
      { head: 'store, van', share: 1.5 },
    ],
    rows: lines.map((line) => ({
      of: line.id,
      cells: [
        line.name,
        figure(line.count),
        line.count === 1 ? line.unit.replace(/s$/, '') : line.unit,
        { words: line.working.formula ?? line.working.source, ink: 'quiet' },
        { boxes: 2 },
      ],
    })),
  });
}

function labelTable({ plan }: Pack): Part {
  return table({
    label: 'labels',
    columns: [
      { head: 'text', share: 5, weight: 700 },
      { head: 'where', share: 3 },
      { head: 'how many', share: 1, align: 'end' },
      { head: 'clause, how known', share: 3 },
      { head: 'on', share: 0.7 },
    ],
    rows: plan.kit.labels.map((label) => ({
      of: label.id,
      cells: [
        label.text,
        label.where,
        figure(label.count, 0),
        { words: `${label.clause}, ${label.seen}`, ink: 'quiet' },
        { boxes: 1 },
      ],
    })),
  });
}

function cutList(pack: Pack): Sheet[] {
  const { cuts, cutting, splices } = pack.plan.kit;
  if (cuts.length === 0) return [];
  const longest = Math.max(...cuts.map((cut) => cut.stockMm));
  const scale = scaleFor({ widthMm: longest, heightMm: 0 }, { widthMm: 150, heightMm: 1 }) ?? 200;
  const bound = cutting.proven
    ? 'No cutting plan takes fewer.'
    : `No plan takes fewer than ${figure(cutting.lowerBound, 0)}; this one is not proven least.`;
  const waste = `${perCent(cutting.wasteShare)} is left over. Saw cut ${withUnit(cutting.kerfMm, 'mm', 1)}. ${capital(cutting.method)}.`;
  const joints = splices.map((splice) => `${railName(pack, splice.railId)} at ${figure(Math.round(splice.atMm), 0)}`);
  return pagesOf(pack, { no: '09.C', title: 'Cutting the rails', scale: `1:${scale}` }, [
    headline(`${counted(cutting.bars, 'bar')} of ${withUnit(longest, 'mm', 0)}. ${bound}`, waste),
    gap(4),
    ...cuts.map((cut) => barPart(cut, scale)),
    gap(3),
    ...(joints.length === 0
      ? []
      : [headed('Splices, from the left end of the rail, mm', paragraph(`${joints.join('.  ')}.`)), gap(3)]),
    headed('Pieces', pieceTable(cuts)),
  ]);
}

function railName(pack: Pack, railId: string): string {
  return pack.plan.array.rails.find((rail) => rail.id === railId)?.name ?? railId;
}

/** One bar of stock: its pieces in the order they are cut, what is left hatched. */
function barPart(cut: RailCut, scale: Scale): Part {
  return whole(8.5, ([x, top]): Item[] => {
    const left = x + 12;
    const y = top - 6;
    let at = 0;
    const pieces = cut.pieces.flatMap((piece) => {
      const from = left + at / scale;
      const wide = piece.lengthMm / scale;
      at += piece.lengthMm + (cut.stockMm - cut.offcutMm - sumOf(cut)) / Math.max(1, cut.pieces.length);
      return [
        box([from, y], wide, 5, {
          layer: 'ROOF-IN',
          of: piece.railId,
          label: `${piece.railName}, ${piece.lengthMm} mm`,
        }),
        ...pieceWords(piece, from, wide, y),
      ];
    });
    const offcut = cut.offcutMm / scale;
    const from = left + cut.stockMm / scale - offcut;
    const offcutItems =
      cut.offcutMm >= 1
        ? [hatched(corners([from, y], offcut, 5), { gapMm: 1.5 }), box([from, y], offcut, 5, { pen: 0.25 })]
        : [];
    const words = `${figure(Math.round(cut.offcutMm), 0)} left`;
    const beside = left + cut.stockMm / scale + 2;
    return [
      group(`bar ${cut.bar}`, [
        text(`bar ${cut.bar}`, [x, y + 1.3], CLOSE),
        ...pieces,
        ...offcutItems,
        text(words, [beside, y + 1.3], { ...CLOSE, ink: 'quiet' }),
      ]),
    ];
  });
}

function sumOf(cut: RailCut): number {
  return cut.pieces.reduce((sum, piece) => sum + piece.lengthMm, 0);
}

function pieceWords(piece: RailCut['pieces'][number], from: number, wide: number, y: number): Item[] {
  const long = `${piece.railName}  ${figure(Math.round(piece.lengthMm), 0)}`;
  const words = [long, figure(Math.round(piece.lengthMm), 0)].find((one) => metrics.widthMm(one, CLOSE) <= wide - 1);
  return words === undefined ? [] : [text(words, [from + wide / 2, y + 1.3], { ...CLOSE, anchor: 'middle' })];
}

function pieceTable(cuts: readonly RailCut[]): Part {
  const pieces = cuts.flatMap((cut) => cut.pieces.map((piece) => ({ cut, piece })));
  return table({
    label: 'pieces of rail',
    columns: [
      { head: 'rail', share: 2, weight: 700 },
      { head: 'length, mm', share: 1.6, align: 'end' },
      { head: 'from bar', share: 1.2, align: 'end' },
      { head: '', share: 0.4 },
      { head: 'cut, marked', share: 2 },
    ],
    rows: pieces.map(({ cut, piece }) => ({
      of: piece.railId,
      cells: [piece.railName, figure(Math.round(piece.lengthMm), 0), figure(cut.bar, 0), '', { boxes: 2 }],
    })),
  });
}
