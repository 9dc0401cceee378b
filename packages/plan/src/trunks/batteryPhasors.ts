import type { Choices } from '@eaveline/job';
import { exportPhasors, type Phasors } from '@eaveline/physics';
import { sheetOf } from '../equipment.ts';
import { terminalOf } from './layDrops.ts';

/**
 * What all batteries push through the mains when they give their continuous rating.
 *
 * A battery on two lines of a split-phase board stands between them; on more lines else it shares itself evenly.
 */
export function batteryPhasors(
  batteries: Choices['batteries'],
  equipment: Choices['equipment'],
  lineToLine: boolean,
  voltage: Phasors,
): { readonly current: Phasors; readonly ratedVA: number } {
  let ratedVA = 0;
  const sources = Object.values(batteries).flatMap((battery) => {
    const { continuousVA } = sheetOf(equipment, battery.sheet, 'battery');
    ratedVA += continuousVA;
    const [first, second] = battery.lines;
    if (lineToLine && first !== undefined && second !== undefined) {
      return [{ from: terminalOf(first), to: terminalOf(second), powerW: continuousVA }];
    }
    return battery.lines.map((line) => ({
      from: terminalOf(line),
      to: 'N' as const,
      powerW: continuousVA / battery.lines.length,
    }));
  });
  return { current: exportPhasors(sources, voltage), ratedVA };
}
