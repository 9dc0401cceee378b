import type { BackupChoice, CircuitFacts } from '@eaveline/job';
import type { CheckContext } from './context.ts';

export interface MovedCircuit {
  readonly id: string;
  readonly facts: CircuitFacts;
  readonly choice: BackupChoice['circuits'][string];
}

/** Circuits moved to the backed-up side that the survey knows. */
export function movedCircuits({ choices, facts }: Pick<CheckContext, 'choices' | 'facts'>): readonly MovedCircuit[] {
  return Object.entries(choices.backup?.circuits ?? {}).flatMap(([id, choice]) => {
    const circuit = facts.loads.circuits[id];
    return choice.moved && circuit !== undefined ? [{ id, facts: circuit, choice }] : [];
  });
}
