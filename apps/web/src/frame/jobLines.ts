import type { Job } from '@eaveline/job';
import { counted, sentence } from '../words/count.ts';

const SYSTEMS = { 'single-phase': 'One phase', 'split-phase': 'Split phase', 'three-phase': 'Three phase' } as const;

/** Between lines, as the trade names a supply: 230/400 V, 120/240 V, 230 V. */
function voltage({ system, nominalV }: Job['facts']['supply']): string {
  switch (system) {
    case 'single-phase':
      return `${nominalV} V`;
    case 'split-phase':
      return `${nominalV}/${nominalV * 2} V`;
    case 'three-phase':
      return `${nominalV}/${Math.round((nominalV * Math.sqrt(3)) / 10) * 10} V`;
  }
}

/** The two quiet lines below a job's name: its supply; its array and what stays lit. */
export function jobLines({ facts: { supply }, choices }: Job): readonly [string, string] {
  const modules = counted(Object.keys(choices.modules).length, 'module');
  const scope = choices.backup === undefined ? 'no backup' : `${choices.backup.scope} backup`;
  return [`${SYSTEMS[supply.system]} ${voltage(supply)}, ${supply.earthing}`, sentence(`${modules}, ${scope}`)];
}
