import { Caution } from './Caution.tsx';

export interface MixedColoursProps {
  /** As the survey found the board. */
  readonly mixed: boolean;
}

/** The caution of a board in which two colour schemes meet, above whatever shows the colours of its wires. */
export function MixedColours({ mixed }: MixedColoursProps) {
  if (!mixed) return null;
  return (
    <Caution
      words="Two colour schemes meet in this board. Prove every conductor before you touch it, and mark it."
      more="Black is neutral in one scheme and live in another: go by the letters, never by the colour alone."
    />
  );
}
