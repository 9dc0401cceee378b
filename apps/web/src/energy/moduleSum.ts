import type { ModuleEnergy } from '@eaveline/plan';
import type { Sum } from '../pad/subject.ts';
import { figure } from '../words/figure.ts';

/** A loss reads as a loss, a gain as a factor: 0.974 is − 2.6 %. */
function factorWords(factor: number): string {
  return factor < 1 ? `\u2212 ${figure((1 - factor) * 100, 1)} %` : `× ${figure(factor, 3)}`;
}

/** A module's year from sun to board, line under line; the unit stands where it changes. */
export function moduleSum({ ledger, annualKwh }: Pick<ModuleEnergy, 'ledger' | 'annualKwh'>): Sum {
  return {
    lines: ledger.map(({ what, factor, value, unit }, i) => ({
      what,
      factor: factor === undefined ? '' : factorWords(factor),
      value: unit === ledger[i - 1]?.unit ? figure(value, 0) : `${figure(value, 0)} ${unit}`,
    })),
    total: { what: 'at the board in a year', value: `${figure(annualKwh, 0)} kWh` },
  };
}
