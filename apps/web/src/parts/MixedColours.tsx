import { mixedColours } from '@eaveline/job';
import { Caution } from './Caution.tsx';

export interface MixedColoursProps {
  /** As the survey found the board. */
  readonly mixed: boolean;
}

/** The caution of a board in which two colour schemes meet, above whatever shows the colours of its wires. */
export function MixedColours({ mixed }: MixedColoursProps) {
  return mixed ? <Caution words={mixedColours.head} more={mixedColours.body} /> : null;
}
