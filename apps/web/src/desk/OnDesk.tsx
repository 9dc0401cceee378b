import { type Change, isMendChange, usualAnswer } from '@eaveline/plan';
import { type ReactNode, useCallback, useEffect, useMemo, useState } from 'react';
import { JobContext, type JobOnDesk } from '../job/JobContext.tsx';
import type { JobSession, OpenJob } from '../job/jobSession.ts';
import { askToKeep } from '../offline/askToKeep.ts';
import { DeskContext, type DeskOfJob } from './DeskContext.tsx';
import { SessionContext } from './SessionContext.tsx';

/** A phone has no keys; its head has the step back instead. */
const wayBack = () => (matchMedia('(max-width: 760px)').matches ? 'Undo takes it back.' : 'Z takes it back.');

export interface OnDeskProps {
  readonly session: JobSession;
  readonly open: OpenJob;
  readonly children: ReactNode;
}

/** Lays an open job on the desk for the pages below. */
export function OnDesk({ session, open, children }: OnDeskProps) {
  const [said, say] = useState<string>();
  const { job } = open;
  // where the survey does not say: the region's current practice
  const wiring = job.facts.board.wiring ?? usualAnswer(job, 'board.wiring');

  useEffect(() => {
    if (wiring !== undefined) document.documentElement.dataset.wiring = wiring;
  }, [wiring]);

  const edit = useCallback(
    (changes: readonly Change[], words: string) => {
      void askToKeep();
      return session.edit(changes, words);
    },
    [session],
  );
  const mend = useCallback(
    (changes: readonly Change[], words: string) => {
      // a mend decides; it never says that something was measured or seen
      const strays = !changes.every(isMendChange);
      const refusal = strays ? 'A mend changes choices only.' : edit(changes, words);
      say(refusal === undefined ? `${words.replace(/\.$/, '')}. Done; ${wayBack()}` : `Not taken. ${refusal}`);
    },
    [edit],
  );
  const onDesk = useMemo<JobOnDesk>(() => ({ job, edit, mend }), [job, edit, mend]);
  const desk = useMemo<DeskOfJob>(() => ({ session, open, said, say }), [session, open, said]);
  return (
    <JobContext value={onDesk}>
      <SessionContext value={session}>
        <DeskContext value={desk}>{children}</DeskContext>
      </SessionContext>
    </JobContext>
  );
}
