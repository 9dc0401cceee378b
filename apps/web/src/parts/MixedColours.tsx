import type { Job } from '@eaveline/job';
import { Caution } from './Caution.tsx';

export interface MixedColoursProps {
  readonly job: Job;
}

/** The caution of a board in which two colour schemes meet, above whatever shows the colours of its wires. */
export function MixedColours({ job }: MixedColoursProps) {
  if (!job.facts.board.wiringMixed) return null;
  return (
    <Caution
      words="Two colour schemes meet in this board. Prove every conductor before you touch it, and mark it."
      more="Black is neutral in one scheme and live in another: go by the letters, never by the colour alone."
    />
  );
}
