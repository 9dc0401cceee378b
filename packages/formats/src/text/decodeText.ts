import type { Remark } from '../reading/remark.ts';

/** Largest file read whole, bytes. */
export const MAX_FILE_BYTES = 50e6;

/** Text of a file, and what had to be done to get it. */
export interface DecodedText {
  readonly text: string;
  readonly encoding: 'utf-8' | 'utf-16' | 'windows-1252';
  readonly remarks: readonly Remark[];
}

/** Code points of Windows-1252 at 0x80 to 0x9F; the five unused bytes stay control characters. */
const WINDOWS_1252_HIGH =
  '\u20ac\u0081\u201a\u0192\u201e\u2026\u2020\u2021\u02c6\u2030\u0160\u2039\u0152\u008d\u017d\u008f' +
  '\u0090\u2018\u2019\u201c\u201d\u2022\u2013\u2014\u02dc\u2122\u0161\u203a\u0153\u009d\u017e\u0178';

/** Characters gathered before they are joined: `fromCharCode` takes its arguments from the stack. */
const CHUNK = 8192;

/**
 * Bytes to text: UTF-8, and where the bytes are not UTF-8, Windows-1252 with a note.
 * A byte-order mark is dropped.
 *
 * Sources: RFC 3629 (well-formed UTF-8: no overlong forms, no surrogates, at most U+10FFFF);
 * WHATWG Encoding Standard, index windows-1252 (from memory).
 */
export function decodeText(bytes: Uint8Array): DecodedText {
  if (bytes.length > MAX_FILE_BYTES) {
    const found = `The file has ${Math.round(bytes.length / 1e6)} MB.`;
    const wanted = `At most ${MAX_FILE_BYTES / 1e6} MB are read.`;
    const remark: Remark = { severity: 'stop', code: 'too-large', found, wanted, done: 'Nothing was read.' };
    return { text: '', encoding: 'utf-8', remarks: [remark] };
  }
  const sort = binarySort(bytes);
  if (sort !== undefined) {
    const wanted = 'A file of text is wanted.';
    const remark: Remark = { severity: 'stop', code: 'not-text', found: sort, wanted, done: 'Nothing was read.' };
    return { text: '', encoding: 'utf-8', remarks: [remark] };
  }
  const utf16 = decodeUtf16(bytes);
  if (utf16 !== undefined) {
    const done = 'It was read as UTF-16.';
    const remark: Remark = {
      severity: 'note',
      code: 'not-utf8',
      found: 'The text is UTF-16.',
      wanted: 'UTF-8 was expected.',
      done,
    };
    return { text: utf16, encoding: 'utf-16', remarks: [remark] };
  }
  const utf8 = decodeUtf8(bytes);
  if (utf8 !== undefined) return { text: utf8, encoding: 'utf-8', remarks: [] };
  const remark: Remark = {
    severity: 'note',
    code: 'not-utf8',
    found: 'The text is not UTF-8.',
    wanted: 'UTF-8 was expected.',
    done: 'It was read as Windows-1252; accented letters may be wrong.',
  };
  return { text: decodeWindows1252(bytes), encoding: 'windows-1252', remarks: [remark] };
}

/** First bytes of what people pick by mistake. */
const BINARY: readonly (readonly [first: readonly number[], what: string])[] = [
  [[0x50, 0x4b, 0x03, 0x04], 'This is a ZIP archive, or a spreadsheet in one.'],
  [[0x25, 0x50, 0x44, 0x46], 'This is a PDF.'],
  [[0x89, 0x50, 0x4e, 0x47], 'This is a picture (PNG).'],
  [[0xff, 0xd8, 0xff], 'This is a picture (JPEG).'],
  [[0x1f, 0x8b], 'This is a compressed file (gzip).'],
];

/** What a file is that holds no text; undefined for all else. */
function binarySort(bytes: Uint8Array): string | undefined {
  return BINARY.find(([first]) => first.every((byte, i) => bytes[i] === byte))?.[1];
}

/** Text of UTF-16 that says so with its byte-order mark; undefined for all else. A last odd byte is dropped. */
function decodeUtf16(bytes: Uint8Array): string | undefined {
  const little = bytes[0] === 0xff && bytes[1] === 0xfe;
  if (!little && !(bytes[0] === 0xfe && bytes[1] === 0xff)) return undefined;
  const parts: string[] = [];
  for (let i = 2; i + 1 < bytes.length; i += 2 * CHUNK) {
    const units: number[] = [];
    for (let k = i; k + 1 < bytes.length && k < i + 2 * CHUNK; k += 2) {
      const [a, b] = [bytes[k] as number, bytes[k + 1] as number];
      units.push(little ? a | (b << 8) : (a << 8) | b);
    }
    parts.push(String.fromCharCode(...units));
  }
  return parts.join('');
}

/** Text of well-formed UTF-8, without its byte-order mark; undefined when a byte does not fit. */
export function decodeUtf8(bytes: Uint8Array): string | undefined {
  const start = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? 3 : 0;
  const parts: string[] = [];
  let units: number[] = [];
  for (let i = start; i < bytes.length; ) {
    const lead = bytes[i] as number;
    const length = lead < 0x80 ? 1 : lead < 0xc2 ? 0 : lead < 0xe0 ? 2 : lead < 0xf0 ? 3 : lead < 0xf5 ? 4 : 0;
    if (length === 0 || i + length > bytes.length) return undefined;
    let point = length === 1 ? lead : lead & (0x7f >> length);
    for (let k = 1; k < length; k++) {
      const next = bytes[i + k] as number;
      if ((next & 0xc0) !== 0x80) return undefined;
      point = (point << 6) | (next & 0x3f);
    }
    const overlong = (length === 3 && point < 0x800) || (length === 4 && point < 0x10000);
    if (overlong || point > 0x10ffff || (point >= 0xd800 && point <= 0xdfff)) return undefined;
    if (point < 0x10000) units.push(point);
    else units.push(0xd800 + ((point - 0x10000) >> 10), 0xdc00 + ((point - 0x10000) & 0x3ff));
    i += length;
    if (units.length >= CHUNK) {
      parts.push(String.fromCharCode(...units));
      units = [];
    }
  }
  parts.push(String.fromCharCode(...units));
  return parts.join('');
}

function decodeWindows1252(bytes: Uint8Array): string {
  const parts: string[] = [];
  for (let i = 0; i < bytes.length; i += CHUNK) {
    const units = Array.from(bytes.subarray(i, i + CHUNK), (byte) =>
      byte >= 0x80 && byte < 0xa0 ? WINDOWS_1252_HIGH.charCodeAt(byte - 0x80) : byte,
    );
    parts.push(String.fromCharCode(...units));
  }
  return parts.join('');
}
