import type { Job } from '@eaveline/job';
import type { Change } from '@eaveline/plan';
import { createContext, useContext } from 'react';

/** The job on the desk, and the one way to change it. */
export interface JobOnDesk {
  readonly job: Job;
  /** Gives back why not, in words, where the change is not taken. */
  readonly edit: (changes: readonly Change[], words: string) => string | undefined;
  /** Takes a mend; where it is not taken the sheet says why. */
  readonly mend: (changes: readonly Change[], words: string) => void;
}

export const JobContext = createContext<JobOnDesk | undefined>(undefined);

/** The job on the desk; only below a desk with an open job. */
export function useJob(): JobOnDesk {
  const onDesk = useContext(JobContext);
  if (onDesk === undefined) throw new Error('No job is on the desk here');
  return onDesk;
}
