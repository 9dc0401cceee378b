import { useEffect, useState, useSyncExternalStore } from 'react';
import { deviceStore } from '../job/deviceStore.ts';
import { jobServer } from '../job/jobServer.ts';
import type { PlanSummary } from '../plan/message.ts';
import { planDesk } from '../plan/planDesk.ts';
import { type Book, type BookDesk, makeBookDesk } from './bookDesk.ts';
import type { KeepParts } from './keepJob.ts';

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

/** Where the acts of the Book keep jobs. */
export const keepParts: KeepParts = { store: deviceStore(), server: jobServer, now: () => new Date() };

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
