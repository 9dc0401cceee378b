import { inflateSync } from 'node:zlib';

/** What layout needs of a face: heights and advance widths in font units. */
export interface FaceMeasures {
  readonly unitsPerEm: number;
  readonly capHeight: number;
  /** Advance width by code point, in font units. */
  readonly advances: ReadonlyMap<number, number>;
}

/**
 * Reads head, OS/2, hhea, hmtx and cmap (formats 4 and 12) of a WOFF 1.0 file.
 *
 * Sources: WOFF File Format 1.0 (W3C, 2012) §4 to §6; OpenType, tables of the same names.
 */
export function readWoff(bytes: Uint8Array): FaceMeasures {
  const tables = tablesOf(bytes);
  const table = (tag: string): DataView => {
    const found = tables.get(tag);
    if (!found) throw new Error(`The face has no table ${tag}.`);
    return found;
  };
  const os2 = table('OS/2');
  if (os2.getUint16(0) < 2) throw new Error('OS/2 is older than version 2 and states no cap height.');
  const widths = advancesOf(table('hmtx'), table('hhea').getUint16(34), table('maxp').getUint16(4));
  const advances = new Map<number, number>();
  for (const [code, glyph] of glyphsOf(table('cmap'))) advances.set(code, widths[glyph] as number);
  return { unitsPerEm: table('head').getUint16(18), capHeight: os2.getInt16(88), advances };
}

function tablesOf(bytes: Uint8Array): Map<string, DataView> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (view.getUint32(0) !== 0x774f4646) throw new Error('Not a WOFF 1.0 file.');
  const tables = new Map<string, DataView>();
  for (let k = 0; k < view.getUint16(12); k++) {
    const entry = 44 + 20 * k;
    const tag = String.fromCharCode(...bytes.subarray(entry, entry + 4));
    const [offset, packed, length] = [4, 8, 12].map((at) => view.getUint32(entry + at)) as [number, number, number];
    const stored = bytes.subarray(offset, offset + packed);
    const plain = packed < length ? inflateSync(stored) : stored;
    tables.set(tag, new DataView(plain.buffer, plain.byteOffset, plain.byteLength));
  }
  return tables;
}

/** Advance of every glyph; glyphs past the last metric repeat it. */
function advancesOf(hmtx: DataView, metrics: number, glyphs: number): number[] {
  return Array.from({ length: glyphs }, (_, k) => hmtx.getUint16(4 * Math.min(k, metrics - 1)));
}

function glyphsOf(cmap: DataView): Map<number, number> {
  const glyphs = new Map<number, number>();
  for (let k = 0; k < cmap.getUint16(2); k++) {
    const at = cmap.getUint32(4 + 8 * k + 4);
    const format = cmap.getUint16(at);
    if (format === 4) readFormat4(cmap, at, glyphs);
    if (format === 12) readFormat12(cmap, at, glyphs);
  }
  return glyphs;
}

function readFormat4(cmap: DataView, at: number, glyphs: Map<number, number>): void {
  const segments = cmap.getUint16(at + 6) / 2;
  for (let s = 0; s < segments; s++) {
    const end = cmap.getUint16(at + 14 + 2 * s);
    const start = cmap.getUint16(at + 16 + 2 * (segments + s));
    const delta = cmap.getUint16(at + 16 + 2 * (2 * segments + s));
    const rangeAt = at + 16 + 2 * (3 * segments + s);
    const range = cmap.getUint16(rangeAt);
    for (let code = start; code <= end && code !== 0xffff; code++) {
      const found = range === 0 ? code : cmap.getUint16(rangeAt + range + 2 * (code - start));
      const glyph = range !== 0 && found === 0 ? 0 : (found + delta) & 0xffff;
      if (glyph !== 0) glyphs.set(code, glyph);
    }
  }
}

function readFormat12(cmap: DataView, at: number, glyphs: Map<number, number>): void {
  for (let k = 0; k < cmap.getUint32(at + 12); k++) {
    const [start, end, first] = [0, 4, 8].map((b) => cmap.getUint32(at + 16 + 12 * k + b)) as [number, number, number];
    for (let code = start; code <= end; code++) if (first + code - start !== 0) glyphs.set(code, first + code - start);
  }
}
