import type { Drop, TrunkPlan, TrunkSpan } from '@eaveline/plan';
import {
  box,
  circle,
  disc,
  type Item,
  line,
  type Point,
  polyline,
  type Scale,
  scales,
  text,
  tube,
} from '../drawing/index.ts';
import { metrics } from '../type/index.ts';
import { figure } from './figures.ts';
import { homeRunWords } from './homeRunWords.ts';
import { lineLetters, type Pack, wireOf } from './packContext.ts';
import { BOARD, boardItems } from './trunkBoard.ts';

/** Height of the whole picture, and its levels from the top. */
export const trunkHeightMm = 52;
const TRUNK = 27;
const HOME = 44;
const ALONG = { left: 45, right: 160 };

const CLOSE = { capMm: 2.5, weight: 400, face: 'close' } as const;
const BOLD = { capMm: 2.5, weight: 700, face: 'close' } as const;

/** Scale along the trunk; `undefined` for one too long to be drawn true, which is then spaced evenly. */
export function trunkScale(trunk: TrunkPlan): Scale | undefined {
  const lengthMm = 1000 * trunk.spans.reduce((sum, span) => sum + span.lengthM, 0);
  return scales.find((scale) => lengthMm / scale <= ALONG.right - ALONG.left);
}

/** The street, the board, the home run, and the trunk laid out straight with its units above it. */
export function trunkItems(pack: Pack, trunk: TrunkPlan, [x, top]: Point, _widthMm: number): Item[] {
  const places = placesAlong(trunk, x + ALONG.left);
  const [trunkY, homeY] = [top - TRUNK, top - HOME];
  const feed = places.get(trunk.feedDrop) ?? x + ALONG.left;
  return [
    ...boardItems(pack, trunk, x, homeY),
    ...homeRunItems(pack, trunk, [x + BOARD.right, homeY], [feed, trunkY]),
    ...cableItems(pack, trunk, places, trunkY),
    ...trunk.spans.flatMap((span) => spanItems(span, places, trunkY)),
    ...trunk.drops.flatMap((drop) => dropItems(trunk, drop, places, trunkY)),
    text('street', [x + 1, top - 3], { ...CLOSE, ink: 'quiet' }),
    text(pack.words.board, [x + BOARD.left, top - 3], { ...CLOSE, ink: 'quiet' }),
    text('trunk, unrolled from its first drop; lengths in metres', [x + ALONG.left, top - 3], {
      ...CLOSE,
      ink: 'quiet',
    }),
  ];
}

/** Where each drop stands on paper, mm from the left of the sheet. */
function placesAlong(trunk: TrunkPlan, left: number): ReadonlyMap<number, number> {
  const scale = trunkScale(trunk);
  const even = (ALONG.right - ALONG.left) / Math.max(1, trunk.spans.length);
  const places = new Map<number, number>();
  let at = left;
  // spans run outward from the joint on both sides; on paper they follow the numbers of the drops
  const inOrder = [...trunk.spans].sort((a, b) => lowEnd(a) - lowEnd(b));
  places.set(inOrder[0] === undefined ? trunk.feedDrop : lowEnd(inOrder[0]), at);
  for (const span of inOrder) {
    at += scale === undefined ? even : (1000 * span.lengthM) / scale;
    places.set(Math.max(span.fromDrop, span.toDrop), at);
  }
  return places;
}

function lowEnd({ fromDrop, toDrop }: TrunkSpan): number {
  return Math.min(fromDrop, toDrop);
}

/** From the board to the feed joint, cut short: the cut sign says so. */
function homeRunItems(pack: Pack, trunk: TrunkPlan, from: Point, [feed, trunkY]: Point): Item[] {
  const { wire, conductor } = wireOf(pack, trunk.lines);
  const [x, y] = from;
  const letters = lineLetters(trunk.lines);
  const cut = x + 7;
  const [length, size] = homeRunWords(pack, trunk);
  const bend = { bendMm: 3, letters: 'none' } as const;
  return [
    ...tube([from, [cut - 0.8, y]], conductor, wire, bend),
    ...tube(
      [
        [cut + 0.8, y],
        [feed, y],
        [feed, trunkY],
      ],
      conductor,
      wire,
      bend,
    ),
    ...[-0.8, 0.8].map((dx) =>
      polyline(
        [
          [cut + dx - 0.7, y - 2.2],
          [cut + dx + 0.5, y - 0.6],
          [cut + dx - 0.5, y + 0.6],
          [cut + dx + 0.7, y + 2.2],
        ],
        { pen: 0.25 },
      ),
    ),
    text(letters, [x + 0.8, y + 1.6], { ...BOLD, halo: true }),
    text(`${pack.words.homeRun} ${length}, ${size}`, [cut + 3, y - 4.2], { ...CLOSE, halo: true }),
  ];
}

