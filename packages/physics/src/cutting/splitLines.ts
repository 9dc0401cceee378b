import { positive, Refusal, within } from '../refusal.ts';

export interface LineToSplit {
  readonly lengthMm: number;
  /** Stretches of the line where a splice may sit, mm from its start. Left out: anywhere. */
  readonly zonesMm?: readonly (readonly [from: number, to: number])[];
}

export interface SplitLine {
  readonly piecesMm: readonly number[];
  /** From the start of the line. */
  readonly splicesAtMm: readonly number[];
}

export interface SplitOptions {
  readonly stockMm: number;
  /** Shortest piece worth having; common practice 300 mm. */
  readonly minimumPieceMm: number;
  /** Two splices of neighbouring lines are at least this far apart. Default 0: they may coincide. */
  readonly staggerMm?: number;
}

/**
 * Splits lines longer than the stock into pieces joined by splices.
 *
 * From the start of the line each splice goes as far out as stock, zones, shortest piece and the neighbouring
 * line's splices allow, with a step back where that leaves no way to the end. Fewest pieces follow, for the
 * furthest reach is tried first. Pieces are not chosen for what suits the saw: the cutting comes after.
 *
 * @throws {Refusal} `not-positive`, `no-solution` for a line no splices can serve.
 */
export function splitLines(lines: readonly LineToSplit[], options: SplitOptions): SplitLine[] {
  const stockMm = positive(options.stockMm, 'stockMm', 'Give the stock length.');
  const leastMm = within(options.minimumPieceMm, 0, stockMm, 'minimumPieceMm', 'Shorter than the stock.');
  const apartMm = within(options.staggerMm ?? 0, 0, stockMm, 'staggerMm', 'Shorter than the stock.');
  const done: SplitLine[] = [];
  lines.forEach((line, i) => {
    positive(line.lengthMm, `lines[${i}].lengthMm`, 'Give the length of the rail line.');
    const neighbour = apartMm > 0 && i > 0 ? done[i - 1].splicesAtMm : [];
    const splicesAtMm = walk(line, 0, { stockMm, leastMm, apartMm, neighbour, deadMm: new Set() });
    if (!splicesAtMm) {
      throw new Refusal({
        code: 'no-solution',
        at: `lines[${i}]`,
        got: line.lengthMm,
        want: 'splice zones within reach of each other',
        mend: 'Widen the splice zones, move a foot, or take longer stock.',
      });
    }
    const ends = [0, ...splicesAtMm, line.lengthMm];
    done.push({ splicesAtMm, piecesMm: ends.slice(1).map((at, k) => at - ends[k]) });
  });
  return done;
}

interface Rules {
  readonly stockMm: number;
  readonly leastMm: number;
  readonly apartMm: number;
  readonly neighbour: readonly number[];
  /** Splices of this line from which no way leads to its end, mm: each is tried once, else steps back multiply. */
  readonly deadMm: Set<number>;
}

function walk(line: LineToSplit, fromMm: number, rules: Rules): number[] | undefined {
  if (line.lengthMm - fromMm <= rules.stockMm) return [];
  const nearest = fromMm + Math.max(rules.leastMm, 1e-6);
  const furthest = Math.min(fromMm + rules.stockMm, line.lengthMm - rules.leastMm);
  for (const at of candidates(line, nearest, furthest, rules)) {
    if (rules.deadMm.has(at)) continue;
    const rest = walk(line, at, rules);
    if (rest) return [at, ...rest];
    rules.deadMm.add(at);
  }
  return undefined;
}

/** The furthest allowed place in every zone within reach, furthest zone first. */
function candidates(line: LineToSplit, nearest: number, furthest: number, rules: Rules): number[] {
  const found: number[] = [];
  for (const [from, to] of line.zonesMm ?? [[0, line.lengthMm]]) {
    const low = Math.max(from, nearest);
    const tries = [Math.min(to, furthest)];
    // beside a neighbour's splice: just clear of it on either side
    for (const n of rules.neighbour) tries.push(Math.min(to, furthest, n - rules.apartMm), n + rules.apartMm);
    for (const at of tries) {
      const clear = rules.neighbour.every((n) => Math.abs(n - at) >= rules.apartMm - 1e-9);
      if (at >= low && at <= Math.min(to, furthest) && clear) found.push(at);
    }
  }
  return [...new Set(found)].sort((a, b) => b - a);
}
