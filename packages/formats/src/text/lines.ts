/** Lines of a text, whichever of CR LF, LF or CR ends them; trailing blank lines are dropped. */
export function textLines(text: string): string[] {
  const lines = (text.charCodeAt(0) === 0xfeff ? text.slice(1) : text).split(/\r\n|\n|\r/);
  while (lines.length > 0 && (lines[lines.length - 1] as string).trim() === '') lines.pop();
  return lines;
}
