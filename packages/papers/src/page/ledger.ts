import { letteringOf, line, text } from '../drawing/make.ts';
import type { Item } from '../drawing/model.ts';
import { fit } from '../type/wrap.ts';
import { type Part, stacked, whole } from './block.ts';

/** One line of a sum: what, by which factor or from what, and the running value. */
export interface LedgerLine {
  readonly what: string;
  readonly factor?: string;
  readonly value: string;
  /** A line drawn above it: a sum so far. */
  readonly ruled?: boolean;
}

export interface Ledger {
  readonly lines: readonly LedgerLine[];
  readonly total: LedgerLine;
}

const ROW = 5.4;
const CAP = 2.5;

/** A sum: one rule above its total and a double rule below. The total never stands without a line above it. */
export function ledger({ lines, total }: Ledger): Part {
  const rows = lines.map((entry) => row(entry, false));
  const last = lines.at(-1);
  const closing = whole(last === undefined ? ROW + 1.6 : 2 * ROW + 1.6, (at, widthMm) => {
    const parts = last === undefined ? [totalRow(total)] : [row(last, false), totalRow(total)];
    return stacked(parts, at, widthMm, Number.POSITIVE_INFINITY).items;
  });
  const parts = [...rows.slice(0, -1), closing];
  return (topLeft, widthMm, roomMm) => stacked(parts, topLeft, widthMm, roomMm);
}

function row(entry: LedgerLine, bold: boolean): Part {
  return whole(ROW, ([x, top], widthMm): Item[] => {
    const y = top - (ROW + CAP) / 2;
    const weight = bold ? 700 : 400;
    const valueX = x + widthMm - 0.5;
    const factorX = x + widthMm * 0.76;
    const room = (entry.factor === undefined ? widthMm * 0.76 : widthMm * 0.5) - 1;
    const { lines, ...lettering } = fit(entry.what, room, [CAP], { weight });
    return [
      ...(entry.ruled ? [line([x, top], [x + widthMm, top], { layer: 'TEXT', pen: 0.35 })] : []),
      text(lines[0] ?? '', [x + 0.5, y], lettering),
      ...(entry.factor === undefined
        ? []
        : [text(entry.factor, [factorX, y], { ...letteringOf({ capMm: CAP }), anchor: 'end', ink: 'quiet' })]),
      text(entry.value, [valueX, y], { capMm: CAP, weight, anchor: 'end' }),
    ];
  });
}

function totalRow(entry: LedgerLine): Part {
  return whole(ROW + 1.6, ([x, top], widthMm): Item[] => {
    const under = top - ROW;
    const rule = (y: number): Item => line([x, y], [x + widthMm, y], { layer: 'TEXT', pen: 0.35 });
    return [...row({ ...entry, ruled: true }, true)([x, top], widthMm, ROW).items, rule(under), rule(under - 0.8)];
  });
}
