import { expect, test } from 'vitest';
import { decodeText } from './decodeText.ts';
import { plainNumber, splitFields } from './fields.ts';
import { textLines } from './lines.ts';

const utf8 = (text: string) => new TextEncoder().encode(text);

test.each([
  ['little', [0xff, 0xfe, 0x4c, 0x00, 0xb0, 0x00, 0x3d, 0xd8, 0x4d, 0xdc, 0x00]],
  ['big', [0xfe, 0xff, 0x00, 0x4c, 0x00, 0xb0, 0xd8, 0x3d, 0xdc, 0x4d]],
])('UTF-16, %s end first, is read with a note; a last odd byte is dropped', (_, bytes) => {
  // L, degree sign, and U+1F44D as a surrogate pair: RFC 2781
  const { text, encoding, remarks } = decodeText(Uint8Array.from(bytes));
  expect({ text, encoding }).toEqual({ text: 'L\u00b0\u{1f44d}', encoding: 'utf-16' });
  expect(remarks.map(({ severity }) => severity)).toEqual(['note']);
});

test.each([
  ['%PDF-1.7', 'This is a PDF.'],
  ['PK\u0003\u0004', 'This is a ZIP archive, or a spreadsheet in one.'],
])('%j is no text, and what it is is said', (opening, found) => {
  const { text, remarks } = decodeText(utf8(opening));
  expect(text).toBe('');
  expect(remarks).toMatchObject([{ severity: 'stop', found }]);
});

test('UTF-8 is read as the platform reads it, from one to four bytes a character', () => {
  const text = 'Zürich, Ōtaki, 東京, 🌞, plain';
  expect(decodeText(utf8(text))).toEqual({ text, encoding: 'utf-8', remarks: [] });
});

test('a long text crosses the chunks without loss', () => {
  const text = 'é🌞a'.repeat(20_000);
  expect(decodeText(utf8(text)).text).toBe(text);
});

test('a byte-order mark is dropped', () => {
  expect(decodeText(utf8('\ufeffLOCATION')).text).toBe('LOCATION');
});

test('bytes that are not UTF-8 are read as Windows-1252, and said so', () => {
  // Windows-1252: 0xE9 é, 0x80 €, 0x96 en dash
  const { text, encoding, remarks } = decodeText(Uint8Array.of(0x43, 0x61, 0x66, 0xe9, 0x20, 0x80, 0x96));
  expect(text).toBe('Café €–');
  expect(encoding).toBe('windows-1252');
  expect(remarks.map(({ severity, code }) => ({ severity, code }))).toEqual([{ severity: 'note', code: 'not-utf8' }]);
});

test.each([
  ['overlong slash', [0xc0, 0xaf]],
  ['overlong in three bytes', [0xe0, 0x80, 0xaf]],
  ['surrogate', [0xed, 0xa0, 0x80]],
  ['above U+10FFFF', [0xf4, 0x90, 0x80, 0x80]],
  ['cut off', [0x61, 0xe2, 0x82]],
])('RFC 3629 refuses: %s', (_, bytes) => {
  expect(decodeText(Uint8Array.from(bytes)).encoding).toBe('windows-1252');
});

test('any line end will do, also none at the end, and trailing blank lines go', () => {
  expect(textLines('a\r\nb\nc\rd')).toEqual(['a', 'b', 'c', 'd']);
  expect(textLines('a\n\nb\n\n \n')).toEqual(['a', '', 'b']);
  expect(textLines('')).toEqual([]);
});

test('RFC 4180: quotes protect the separator, doubled quotes are one', () => {
  expect(splitFields('723170,"GREENSBORO, PIEDMONT",NC , -5.0')).toEqual([
    '723170',
    'GREENSBORO, PIEDMONT',
    'NC',
    '-5.0',
  ]);
  expect(splitFields('a,"say ""sun""",')).toEqual(['a', 'say "sun"', '']);
  expect(splitFields('5" pipe;x', ';')).toEqual(['5" pipe', 'x']);
});

test('only plain decimals are numbers', () => {
  expect(['1.5', '-0.0', '.5', '2.3225760E-03'].map(plainNumber)).toEqual([1.5, -0, 0.5, 0.002322576]);
  for (const field of ['', 'n/a', 'NaN', '0x10', '1.2.3', '1,5', 'Infinity', '1e999', undefined]) {
    expect(plainNumber(field)).toBeUndefined();
  }
});