function cableItems(pack: Pack, trunk: TrunkPlan, places: ReadonlyMap<number, number>, y: number): Item[] {
  const at = [...places.values()];
  const [from, to] = [Math.min(...at) - 3, Math.max(...at) + 3];
  const { wire, conductor } = wireOf(pack, trunk.lines);
  const cap = (x: number): Item => box([x - 0.5, y - 1.5], 1, 3, { layer: 'ROOF-IN', pen: 0.5 });
  const letters = lineLetters(trunk.lines);
  // a trunk fed at its first or last drop ends in its joint there, and wears a cap at the far end only
  const ends = [...places.entries()];
  const capped = [ends[0]?.[0] !== trunk.feedDrop, ends.at(-1)?.[0] !== trunk.feedDrop || trunk.caps.end > 1];
  const first = capped[0] ? from : Math.min(...at);
  const last = capped[1] ? to : Math.max(...at);
  return [
    ...tube(
      [
        [first, y],
        [last, y],
      ],
      conductor,
      wire,
      { letters: 'none', of: trunk.id },
    ),
    ...(capped[0] ? [cap(first)] : []),
    ...(capped[1] ? [cap(last)] : []),
    text(letters, capped[0] ? [first - 1.5, y + 1.3] : [first - 2.8, y - 1.25], { ...BOLD, anchor: 'end' }),
    text(letters, capped[1] ? [last + 1.5, y + 1.3] : [last + 2.8, y - 1.25], BOLD),
  ];
}

function spanItems(span: TrunkSpan, places: ReadonlyMap<number, number>, y: number): Item[] {
  const [a, b] = [places.get(span.fromDrop), places.get(span.toDrop)];
  if (a === undefined || b === undefined) return [];
  const words = figure(span.lengthM, 2);
  const look = span.jumper ? BOLD : CLOSE;
  const capMm = fitting(words, Math.abs(b - a) - 0.8, look.weight);
  const middle = (a + b) / 2;
  const jumper =
    span.jumper && Math.abs(b - a) > 12
      ? [text('jumper', [middle, y - 11.2], { ...CLOSE, capMm: 2.1, anchor: 'middle', halo: true })]
      : [];
  if (capMm === undefined) return [];
  return [text(words, [middle, y - 8.2], { ...look, capMm, anchor: 'middle', halo: true }), ...jumper];
}

/** The largest capital height at which words keep inside a width. */
function fitting(words: string, roomMm: number, weight: 400 | 700): number | undefined {
  return [2.5, 2.1, 1.8].find((capMm) => metrics.widthMm(words, { capMm, weight, face: 'close' }) <= roomMm);
}

/** The tap on the cable, its name below, its unit above with the module it serves. */
function dropItems(trunk: TrunkPlan, drop: Drop, places: ReadonlyMap<number, number>, y: number): Item[] {
  const x = places.get(drop.number);
  if (x === undefined) return [];
  const gap = leastGap(places);
  const half = Math.min(5, gap / 2 - 0.4);
  const fed = drop.number === trunk.feedDrop;
  const ring = fed ? [circle([x, y], 1.9, { pen: 0.5 }), disc([x, y], 0.8)] : [disc([x, y], 1)];
  const name = dropName(drop, [x, y], gap, fed, x >= Math.max(...places.values()));
  if (drop.unitId === undefined) return [...ring, box([x - 0.9, y + 1], 1.8, 1.8, { pen: 0.5 }), ...name];
  const words = placeInRow(drop);
  const cap = fitting(words, 2 * half - 0.5, 700);
  return [
    ...ring,
    line([x, y + 1], [x, y + 6], { pen: 0.35 }),
    box([x - half, y + 6], 2 * half, 8, {
      layer: 'ROOF-IN',
      of: drop.unitId,
      label: `${drop.name}, ${drop.moduleNames.join(' ')}`,
    }),
    ...(cap === undefined ? [] : [text(words, [x, y + 10 - cap / 2], { ...BOLD, capMm: cap, anchor: 'middle' })]),
    ...rowItem(drop, x, y + 15, gap),
    ...name,
  ];
}

/** Below the cable; at the joint, where the home run comes from below, beside the stem. */
function dropName(drop: Drop, [x, y]: Point, gap: number, fed: boolean, last: boolean): Item[] {
  if (fed) {
    const way = last ? -1 : 1;
    const anchor = last ? 'end' : 'start';
    return [text(drop.name, [x + 1.2 * way, y + 2.6], { ...CLOSE, capMm: 2.1, anchor, halo: true })];
  }
  const capMm = fitting(drop.name, gap - 0.6, 400);
  return capMm === undefined ? [] : [text(drop.name, [x, y - 4.6], { ...CLOSE, capMm, anchor: 'middle', halo: true })];
}

/** Plane and row over a unit. */
function rowItem(drop: Drop, x: number, y: number, gap: number): Item[] {
  const [letters = ''] = (drop.moduleNames[0] ?? '').split('·');
  const capMm = fitting(letters, gap - 0.8, 400);
  return letters === '' || capMm === undefined
    ? []
    : [text(letters, [x, y], { ...CLOSE, capMm, anchor: 'middle', ink: 'quiet' })];
}

/** Place in its row; first and last for a unit with several modules. */
function placeInRow({ moduleNames }: Drop): string {
  const places = moduleNames.map((name) => name.split('·')[1] ?? name);
  return places.length < 2 ? (places[0] ?? '') : `${places[0]}–${places.at(-1)}`;
}

function leastGap(places: ReadonlyMap<number, number>): number {
  const at = [...places.values()].sort((a, b) => a - b);
  return Math.min(20, ...at.slice(1).map((b, k) => b - (at[k] as number)));
}
