/** A reader of RFC 4180, written for tests apart from the writer it is held against. */
export function parseCsv(text: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let cell = '';
  let quoted = false;
  for (let k = 0; k < text.length; k++) {
    const sign = text[k] as string;
    if (quoted) {
      if (sign !== '"') cell += sign;
      else if (text[k + 1] === '"') {
        cell += '"';
        k++;
      } else quoted = false;
    } else if (sign === '"') quoted = true;
    else if (sign === ',') {
      row.push(cell);
      cell = '';
    } else if (sign === '\r' && text[k + 1] === '\n') {
      rows.push([...row, cell]);
      row = [];
      cell = '';
      k++;
    } else cell += sign;
  }
  return rows;
}
