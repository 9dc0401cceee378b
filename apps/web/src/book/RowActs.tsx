import { useState } from 'react';
import { SaveJobFile } from '../file/SaveJobFile.tsx';
import { sayWhoIsHere, useWho } from '../job/whoIsHere.ts';
import { Act } from '../parts/Act.tsx';
import { TypedField } from '../parts/TypedField.tsx';
import { planDesk } from '../plan/planDesk.ts';
import styles from './BookPage.module.css';
import type { Answered } from './bookDesk.ts';
import { changeKeptJob } from './changeKept.ts';
import type { BookEntry } from './entry.ts';
import { keepOnDevice, type Outcome, removeFromDevice, sendToServer } from './keepJob.ts';
import { keepParts } from './useBook.ts';

export interface RowActsProps {
  readonly entry: BookEntry;
  readonly server: Answered;
  readonly onDuplicate: () => void;
  /** Does an act; what came of it is said at the head of the sheet. */
  readonly onAct: (act: () => Promise<Outcome>) => void;
}

async function removed(id: string): Promise<Outcome> {
  const outcome = await removeFromDevice(id, keepParts);
  if (outcome.done) await planDesk().forget(id);
  return outcome;
}

/** What can be done with a job from the Book. */
export function RowActs({ entry: { job, where }, server, onDuplicate, onAct }: RowActsProps) {
  const person = useWho();
  const [asked, setAsked] = useState(false);
  const [name, setName] = useState('');
  const archive = (by: string) =>
    onAct(() => {
      const value = { at: new Date().toISOString(), by };
      return changeKeptJob(job, [{ path: ['archived'], value }], `${job.name} is archived.`, keepParts);
    });
  const takeBack = () =>
    onAct(() =>
      changeKeptJob(job, [{ path: ['archived'], value: undefined }], `${job.name} is back on its shelf.`, keepParts),
    );
  const archiveTyped = () => {
    const by = name.trim();
    if (by === '') return;
    sayWhoIsHere(by);
    archive(by);
  };
  return (
    <>
      {job.archived !== undefined && (
        <p className="quiet small">
          Archived by {job.archived.by} on {job.archived.at.slice(0, 10)}.
        </p>
      )}
      <div className={styles.bar}>
        <SaveJobFile job={job} />
        <Act onPress={onDuplicate}>Duplicate</Act>
        {job.archived === undefined ? (
          <Act onPress={() => (person === '' ? setAsked(true) : archive(person))}>Archive</Act>
        ) : (
          <Act onPress={takeBack}>Take back</Act>
        )}
        {where === 'server' && <Act onPress={() => onAct(() => keepOnDevice(job, keepParts))}>Keep on this device</Act>}
        {where === 'device' && server.kind === 'answered' && (
          <Act onPress={() => onAct(() => sendToServer(job, keepParts))}>Send to the server</Act>
        )}
        {where === 'both' && <Act onPress={() => onAct(() => removed(job.id))}>Remove from this device</Act>}
      </div>
      {asked && person === '' && (
        <div className={styles.bar}>
          <TypedField label="Who archives it" value={name} onType={setName} placeholder="name" onEnter={archiveTyped} />
          <Act look="main" onPress={archiveTyped}>
            Archive
          </Act>
        </div>
      )}
      {where === 'device' && (
        <p className="quiet small">
          {server.kind === 'answered'
            ? 'It is kept nowhere else: it cannot be removed from this device before the server has it.'
            : 'Whether the server has it is not known now: it cannot be removed from this device.'}
        </p>
      )}
    </>
  );
}
