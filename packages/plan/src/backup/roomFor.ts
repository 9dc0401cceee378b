import { lineVA } from './backedCircuits.ts';
import type { LineRating } from './lineRatings.ts';
import type { BackedCircuit } from './types.ts';

/** What the batteries give a motor for the seconds of a start, on its scarcest line, counted over all its lines. */
export function roomFor(circuit: BackedCircuit, running: readonly BackedCircuit[], ratings: readonly LineRating[]) {
  const rest = running.filter(({ id }) => id !== circuit.id);
  const n = circuit.lines.length;
  const byLine = circuit.lines.map((line) => ({
    line,
    peakVA: ratings.find((rating) => rating.line === line)?.peakVA ?? 0,
    restVA: lineVA(rest, line),
  }));
  const scarce = byLine.reduce((worst, here) =>
    here.peakVA - here.restVA < worst.peakVA - worst.restVA ? here : worst,
  );
  return { availableVA: n * scarce.peakVA, restVA: n * scarce.restVA, line: scarce.line };
}
