/**
 * Fields of one record, blanks around them trimmed. A field in double quotes may hold the
 * separator; a doubled quote inside it is one quote. A quote inside an unquoted field is text.
 *
 * Source: RFC 4180, section 2, rules 5 to 7 (a quoted line end is not read).
 */
export function splitFields(line: string, separator = ','): string[] {
  if (!line.includes('"')) return line.split(separator).map((field) => field.trim());
  const fields: string[] = [];
  let at = 0;
  while (at <= line.length) {
    const quoted = /^\s*"((?:[^"]|"")*)"\s*/.exec(line.slice(at));
    const after = quoted ? at + quoted[0].length : at;
    if (quoted && (after === line.length || line.startsWith(separator, after))) {
      fields.push((quoted[1] as string).replaceAll('""', '"').trim());
      at = after + separator.length;
      continue;
    }
    const end = line.indexOf(separator, at);
    fields.push(line.slice(at, end < 0 ? line.length : end).trim());
    at = end < 0 ? line.length + 1 : end + separator.length;
  }
  return fields;
}

/** A plain decimal number, or undefined for anything else: blank, text, `NaN`, `0x10`, two points. */
export function plainNumber(field: string | undefined): number | undefined {
  if (field === undefined || !/^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(field)) return undefined;
  const value = Number(field);
  return Number.isFinite(value) ? value : undefined;
}
