import { idFrom, type Job } from '@eaveline/job';
import { useEffect, useRef, useSyncExternalStore } from 'react';
import { type Brought, filesDesk } from '../file/filesDesk.ts';
import { RemarkList } from '../file/RemarkList.tsx';
import { Act } from '../parts/Act.tsx';
import { Part } from '../parts/Part.tsx';
import { counted, sentence } from '../words/count.ts';
import styles from './BookPage.module.css';
import { takeNewerState } from './changeKept.ts';
import type { BookEntry } from './entry.ts';
import { type FileStanding, fileStanding } from './fileAnswer.ts';
import { keepNewJob } from './keepJob.ts';
import { keepParts } from './useBook.ts';

export interface FilesBroughtProps {
  readonly entries: readonly BookEntry[];
  /** False while it is not known yet which jobs are here. */
  readonly ready: boolean;
  readonly isTaken: (id: string) => boolean;
  /** A job was kept or changed: its row is read anew. */
  readonly onKept: (id: string) => void;
}

/** Files that were opened or let go over the page: what became of each, and what is asked about it. */
export function FilesBrought({ entries, ready, isTaken, onKept }: FilesBroughtProps) {
  const brought = useSyncExternalStore(filesDesk.subscribe, filesDesk.state);
  const begun = useRef(new Set<number>());
  const list = useRef<HTMLUListElement>(null);
  const last = brought.at(-1)?.no;
  // it was let go anywhere, and what became of it stands at the head of the sheet
  useEffect(() => {
    if (last !== undefined) list.current?.lastElementChild?.scrollIntoView({ block: 'nearest' });
  }, [last]);
  const standingOf = (job: Job) => fileStanding(job, entries.find((entry) => entry.job.id === job.id)?.job, isTaken);

  // a file whose job is not here is kept without a question; one whose very job is here needs nothing
  useEffect(() => {
    if (!ready) return;
    for (const { no, job, said } of brought) {
      if (job === undefined || said !== undefined || begun.current.has(no)) continue;
      const standing = standingOf(job);
      if (standing.kind !== 'new' && standing.kind !== 'same') continue;
      begun.current.add(no);
      if (standing.kind === 'same') filesDesk.say(no, `It is the same as ${job.name} here. Nothing was changed.`);
      else void keep(no, job);
    }
  });

  async function keep(no: number, job: Job) {
    const { words } = await keepNewJob(job, keepParts);
    filesDesk.say(no, words);
    onKept(job.id);
  }

  async function takeAsNewer(no: number, file: Job, here: Job) {
    const { words } = await takeNewerState(here, file, `${file.name} stands as the file has it.`, keepParts);
    filesDesk.say(no, words);
    onKept(file.id);
  }

  if (brought.length === 0) return null;
  const line = (each: Brought) => (
    <li key={each.no} className={styles.file}>
      <FileLine
        brought={each}
        standing={each.job && ready ? standingOf(each.job) : undefined}
        onNewer={takeAsNewer}
        onBoth={(no, job) => {
          const id = idFrom(job.id, isTaken);
          void keep(no, { ...job, id, name: `${job.name}, from a file` });
        }}
      />
    </li>
  );
  const refused = brought.filter(({ job }) => job === undefined);
  const folded = refused.slice(0, Math.max(0, refused.length - FIRST));
  return (
    <Part title="Files opened" count={brought.length} ruled>
      {folded.length > 0 && (
        <details>
          <summary>{sentence(counted(folded.length, 'more file', 'more files'))} did not open</summary>
          <ul>{folded.map(line)}</ul>
          <Act onPress={() => folded.forEach(({ no }) => void filesDesk.putAway(no))}>Put these away</Act>
        </details>
      )}
      <ul ref={list}>{brought.filter((each) => !folded.includes(each)).map(line)}</ul>
    </Part>
  );
}

/** So many remarks of a file, and so many files, stand open; the rest is folded, so that the shelves stay in sight. */
const FIRST = 2;

interface FileLineProps {
  readonly brought: Brought;
  /** Undefined while it is not known which jobs are here, and where the file does not open. */
  readonly standing: FileStanding | undefined;
  readonly onNewer: (no: number, file: Job, here: Job) => void;
  readonly onBoth: (no: number, file: Job) => void;
}

function FileLine({ brought, standing, onNewer, onBoth }: FileLineProps) {
  const { no, fileName, job, remarks, said } = brought;
  if (job === undefined)
    return (
      <>
        <p role="status">
          <b>{fileName} does not open.</b> Nothing of it was taken.
        </p>
        <RemarkList remarks={remarks.slice(0, FIRST)} />
        {remarks.length > FIRST && (
          <details>
            <summary>{remarks.length - FIRST} more remarks</summary>
            <RemarkList remarks={remarks.slice(FIRST)} />
          </details>
        )}
        <div className={styles.bar}>
          <Act onPress={() => filesDesk.putAway(no)}>Put away</Act>
        </div>
      </>
    );
  const question = said === undefined && (standing?.kind === 'other state' || standing?.kind === 'closed') && standing;
  return (
    <>
      <p role="status">
        <b>{fileName}</b> {said ?? (question ? question.words : 'It is being looked at.')}
      </p>
      {remarks.length > 0 && <RemarkList remarks={remarks} />}
      <div className={styles.bar}>
        {question && question.kind === 'other state' && (
          <Act onPress={() => onNewer(no, job, question.here)}>Take it as the newer state of the job here</Act>
        )}
        {question && (
          <>
            <Act onPress={() => onBoth(no, job)}>Keep both</Act>
            <Act onPress={() => filesDesk.say(no, 'It was left. The job here stays as it is.')}>Leave it</Act>
          </>
        )}
        {!question && <Act onPress={() => filesDesk.putAway(no)}>Put away</Act>}
      </div>
    </>
  );
}
