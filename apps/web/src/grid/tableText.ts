/** Longest text pasted; a table of a house is far shorter. */
const LONGEST = 1_000_000;

/** Text of rows and cells, as a spreadsheet puts it on the clipboard or into a CSV file. */
export function readTable(text: string): string[][] {
  const whole = text.slice(0, LONGEST).replace(/^\ufeff/, '');
  return cellsOf(whole, separatorOf(whole));
}

/** Rows and cells as text with tabs; a cell that holds a tab, a break or a quote stands in quotes. */
export function writeTable(rows: readonly (readonly string[])[]): string {
  const cell = (text: string) => (/[\t\r\n"]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
  return rows.map((row) => row.map(cell).join('\t')).join('\r\n');
}

/**
 * What parts the cells. Tabs where there are any: spreadsheets copy with tabs. Else semicolons, else commas, where
 * every line has the same number of them; but lines of one comma between figures are a column of decimal commas, and
 * a single line is one cell unless it has several parts that together are no number.
 */
function separatorOf(text: string): string | undefined {
  if (text.includes('\t')) return '\t';
  const bare = text.replace(/"(?:[^"]|"")*"/g, '"');
  const lines = bare.split(/\r\n|\n|\r/).filter((line) => line !== '');
  const sameIn = (mark: string) => {
    const counts = new Set(lines.map((line) => line.split(mark).length));
    return counts.size === 1 && !counts.has(1);
  };
  if (lines.length > 1 && sameIn(';')) return ';';
  const decimals = lines.every((line) => /^\s*[-\u2212]?[\d ]*,\d+\s*$/.test(line));
  if (lines.length > 1 && sameIn(',') && !decimals) return ',';
  const [only = ''] = lines;
  const parts = only.split(';').length > 2 ? ';' : ',';
  return lines.length === 1 && only.split(parts).length > 2 && !/^[\d.,\s-]+$/.test(only) ? parts : undefined;
}

function cellsOf(text: string, separator: string | undefined): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let cell = '';
  let quoted = false;
  const endRow = () => {
    rows.push([...row, cell]);
    row = [];
    cell = '';
  };
  for (let i = 0; i < text.length; i++) {
    const sign = text[i] as string;
    if (quoted) {
      if (sign !== '"') cell += sign;
      else if (text[i + 1] === '"') cell += text[i++];
      else quoted = false;
    } else if (sign === '"' && cell === '' && closes(text, i, separator)) quoted = true;
    else if (sign === separator) {
      row.push(cell);
      cell = '';
    } else if (sign === '\n' || sign === '\r') {
      if (sign === '\r' && text[i + 1] === '\n') i++;
      endRow();
    } else cell += sign;
  }
  // a break at the very end ends the last row and begins no other
  if (cell !== '' || row.length > 0) endRow();
  return rows;
}

/** True where a quote that begins a cell is closed before the next separator or break: else it is inches. */
function closes(text: string, from: number, separator: string | undefined): boolean {
  const end = /"(?:[^"]|"")*"/y;
  end.lastIndex = from;
  const found = end.exec(text);
  if (found === null) return false;
  const after = text[from + found[0].length];
  return after === undefined || after === separator || after === '\n' || after === '\r';
}
