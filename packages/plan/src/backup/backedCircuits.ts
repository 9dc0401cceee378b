import type { BackupChoice, CircuitFacts } from '@eaveline/job';
import type { Line } from '../trunks/types.ts';
import type { BackedCircuit } from './types.ts';

/**
 * Every circuit of the house and where it stands in island.
 *
 * A whole-house backup takes everything that is not expressly left off, on the lines it stands on. A part backup
 * takes what is moved: a circuit whose lines are kept alive stays on them; a circuit of one line goes to the kept line
 * with the least load, heaviest circuit first; a circuit of several lines that are not all kept alive cannot be fed.
 */
export function backedCircuits(
  circuits: Readonly<Record<string, CircuitFacts>>,
  backup: BackupChoice,
): readonly BackedCircuit[] {
  const loadVA = new Map<Line, number>(backup.lines.map((line) => [line, 0]));
  const kept = (lines: readonly Line[]) => lines.every((line) => backup.lines.includes(line));
  const placed = new Map<string, BackedCircuit>();
  const heaviestFirst = Object.entries(circuits).sort(
    ([idA, a], [idB, b]) => Number(kept(b.lines)) - Number(kept(a.lines)) || b.runW - a.runW || (idA < idB ? -1 : 1),
  );
  for (const [id, circuit] of heaviestFirst) {
    const choice = backup.circuits[id];
    const moved = choice?.moved ?? backup.scope === 'whole';
    const mayShift = moved && backup.scope === 'part' && circuit.lines.length === 1 && !kept(circuit.lines);
    const lines = mayShift ? [leastLoaded(loadVA)] : circuit.lines;
    const fed = moved && kept(lines);
    const shed = choice?.shed ?? false;
    if (fed && !shed) {
      for (const line of lines) loadVA.set(line, (loadVA.get(line) ?? 0) + circuit.runW / lines.length);
    }
    const { name, runW, nightW } = circuit;
    placed.set(id, { id, name, lines, standsOn: circuit.lines, runW, nightW, moved, shed, fed });
  }
  return Object.keys(circuits).map((id) => placed.get(id) as BackedCircuit);
}

function leastLoaded(loadVA: ReadonlyMap<Line, number>): Line {
  return [...loadVA].reduce((least, here) => (here[1] < least[1] ? here : least))[0];
}

/** Circuits that run in island: fed and not shed. */
export function runningOf(circuits: readonly BackedCircuit[]): readonly BackedCircuit[] {
  return circuits.filter((circuit) => circuit.fed && !circuit.shed);
}

/** Volt-amperes of circuits on one line: a circuit on several lines loads each with an equal part. */
export function lineVA(circuits: readonly BackedCircuit[], line: Line): number {
  return circuits
    .filter((circuit) => circuit.lines.includes(line))
    .reduce((sum, circuit) => sum + circuit.runW / circuit.lines.length, 0);
}

/** Ids of circuits somebody counts on that stay dark. */
export function leftDark(
  circuits: readonly BackedCircuit[],
  facts: Readonly<Record<string, CircuitFacts>>,
): readonly string[] {
  return circuits
    .filter(({ id, moved, shed, fed }) => (moved && !fed) || (facts[id]?.wanted === 'must stay on' && (!fed || shed)))
    .map(({ id }) => id);
}
