import { Link } from '@tanstack/react-router';
import { useEffect, useState } from 'react';
import { useDesk } from '../desk/DeskContext.tsx';
import { saveJobFile } from '../job/saveJobFile.ts';
import { askToKeep } from '../offline/askToKeep.ts';
import { useAppKept } from '../offline/useAppKept.ts';
import { keepingState, keepingWords, noticeWords } from './keepingWords.ts';
import { LaidAside } from './LaidAside.tsx';
import styles from './Register.module.css';

export interface KeepingFootProps {
  readonly onUndo: () => void;
  readonly onRedo: () => void;
}

/** Where the work is kept, the steps back and forth, the job as a file. */
export function KeepingFoot({ onUndo, onRedo }: KeepingFootProps) {
  const { session, open, say } = useDesk();
  const { keeping, undo, redo, notices, job } = open;
  const waits = keepingState(keeping) === 'waiting';
  const appKept = useAppKept();
  const [promised, setPromised] = useState(true);
  useEffect(() => {
    if (waits) void askToKeep().then(setPromised);
  }, [waits]);
  return (
    <div className={styles.keeping} data-state={keepingState(keeping)}>
      <p role="status">{keepingWords(keeping)}</p>
      {waits && !promised && (
        <p>Where it runs short of room this browser may clear what it keeps: save the job file too.</p>
      )}
      {appKept === false && <p>The app itself is still being kept: until then it opens only with its server.</p>}
      {notices.map((words) => (
        <p key={words}>{noticeWords(words)}</p>
      ))}
      <LaidAside id={job.id} notices={notices} />
      {keeping.apart !== undefined && (
        <>
          <button type="button" onClick={() => void session.keepMine()}>
            Keep mine
          </button>
          <button type="button" onClick={() => void session.takeTheirs()}>
            Take theirs
          </button>
        </>
      )}
      {waits && keeping.apart === undefined && (
        <button type="button" onClick={() => void session.saveNow()}>
          Try again now
        </button>
      )}
      {undo !== undefined && (
        <div>
          <button type="button" onClick={onUndo}>
            Undo: {undo}
          </button>
        </div>
      )}
      {redo !== undefined && (
        <div>
          <button type="button" onClick={onRedo}>
            Redo: {redo.replace(/^(Taken back|Done again): /, '')}
          </button>
        </div>
      )}
      <div>
        <Link to="/job/$id/history" params={{ id: job.id }}>
          History
        </Link>
        <button type="button" onClick={() => say(saveJobFile(job))}>
          Save job file
        </button>
      </div>
    </div>
  );
}
