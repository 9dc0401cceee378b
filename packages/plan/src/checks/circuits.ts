import type { SourceCircuit } from '../board/types.ts';
import type { About } from '../finding.ts';
import { abouts, trunkName } from './abouts.ts';

/** A circuit of the board as a finding names it. */
export function aboutCircuit({ id, kind, name }: SourceCircuit): About {
  // the board calls the circuit of a trunk `Trunk A` by the trunk's name, whether that begins with the word or not
  return abouts.circuit(id, kind === 'trunk' ? trunkName(name.replace(/^Trunk (?=Trunk )/, '')) : name);
}

/** Where a circuit's breaker is chosen. */
export function breakerPath({ kind, of }: SourceCircuit): readonly string[] {
  return ['choices', kind === 'trunk' ? 'trunks' : 'batteries', of, 'breakerSheet'];
}

/** Where a circuit's cable is chosen. */
export function cablePath({ kind, of }: SourceCircuit): readonly string[] {
  return kind === 'trunk'
    ? ['choices', 'trunks', of, 'homeRun', 'cableSheet']
    : ['choices', 'batteries', of, 'cableSheet'];
}
