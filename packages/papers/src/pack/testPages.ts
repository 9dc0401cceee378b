import type { TestRow } from '@eaveline/plan';
import { caution, gap, headline, type Part, type Sheet, table } from '../page/index.ts';
import { figure, rangeOf, withUnit } from './figures.ts';
import type { Pack } from './packContext.ts';
import { headed, pagesOf } from './pagesOf.ts';

const GROUPS = [
  { group: 'dead', head: 'Dead: every source locked, proved dead' },
  { group: 'live', head: 'Live, solar off' },
  { group: 'generating', head: 'Generating' },
  { group: 'backup', head: 'Battery and backup' },
] as const;

/** One sheet of tests for each condition of the house: what to read, what the design predicts, what the law allows. */
export function testPages(pack: Pack): Sheet[] {
  return GROUPS.flatMap(({ group, head }) => {
    const rows = pack.plan.tests.rows.filter((row) => row.group === group);
    if (rows.length === 0) return [];
    const kind = { no: `11.${group.charAt(0).toUpperCase()}`, title: `Tests: ${group}`, size: 'A4-landscape' } as const;
    return pagesOf(pack, kind, [
      headline(
        `${head}.`,
        'Two questions: inside the limit, and near the prediction. What is lawful but far from its prediction finds the fault.',
      ),
      ...cautionsOf(rows).flatMap((words) => [gap(2), caution(words, 'The licensed person decides.')]),
      gap(2),
      instruments(rows),
      gap(2),
      testTable(rows),
      gap(3),
      headed('Outside the band: look here first', suspectTable(rows)),
    ]);
  });
}

function cautionsOf(rows: readonly TestRow[]): string[] {
  return [...new Set(rows.flatMap((row) => (row.caution === undefined ? [] : [row.caution])))];
}

/** Instruments are lettered, so that a row has room for the serial of the one in hand. */
function lettersOf(rows: readonly TestRow[]): ReadonlyMap<string, string> {
  const kinds = [...new Set(rows.map((row) => row.instrument))];
  return new Map(kinds.map((kind, k) => [kind, String.fromCharCode(97 + k)]));
}

/** Two instruments a row, with room for the number of the one in hand and the end of its calibration. */
function instruments(rows: readonly TestRow[]): Part {
  const cells = [...lettersOf(rows)].map(
    ([kind, letter]) => [letter, kind, { stroke: true }, { stroke: true }] as const,
  );
  const columns = [
    { head: '', share: 0.6, weight: 700 },
    { head: 'instrument', share: 4, face: 'close' },
    { head: 'its number', share: 2.4 },
    { head: 'in calibration until', share: 2.4, face: 'close' },
  ] as const;
  return table({
    label: 'instruments',
    columns: [...columns, ...columns],
    rows: cells.flatMap((left, k) =>
      k % 2 === 0 ? [{ cells: [...left, ...(cells[k + 1] ?? ['', '', '', ''])] }] : [],
    ),
  });
}

function testTable(rows: readonly TestRow[]): Part {
  const letters = lettersOf(rows);
  return table({
    label: 'tests',
    columns: [
      { head: '', share: 0.7, align: 'end' },
      { head: 'test', share: 2.7, weight: 700, face: 'close' },
      { head: 'point', share: 3.4, face: 'close' },
      { head: 'predicted', share: 3.7, face: 'close' },
      { head: 'limit', share: 3.1, face: 'close' },
      { head: 'with', share: 0.85, face: 'close' },
      { head: 'reading', share: 2.4 },
      { head: 'in limit, near', share: 1.4, face: 'close' },
      { head: 'who', share: 1.2 },
      { head: 'time', share: 1.2 },
    ],
    rows: rows.map((row) => ({
      of: row.id,
      label: `${row.name}, ${row.point}`,
      cells: [
        String(row.order),
        row.name,
        row.point,
        predictedWords(row),
        limitWords(row),
        letters.get(row.instrument) ?? '',
        readingCell(row),
        { boxes: 2 },
        row.reading?.by ?? ({ stroke: true } as const),
        { stroke: true },
      ],
      ...(row.hold === undefined ? {} : { rule: 'heavy' as const }),
    })),
  });
}

/** `0.14 Ω (0.09 to 0.19)`, or what has to be seen. */
export function predictedWords({ predicted, wanted }: TestRow): string {
  if (predicted === undefined) return wanted ?? 'look';
  const { value, unit, low, high, working } = predicted;
  if (low === high) return `${withUnit(value, unit)}, exactly`;
  const places = working.decimals ?? placesFor(value);
  return `${withUnit(value, unit, places)} (${rangeOf(low, high, '', places)})`;
}

function placesFor(value: number): number {
  return Math.abs(value) < 10 ? 2 : Math.abs(value) < 100 ? 1 : 0;
}

export function limitWords({ limit }: Pick<TestRow, 'limit'>): string {
  if (limit === undefined) return 'none';
  const seen = limit.seen === 'memory' ? ', from memory' : '';
  return `${limit.sense} ${withUnit(limit.value, limit.unit)}: ${limit.clause}${seen}`;
}

/** A line to write on; where a reading is on record, the reading. */
function readingCell({ reading, predicted, limit }: TestRow) {
  const unit = predicted?.unit ?? limit?.unit;
  if (reading === undefined)
    return unit === undefined || unit === '' ? ({ stroke: true } as const) : ({ stroke: true, unit } as const);
  const words = withUnit(reading.value, reading.unit);
  if (reading.inLimit === false || reading.nearPrediction === false) return { state: 'fails', words } as const;
  return { state: 'meets', words } as const;
}

/** What to do before and after: conditions and suspects, once for all rows that share them. */
function suspectTable(rows: readonly TestRow[]): Part {
  const groups = new Map<string, { row: TestRow; orders: number[] }>();
  for (const row of rows) {
    const key = JSON.stringify([row.name, row.conditions, row.suspects]);
    const group = groups.get(key) ?? { row, orders: [] };
    group.orders.push(row.order);
    groups.set(key, group);
  }
  return table({
    label: 'conditions and suspects',
    columns: [
      { head: 'rows', share: 1.4, align: 'end' },
      { head: 'test', share: 2.8, weight: 700, face: 'close' },
      { head: 'before: meet it or write it down', share: 5 },
      { head: 'outside the band, likeliest first', share: 5.4 },
    ],
    rows: [...groups.values()].map(({ row, orders }) => ({
      cells: [runs(orders), row.name, row.conditions.join(' '), row.suspects.join(' ')],
    })),
  });
}

/** `1–12, 15`: row numbers in runs. */
export function runs(orders: readonly number[]): string {
  const sorted = [...orders].sort((a, b) => a - b);
  const parts: [number, number][] = [];
  for (const order of sorted) {
    const last = parts.at(-1);
    if (last !== undefined && order === last[1] + 1) last[1] = order;
    else parts.push([order, order]);
  }
  return parts.map(([a, b]) => (a === b ? figure(a, 0) : `${figure(a, 0)}–${figure(b, 0)}`)).join(', ');
}
