import { createContext, useContext } from 'react';
import type { JobSession } from '../job/jobSession.ts';

export const SessionContext = createContext<JobSession | undefined>(undefined);

/** The session of the job on the desk, for the few things that are no edit: weather files. */
export function useJobSession(): JobSession {
  const session = useContext(SessionContext);
  if (session === undefined) throw new Error('No job is on the desk here');
  return session;
}
