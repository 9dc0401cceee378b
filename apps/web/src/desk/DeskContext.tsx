import { createContext, useContext } from 'react';
import type { JobSession, OpenJob } from '../job/jobSession.ts';

/** What the pages of an open job share: sheets, history, survey. */
export interface DeskOfJob {
  readonly session: JobSession;
  readonly open: OpenJob;
  /** What became of the last act, in words. */
  readonly said: string | undefined;
  readonly say: (words: string | undefined) => void;
}

export const DeskContext = createContext<DeskOfJob | undefined>(undefined);

/** The open job this page belongs to. */
export function useDesk(): DeskOfJob {
  const desk = useContext(DeskContext);
  if (desk === undefined) throw new Error('No job is on the desk here');
  return desk;
}
