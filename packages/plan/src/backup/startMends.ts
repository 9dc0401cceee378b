import type { Mend } from '../finding.ts';
import type { LineRating } from './lineRatings.ts';
import { roomFor } from './roomFor.ts';
import type { BackedCircuit } from './types.ts';

/** A soft starter cuts the start to a third or a half: common practice, no source. The half is promised, not the third. */
const SOFTENED_SHARE = 0.5;

/** Ways out for a start that is too hard, each worked out: another circuit shed, a soft starter, left off the backup. */
export function startMends(
  circuit: BackedCircuit,
  startVA: number,
  softened: boolean,
  running: readonly BackedCircuit[],
  ratings: readonly LineRating[],
): Mend[] {
  const { availableVA, restVA } = roomFor(circuit, running, ratings);
  const mends: Mend[] = [];
  const shed = shedOne(circuit, startVA, running, ratings);
  if (shed !== undefined) mends.push(shed);
  const softVA = SOFTENED_SHARE * startVA + restVA;
  if (!softened && softVA <= availableVA) {
    mends.push({
      words:
        'Fit a soft starter that holds the start to half. It leaves a quarter of the torque: enough for a pump or a compressor whose pressures have fallen.',
      value: softVA,
    });
  }
  mends.push({
    words: `Leave ${circuit.name} off the backup.`,
    changes: [{ path: ['choices', 'backup', 'circuits', circuit.id, 'moved'], value: false }],
  });
  return mends;
}

/** The lightest other circuit that, shed in island, leaves room for the whole start. */
function shedOne(
  circuit: BackedCircuit,
  startVA: number,
  running: readonly BackedCircuit[],
  ratings: readonly LineRating[],
): Mend | undefined {
  const others = running.filter(({ id }) => id !== circuit.id).sort((a, b) => a.runW - b.runW);
  for (const other of others) {
    const left = running.filter(({ id }) => id !== other.id);
    const { availableVA, restVA } = roomFor(circuit, left, ratings);
    if (startVA + restVA > availableVA) continue;
    return {
      words: `Shed ${other.name} in island.`,
      value: startVA + restVA,
      changes: [
        { path: ['choices', 'backup', 'circuits', other.id, 'moved'], value: true },
        { path: ['choices', 'backup', 'circuits', other.id, 'shed'], value: true },
      ],
    };
  }
  return undefined;
}
