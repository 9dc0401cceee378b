import type { ReactNode } from 'react';
import { NoJob } from './NoJob.tsx';
import { OnDesk } from './OnDesk.tsx';
import { useSession } from './useSession.ts';

export interface JobPageProps {
  readonly id: string;
  /** The page of the job: a sheet, its history, its survey. */
  readonly children: ReactNode;
}

/** A job by its address: opened once for all its pages, or plainly said why not. */
export function JobPage({ id, children }: JobPageProps) {
  const { session, state } = useSession(id);
  if (state.kind !== 'open') return <NoJob id={id} state={state} />;
  return (
    <OnDesk session={session} open={state}>
      {children}
    </OnDesk>
  );
}
