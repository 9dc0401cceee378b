import { inflateSync } from 'node:zlib';

export type Stretch = [number, number, number, number];

/** Straight strokes of an SVG file as mm from the bottom left, in the order drawn; arcs are left out. */
export function svgStretches(svg: string): Stretch[] {
  const heightMm = Number(/viewBox="0 0 [\d.]+ ([\d.]+)"/.exec(svg)?.[1]);
  return [...svg.matchAll(/<path class="ev-s [^>]* d="([^"A]*)"/g)].flatMap(([, d]) =>
    pathStretches(d ?? '', heightMm),
  );
}

function pathStretches(d: string, heightMm: number): Stretch[] {
  const points = [...d.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), heightMm - Number(y)]);
  if (d.endsWith('Z')) points.push(points[0] as number[]);
  return points.slice(1).map((to, k) => [...(points[k] as number[]), ...to] as Stretch);
}

/** The unpacked content streams of a PDF's pages. */
export function pdfContents(pdf: Uint8Array): string[] {
  const file = Buffer.from(pdf).toString('latin1');
  return [...file.matchAll(/stream\n([\s\S]*?)\nendstream/g)].flatMap(([, packed]) => {
    try {
      const plain = inflateSync(Buffer.from(packed ?? '', 'latin1')).toString('latin1');
      return plain.includes(' cm\n') ? [plain] : [];
    } catch {
      return []; // a stream that is not packed is no page
    }
  });
}

/** Stroked straight lines of one PDF page as mm from the bottom left, in the order drawn. */
export function pdfStretches(content: string): Stretch[] {
  const flip = /^1 0 0 -1 0 ([\d.]+) cm/m.exec(content);
  const heightPt = Number(flip?.[1]);
  const mm = (pt: number): number => (pt * 25.4) / 72;
  const found: Stretch[] = [];
  let path: [number, number][] = [];
  for (const row of content.split('\n')) {
    const words = row.split(' ');
    const op = words.at(-1);
    if (op === 'm' || op === 'l') path.push([mm(Number(words[0])), mm(heightPt - Number(words[1]))]);
    else if (op === 'h') path.push(path[0] as [number, number]);
    else if (op === 'S') {
      found.push(...path.slice(1).map((to, k): Stretch => [...(path[k] as [number, number]), ...to]));
      path = [];
    } else if (op === 'f*' || op === 'c' || op === 'n') path = [];
  }
  return found;
}

/** Glyph codes of every shown string of a PDF page. 0 is the sign for "missing". */
export function pdfGlyphs(content: string): number[] {
  return [...content.matchAll(/\[([^\]]*)\] TJ/g)].flatMap(([, shown]) =>
    [...(shown ?? '').matchAll(/<([0-9a-f]+)>/g)].flatMap(([, hex]) =>
      [...(hex ?? '').matchAll(/.{4}/g)].map(([code]) => Number.parseInt(code, 16)),
    ),
  );
}

/** Points on every Bézier of a PDF page, nine a curve, mm from the bottom left. */
export function pdfCurvePoints(content: string): [number, number][] {
  const heightPt = Number(/^1 0 0 -1 0 ([\d.]+) cm/m.exec(content)?.[1]);
  let at: [number, number] = [0, 0];
  return content.split('\n').flatMap((row): [number, number][] => {
    const n = row.split(' ').slice(0, -1).map(Number);
    if (row.endsWith(' m') || row.endsWith(' l')) at = [n[0] as number, n[1] as number];
    if (!row.endsWith(' c')) return [];
    const [x, y] = [0, 1].map((k) => [at[k], n[k], n[k + 2], n[k + 4]] as [number, number, number, number]);
    at = [n[4] as number, n[5] as number];
    return Array.from({ length: 9 }, (_, k): [number, number] => [
      (bezier(x as Four, k / 8) * 25.4) / 72,
      ((heightPt - bezier(y as Four, k / 8)) * 25.4) / 72,
    ]);
  });
}

type Four = [number, number, number, number];

function bezier([a, b, c, d]: Four, t: number): number {
  const s = 1 - t;
  return s * s * s * a + 3 * s * s * t * b + 3 * s * t * t * c + t * t * t * d;
}
