import { box, line, text } from '../drawing/make.ts';
import type { Item } from '../drawing/model.ts';

export type SheetSize = 'A4-portrait' | 'A4-landscape' | 'A3-landscape';

/** Sheet sizes of ISO 216, mm. */
export const sheetSizes: Readonly<Record<SheetSize, { readonly widthMm: number; readonly heightMm: number }>> = {
  'A4-portrait': { widthMm: 210, heightMm: 297 },
  'A4-landscape': { widthMm: 297, heightMm: 210 },
  'A3-landscape': { widthMm: 420, heightMm: 297 },
};

/** 20 mm at the left, where the sheet is bound, 10 mm on the other sides (ISO 5457). */
const BINDING = 20;
const MARGIN = 10;
/** Zone letters and figures, and the strokes between them, lie within 4 mm of the frame. */
const ZONE_STROKE = 4;
const ZONE_CAP = 2.1;

export interface Frame {
  readonly leftMm: number;
  readonly bottomMm: number;
  readonly rightMm: number;
  readonly topMm: number;
  readonly columns: number;
  readonly rows: number;
}

/** The frame of a sheet and its zones: an even number a side, each near 50 mm. */
export function frameOf(size: SheetSize): Frame {
  const { widthMm, heightMm } = sheetSizes[size];
  const [rightMm, topMm] = [widthMm - MARGIN, heightMm - MARGIN];
  return {
    leftMm: BINDING,
    bottomMm: MARGIN,
    rightMm,
    topMm,
    columns: evenNear((rightMm - BINDING) / 50),
    rows: evenNear((topMm - MARGIN) / 50),
  };
}

function evenNear(count: number): number {
  return Math.max(2, 2 * Math.round(count / 2));
}

/** The zone a point lies in, as people say it: `C4`. Rows are lettered from the top. */
export function zoneOf(size: SheetSize, [x, y]: readonly [number, number]): string {
  const { leftMm, bottomMm, rightMm, topMm, columns, rows } = frameOf(size);
  const place = (part: number, count: number): number => Math.min(count - 1, Math.max(0, Math.floor(part * count)));
  const row = place((topMm - y) / (topMm - bottomMm), rows);
  return `${letter(row)}${place((x - leftMm) / (rightMm - leftMm), columns) + 1}`;
}

function letter(row: number): string {
  return String.fromCharCode(65 + row);
}

/** Frame, zones and the marks at the middle of each side. */
export function frameItems(size: SheetSize): Item[] {
  const { leftMm, bottomMm, rightMm, topMm, columns, rows } = frameOf(size);
  return [
    ...acrossItems(leftMm, rightMm, columns, bottomMm, topMm),
    ...upItems(bottomMm, topMm, rows, leftMm, rightMm),
    box([leftMm, bottomMm], rightMm - leftMm, topMm - bottomMm, { layer: 'FRAME' }),
  ];
}

/** Columns are numbered from the left, above and below the frame. */
function acrossItems(left: number, right: number, count: number, bottom: number, top: number): Item[] {
  const step = (right - left) / count;
  const items: Item[] = [];
  for (let k = 0; k < count; k++) {
    const x = left + (k + 0.5) * step;
    items.push(zone(String(k + 1), [x, top + 1.5]), zone(String(k + 1), [x, bottom - 1.5 - ZONE_CAP]));
    if (k > 0) {
      const pen = 2 * k === count ? 0.5 : 0.25;
      const long = 2 * k === count ? ZONE_STROKE + 1 : ZONE_STROKE;
      const at = left + k * step;
      items.push(stroke([at, top], [at, top + long], pen), stroke([at, bottom], [at, bottom - long], pen));
    }
  }
  return items;
}

/** Rows are lettered from the top, left and right of the frame. */
function upItems(bottom: number, top: number, count: number, left: number, right: number): Item[] {
  const step = (top - bottom) / count;
  const items: Item[] = [];
  for (let k = 0; k < count; k++) {
    const y = top - (k + 0.5) * step - ZONE_CAP / 2;
    items.push(zone(letter(k), [left - 2.6, y]), zone(letter(k), [right + 2.6, y]));
    if (k > 0) {
      const pen = 2 * k === count ? 0.5 : 0.25;
      const long = 2 * k === count ? ZONE_STROKE + 1 : ZONE_STROKE;
      const at = top - k * step;
      items.push(stroke([left, at], [left - long, at], pen), stroke([right, at], [right + long, at], pen));
    }
  }
  return items;
}

function zone(words: string, at: readonly [number, number]): Item {
  return text(words, at, { layer: 'FRAME', capMm: ZONE_CAP, pen: 0.25, anchor: 'middle' });
}

function stroke(from: readonly [number, number], to: readonly [number, number], pen: 0.25 | 0.5): Item {
  return line(from, to, { layer: 'FRAME', pen });
}
