/** Deepest nesting read; a job needs eight. Deeper is a broken or a hostile file. */
const DEEPEST = 64;

export interface TextPlace {
  /** Counted from one. */
  readonly line: number;
  readonly column: number;
}

export interface JsonFault extends TextPlace {
  readonly found: string;
  readonly wanted: string;
}

/** One named value met in a JSON text. */
export interface JsonMember {
  readonly path: string;
  readonly key: string;
  readonly offset: number;
  /** True where the same group has named it before: readers silently keep only the last. */
  readonly repeated: boolean;
}

/** Where offsets lie in a text, in one pass; they have to be given in rising order. */
export function placesOf(text: string, offsets: readonly number[]): TextPlace[] {
  let line = 1;
  let start = 0;
  let next = text.indexOf('\n');
  return offsets.map((offset) => {
    for (; next !== -1 && next < offset; next = text.indexOf('\n', next + 1)) {
      line++;
      start = next + 1;
    }
    return { line, column: offset - start + 1 };
  });
}

class Broken extends Error {
  readonly offset: number;
  readonly wanted: string;
  readonly found: string | undefined;
  constructor(offset: number, wanted: string, found?: string) {
    super(wanted);
    this.offset = offset;
    this.wanted = wanted;
    this.found = found;
  }
}

/**
 * Reads through a JSON text without building anything: says where it breaks, and tells of every named value.
 *
 * The platform's own parser words and places its complaints differently in each browser, and keeps silent
 * about a name given twice. Grammar: RFC 8259.
 *
 * @returns the first fault, or nothing where the text is sound.
 */
export function readThroughJson(text: string, onMember: (member: JsonMember) => void): JsonFault | undefined {
  try {
    const end = blank(text, value(text, blank(text, 0), '', 0, onMember));
    if (end < text.length) throw new Broken(end, 'nothing after the closing brace');
    return undefined;
  } catch (thrown) {
    if (!(thrown instanceof Broken)) throw thrown;
    const found = thrown.found ?? (thrown.offset >= text.length ? 'the end of the file' : charAt(text, thrown.offset));
    const [place] = placesOf(text, [thrown.offset]) as [TextPlace];
    return { ...place, found, wanted: thrown.wanted };
  }
}

function charAt(text: string, offset: number): string {
  return JSON.stringify(String.fromCodePoint(text.codePointAt(offset) ?? 0));
}

function blank(text: string, from: number): number {
  let at = from;
  for (;;) {
    const code = text.charCodeAt(at);
    if (code !== 32 && code !== 10 && code !== 13 && code !== 9) return at;
    at++;
  }
}

function value(text: string, at: number, path: string, depth: number, onMember: (member: JsonMember) => void): number {
  if (depth > DEEPEST) throw new Broken(at, `at most ${DEEPEST} levels`, 'groups nested too deep');
  const first = text[at];
  if (first === '{') return members(text, at, path, depth, onMember);
  if (first === '[') return elements(text, at, path, depth, onMember);
  if (first === '"') return textEnd(text, at);
  for (const word of ['true', 'false', 'null']) if (text.startsWith(word, at)) return at + word.length;
  return numberEnd(text, at);
}

function members(text: string, from: number, path: string, depth: number, onMember: (m: JsonMember) => void): number {
  const seen = new Set<string>();
  let at = blank(text, from + 1);
  if (text[at] === '}') return at + 1;
  for (;;) {
    if (text[at] !== '"') throw new Broken(at, 'a name in double quotes');
    const end = textEnd(text, at);
    const key = JSON.parse(text.slice(at, end)) as string;
    const here = path === '' ? key : `${path}.${key}`;
    onMember({ path: here, key, offset: at, repeated: seen.has(key) });
    seen.add(key);
    at = blank(text, end);
    if (text[at] !== ':') throw new Broken(at, 'a colon after the name');
    at = blank(text, value(text, blank(text, at + 1), here, depth + 1, onMember));
    if (text[at] === '}') return at + 1;
    if (text[at] !== ',') throw new Broken(at, 'a comma or a closing brace');
    at = blank(text, at + 1);
  }
}

function elements(text: string, from: number, path: string, depth: number, onMember: (m: JsonMember) => void): number {
  let at = blank(text, from + 1);
  if (text[at] === ']') return at + 1;
  for (let n = 0; ; n++) {
    at = blank(text, value(text, at, `${path}.${n}`, depth + 1, onMember));
    if (text[at] === ']') return at + 1;
    if (text[at] !== ',') throw new Broken(at, 'a comma or a closing bracket');
    at = blank(text, at + 1);
  }
}

const ESCAPE = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;

function textEnd(text: string, from: number): number {
  for (let at = from + 1; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code === 34) return at + 1;
    if (code < 32) throw new Broken(at, 'a closing quote on the same line', 'a line break or control sign in a text');
    if (code === 92) {
      ESCAPE.lastIndex = at;
      if (!ESCAPE.test(text)) throw new Broken(at, 'an escape that JSON knows, such as \\n or \\"');
      at = ESCAPE.lastIndex - 1;
    }
  }
  throw new Broken(text.length, 'a closing quote');
}

const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;

function numberEnd(text: string, at: number): number {
  NUMBER.lastIndex = at;
  if (!NUMBER.test(text))
    throw new Broken(at, 'a value: a number, a text in double quotes, true, false, a list or a group');
  return NUMBER.lastIndex;
}
