import { brotliDecompressSync, inflateSync } from 'node:zlib';

/** Tags a WOFF 2.0 directory may name by number; `cmap` is the first. Source: WOFF File Format 2.0, §4.1. */
const CMAP = 0;
const GLYF = 10;
const LOCA = 11;

/**
 * The code points a font file has a glyph for: its cmap, formats 4 and 12.
 *
 * Sources: WOFF File Format 1.0 and 2.0 (W3C), OpenType, cmap.
 */
export function signsOf(file: Uint8Array): ReadonlySet<number> {
  const view = new DataView(file.buffer, file.byteOffset, file.byteLength);
  const signature = view.getUint32(0);
  if (signature === 0x774f4632) return signsIn(cmapOfWoff2(file, view));
  if (signature === 0x774f4646) return signsIn(cmapOfWoff1(file, view));
  throw new Error('Neither WOFF 1.0 nor WOFF 2.0.');
}

function cmapOfWoff1(file: Uint8Array, view: DataView): DataView {
  for (let k = 0; k < view.getUint16(12); k++) {
    const entry = 44 + 20 * k;
    if (view.getUint32(entry) !== 0x636d6170) continue;
    const [offset, packed, length] = [4, 8, 12].map((at) => view.getUint32(entry + at)) as [number, number, number];
    const stored = file.subarray(offset, offset + packed);
    const plain = packed < length ? inflateSync(stored) : stored;
    return new DataView(plain.buffer, plain.byteOffset, plain.byteLength);
  }
  throw new Error('The file has no cmap.');
}

function cmapOfWoff2(file: Uint8Array, view: DataView): DataView {
  let at = 48;
  const base128 = () => {
    for (let value = 0; ; ) {
      const byte = view.getUint8(at++);
      value = value * 128 + (byte & 0x7f);
      if ((byte & 0x80) === 0) return value;
    }
  };
  let offset = 0;
  let cmap: { readonly offset: number; readonly length: number } | undefined;
  for (let k = 0; k < view.getUint16(12); k++) {
    const flags = view.getUint8(at++);
    const tag = flags & 0x3f;
    if (tag === 0x3f) at += 4;
    const length = base128();
    // glyf and loca are transformed by default, other tables only where they say so
    const version = flags >> 6;
    const transformed = tag === GLYF || tag === LOCA ? version !== 3 : version !== 0;
    const stored = transformed ? base128() : length;
    if (tag === CMAP) cmap = { offset, length };
    offset += stored;
  }
  if (cmap === undefined) throw new Error('The file has no cmap.');
  const all = brotliDecompressSync(file.subarray(at, at + view.getUint32(20)));
  return new DataView(all.buffer, all.byteOffset + cmap.offset, cmap.length);
}

function signsIn(cmap: DataView): ReadonlySet<number> {
  const signs = new Set<number>();
  for (let k = 0; k < cmap.getUint16(2); k++) {
    const table = cmap.getUint32(4 + 8 * k + 4);
    const format = cmap.getUint16(table);
    if (format === 4) addSegments(cmap, table, signs);
    if (format === 12) addGroups(cmap, table, signs);
  }
  return signs;
}

function addSegments(cmap: DataView, table: number, signs: Set<number>): void {
  const twice = cmap.getUint16(table + 6);
  const ends = table + 14;
  const starts = ends + twice + 2;
  const [deltas, offsets] = [starts + twice, starts + 2 * twice];
  for (let k = 0; k < twice; k += 2) {
    for (let code = cmap.getUint16(starts + k); code <= cmap.getUint16(ends + k) && code < 0xffff; code++) {
      const offset = cmap.getUint16(offsets + k);
      const own = offset === 0 ? code : cmap.getUint16(offsets + k + offset + 2 * (code - cmap.getUint16(starts + k)));
      if (own !== 0 && ((own + (cmap.getUint16(deltas + k) ?? 0)) & 0xffff) !== 0) signs.add(code);
    }
  }
}

function addGroups(cmap: DataView, table: number, signs: Set<number>): void {
  for (let k = 0; k < cmap.getUint32(table + 12); k++) {
    const group = table + 16 + 12 * k;
    for (let code = cmap.getUint32(group); code <= cmap.getUint32(group + 4); code++) signs.add(code);
  }
}
