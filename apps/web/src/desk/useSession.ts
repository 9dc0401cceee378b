import type { SheetNo } from '@eaveline/plan';
import { useEffect, useState, useSyncExternalStore } from 'react';
import { deviceStore } from '../job/deviceStore.ts';
import { documents } from '../job/documents.ts';
import { jobServer } from '../job/jobServer.ts';
import { type JobSession, makeJobSession, type SessionState } from '../job/jobSession.ts';
import { wouldBeLost } from '../job/keeping.ts';
import { browserChannel } from '../job/pageChannel.ts';
import { thisDevice, whoIsHere } from '../job/whoIsHere.ts';
import { planDesk } from '../plan/planDesk.ts';
import { DRAWN_FROM } from './sheetStages.ts';

function later(call: () => void, ms: number): () => void {
  const timer = setTimeout(call, ms);
  return () => clearTimeout(timer);
}

function begin(id: string): JobSession {
  return makeJobSession(id, {
    server: jobServer,
    store: deviceStore(),
    documents,
    channel: browserChannel(id),
    desk: planDesk(),
    here: () => ({ who: whoIsHere(), device: thisDevice() }),
    now: () => new Date(),
    later,
  });
}

/** Sessions opened before their page stood. */
const early = new Map<string, JobSession>();

/**
 * Opens a job while its page is still being set up; the page takes it over.
 *
 * @param sheet  the one the page opens with: what it is drawn from is worked out first.
 */
export function openEarly(id: string, sheet: SheetNo): void {
  planDesk().lookAt(DRAWN_FROM[sheet]);
  const session = begin(id);
  early.set(id, session);
  void session.open();
}

/** The job of an address on the desk, for as long as one of its pages is shown. */
export function useSession(id: string): { readonly session: JobSession; readonly state: SessionState } {
  const [session, setSession] = useState(() => early.get(id) ?? begin(id));
  useEffect(() => {
    const opened = early.get(id);
    early.delete(id);
    const mine = opened ?? begin(id);
    setSession(mine);
    if (opened === undefined) void mine.open();
    const tryAgain = () => void mine.saveNow();
    const ask = (event: BeforeUnloadEvent) => {
      const state = mine.state();
      if (state.kind === 'open' && wouldBeLost(state.keeping)) event.preventDefault();
    };
    addEventListener('online', tryAgain);
    addEventListener('beforeunload', ask);
    return () => {
      removeEventListener('online', tryAgain);
      removeEventListener('beforeunload', ask);
      void mine.saveNow().finally(() => mine.close()); // what waits for its moment goes now
    };
  }, [id]);
  const state = useSyncExternalStore(session.subscribe, session.state);
  return { session, state };
}
