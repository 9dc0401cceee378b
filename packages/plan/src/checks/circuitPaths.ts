import type { SourceCircuit } from '../board/types.ts';
import type { MendChange } from '../finding.ts';

/** Job path of the breaker of a source circuit. */
export function breakerPath({ kind, of }: Pick<SourceCircuit, 'kind' | 'of'>): MendChange['path'] {
  return ['choices', kind === 'trunk' ? 'trunks' : 'batteries', of, 'breakerSheet'];
}

/** Job path of the cable of a source circuit. */
export function cablePath({ kind, of }: Pick<SourceCircuit, 'kind' | 'of'>): MendChange['path'] {
  return kind === 'trunk'
    ? ['choices', 'trunks', of, 'homeRun', 'cableSheet']
    : ['choices', 'batteries', of, 'cableSheet'];
}

/** Job path of the way a source circuit runs. */
export function routePath({ kind, of }: Pick<SourceCircuit, 'kind' | 'of'>): MendChange['path'] {
  return kind === 'trunk' ? ['choices', 'trunks', of, 'homeRun', 'route'] : ['choices', 'batteries', of, 'route'];
}
