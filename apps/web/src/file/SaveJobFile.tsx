import type { Job } from '@eaveline/job';
import { Act, type ActProps } from '../parts/Act.tsx';
import { saveJobFile } from './saveText.ts';

export interface SaveJobFileProps {
  readonly job: Job;
  readonly look?: ActProps['look'];
}

/** Saves the job as a file; it needs neither server nor network. */
export function SaveJobFile({ job, look = 'edge' }: SaveJobFileProps) {
  return (
    <Act look={look} onPress={() => saveJobFile(job)}>
      Save job file
    </Act>
  );
}
