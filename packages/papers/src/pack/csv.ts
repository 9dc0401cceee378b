/** A figure, a word, or nothing. */
export type CsvCell = string | number | undefined;

/**
 * A table as CSV after RFC 4180: comma, CRLF, quotes where a cell holds a comma, a quote or a line end.
 *
 * A word that begins with `=`, `+`, `-`, `@`, a tab or a return would be run as a formula by a spreadsheet that
 * opens the file. Such a word gets an apostrophe in front, and so does one that begins with an apostrophe, so that
 * `readCsvWord` can take it off again without doubt. Numbers are written as numbers, their minus included.
 */
export function writeCsv(heads: readonly string[], rows: readonly (readonly CsvCell[])[]): string {
  return [heads, ...rows].map((row) => `${row.map(cellText).join(',')}\r\n`).join('');
}

function cellText(cell: CsvCell): string {
  if (cell === undefined) return '';
  if (typeof cell === 'number') return String(cell);
  const safe = /^[=+\-@\t\r']/.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** A word as it was before it was made safe for spreadsheets. */
export function readCsvWord(cell: string): string {
  return /^'[=+\-@\t\r']/.test(cell) ? cell.slice(1) : cell;
}
