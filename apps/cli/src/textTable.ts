/**
 * A table for a terminal: columns as wide as their widest cell, two spaces between, no rules.
 *
 * @param right  columns set right, for figures.
 */
export function textTable(
  head: readonly string[],
  rows: readonly (readonly string[])[],
  right: readonly number[] = [],
): string {
  const widths = head.map((title, column) => Math.max(title.length, ...rows.map((row) => (row[column] ?? '').length)));
  const line = (cells: readonly string[]) =>
    widths
      .map((width, column) => {
        const cell = cells[column] ?? '';
        return right.includes(column) ? cell.padStart(width) : cell.padEnd(width);
      })
      .join('  ')
      .trimEnd();
  return [head, ...rows].map(line).join('\n');
}
