import { type Job, writeJob } from '@eaveline/job';
import { Act } from '../parts/Act.tsx';

export interface SaveJobFileProps {
  readonly job: Job;
}

/** The whole job as one file: what was decided, measured and recorded, and nothing that can be worked out from it. */
export function SaveJobFile({ job }: SaveJobFileProps) {
  function save() {
    const address = URL.createObjectURL(new Blob([writeJob(job)], { type: 'application/json' }));
    const link = document.createElement('a');
    link.href = address;
    link.download = `${job.id}.job.json`;
    link.click();
    URL.revokeObjectURL(address);
  }
  return <Act onPress={save}>Save the job file</Act>;
}
