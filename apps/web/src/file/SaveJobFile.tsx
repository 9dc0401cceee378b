import type { Job } from '@eaveline/job';
import { saveJobFile } from '../job/saveJobFile.ts';
import { Act, type ActProps } from '../parts/Act.tsx';

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
