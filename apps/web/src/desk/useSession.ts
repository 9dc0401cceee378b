import { useEffect, useState, useSyncExternalStore } from 'react';
import { jobServer } from '../job/jobServer.ts';
import { type JobSession, makeJobSession, type SessionState } from '../job/jobSession.ts';
import { browserUnsaved } from '../job/unsaved.ts';
import { planDesk } from '../plan/planDesk.ts';

const unsaved = browserUnsaved();

function later(call: () => void, ms: number): () => void {
  const timer = setTimeout(call, ms);
  return () => clearTimeout(timer);
}

function begin(id: string): JobSession {
  return makeJobSession(id, { server: jobServer, unsaved, desk: planDesk(), now: () => new Date(), later });
}

/** The job of an address on the desk, for as long as the page shows it. */
export function useSession(id: string): { readonly session: JobSession; readonly state: SessionState } {
  const [session, setSession] = useState(() => begin(id));
  useEffect(() => {
    const mine = begin(id);
    setSession(mine);
    void mine.open();
    const tryAgain = () => void mine.saveNow();
    addEventListener('online', tryAgain);
    return () => {
      removeEventListener('online', tryAgain);
      void mine.saveNow(); // what waits for its moment goes now
      mine.close();
    };
  }, [id]);
  const state = useSyncExternalStore(session.subscribe, session.state);
  return { session, state };
}
