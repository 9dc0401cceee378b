import { metrics } from '../type/metrics.ts';
import type { Arc, Drawing, Layer, Leaf, Point, Text } from './model.ts';
import { leavesOf, settle } from './settle.ts';

/** A straight stretch of something drawn. */
export interface Segment {
  readonly from: Point;
  readonly to: Point;
  readonly layer: Layer;
  readonly penMm: number;
  readonly of?: string;
}

/** Where a text lies: its box, turned with it. */
export interface TextBox {
  readonly text: string;
  /** Counter-clockwise from the start of the baseline, below the letters. */
  readonly corners: readonly [Point, Point, Point, Point];
  /** A text with a halo may lie over lines. */
  readonly halo: boolean;
  readonly layer: Layer;
  readonly of?: string;
}

/** Chords of an arc deviate by less than 0.01 mm up to a radius of 60 mm. */
const CHORD_DEG = 2;

/** Everything drawn with a pen as straight stretches, arcs as chords; hatching only if asked for. */
export function segmentsOf(drawing: Drawing, { hatching = false } = {}): Segment[] {
  return leavesOf(settle(drawing).items)
    .filter((leaf) => hatching || leaf.layer !== 'HATCH')
    .flatMap((leaf) => stretches(leaf).map(([from, to]) => segment(leaf, from, to)));
}

function segment(leaf: Leaf, from: Point, to: Point): Segment {
  const penMm = leaf.kind === 'tube' ? leaf.coreMm : leaf.pen;
  return { from, to, layer: leaf.layer, penMm, ...(leaf.of === undefined ? {} : { of: leaf.of }) };
}

function stretches(leaf: Leaf): [Point, Point][] {
  switch (leaf.kind) {
    case 'line':
      return [[leaf.from, leaf.to]];
    case 'polyline':
      return pairs(leaf.closed ? [...leaf.points, ...leaf.points.slice(0, 1)] : leaf.points);
    case 'tube':
      return pairs(leaf.points);
    case 'arc':
      return pairs(chords(leaf));
    case 'fill':
    case 'text':
      return [];
    default: {
      const never: never = leaf;
      return never;
    }
  }
}

function pairs(points: readonly Point[]): [Point, Point][] {
  return points.slice(1).map((to, k) => [points[k] as Point, to]);
}

function chords({ at: [x, y], radiusMm, startDeg, endDeg }: Arc): Point[] {
  const count = Math.max(1, Math.ceil(Math.abs(endDeg - startDeg) / CHORD_DEG));
  return Array.from({ length: count + 1 }, (_, k): Point => {
    const turn = ((startDeg + ((endDeg - startDeg) * k) / count) * Math.PI) / 180;
    return [x + radiusMm * Math.cos(turn), y + radiusMm * Math.sin(turn)];
  });
}

/** The boxes of all lettering, from descender to cap height, by the shipped fonts' widths. */
export function textBoxesOf(drawing: Drawing): TextBox[] {
  return leavesOf(settle(drawing).items)
    .filter((leaf) => leaf.kind === 'text')
    .map(boxOf);
}

function boxOf(item: Text): TextBox {
  const width = metrics.widthMm(item.text, item);
  const lead = item.anchor === 'start' ? 0 : item.anchor === 'middle' ? width / 2 : width;
  const turn = (item.rotateDeg * Math.PI) / 180;
  const on = (along: number, up: number): Point => [
    item.at[0] + along * Math.cos(turn) - up * Math.sin(turn),
    item.at[1] + along * Math.sin(turn) + up * Math.cos(turn),
  ];
  const low = -metrics.descentMm(item.text, item);
  return {
    text: item.text,
    corners: [on(-lead, low), on(width - lead, low), on(width - lead, item.capMm), on(-lead, item.capMm)],
    halo: item.halo,
    layer: item.layer,
    ...(item.of === undefined ? {} : { of: item.of }),
  };
}
