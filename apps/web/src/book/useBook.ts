import { useEffect, useState, useSyncExternalStore } from 'react';
import { deviceStore } from '../job/deviceStore.ts';
import { documents } from '../job/documents.ts';
import { jobServer } from '../job/jobServer.ts';
import { browserChannel } from '../job/pageChannel.ts';
import { thisDevice, whoIsHere } from '../job/whoIsHere.ts';
import type { PlanSummary } from '../plan/message.ts';
import { planDesk } from '../plan/planDesk.ts';
import { type Book, type BookDesk, makeBookDesk } from './bookDesk.ts';
import type { ChangeParts } from './changeKept.ts';

const summaries = new Map<string, PlanSummary>();

const begin = () =>
  makeBookDesk({
    store: deviceStore(),
    server: jobServer,
    desk: planDesk(),
    breathe: () => new Promise((resolve) => setTimeout(resolve)),
    later: (call, ms) => void setTimeout(call, ms),
    clockMs: () => performance.now(),
    summaries,
  });

/** Where the acts of the Book keep jobs, and how they change one. */
export const keepParts: ChangeParts = {
  store: deviceStore(),
  server: jobServer,
  documents,
  channel: browserChannel,
  now: () => new Date(),
  later(call, ms) {
    const timer = setTimeout(call, ms);
    return () => clearTimeout(timer);
  },
  here: () => ({ who: whoIsHere(), device: thisDevice() }),
};

/** The Book for as long as its page is shown; it asks again when the page is looked at after the server was away. */
export function useBook(): { readonly book: Book; readonly desk: BookDesk } {
  const [desk, setDesk] = useState(begin);
  useEffect(() => {
    const mine = begin();
    setDesk(mine);
    void mine.open();
    const look = () => {
      if (document.visibilityState === 'visible' && mine.state().server.kind === 'away') void mine.open();
    };
    document.addEventListener('visibilitychange', look);
    addEventListener('online', look);
    return () => {
      document.removeEventListener('visibilitychange', look);
      removeEventListener('online', look);
      mine.close();
    };
  }, []);
  return { book: useSyncExternalStore(desk.subscribe, desk.state), desk };
}
