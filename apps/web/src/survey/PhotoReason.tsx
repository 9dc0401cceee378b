import { photoReason, seenAt, type WantedPhoto } from '@eaveline/job';
import { useState } from 'react';
import { useJob } from '../job/JobContext.tsx';
import { whoIsHere } from '../job/whoIsHere.ts';
import { Act } from '../parts/Act.tsx';
import { TypedField } from '../parts/TypedField.tsx';
import { changesOf } from './factDesk.ts';
import styles from './Survey.module.css';
import { seenWords } from './seenWords.ts';

export interface PhotoReasonProps {
  readonly photo: WantedPhoto;
}

/** Where a photograph could not be taken: why, and who says so. */
export function PhotoReason({ photo }: PhotoReasonProps) {
  const { job, edit } = useJob();
  const [open, setOpen] = useState(false);
  const [why, setWhy] = useState('');
  const [refusal, setRefusal] = useState<string>();
  const at = photoReason(photo.of);
  const reason = seenAt(job, at);
  if (seenAt(job, photo.of)?.photo !== undefined) return null;
  if (reason !== undefined)
    return (
      <p className={styles.looked}>
        Not photographed: {reason.notMeasured}. {seenWords(reason, job.facts.site.zone, new Date())}
      </p>
    );
  function keep() {
    const by = whoIsHere();
    if (why.trim() === '') return setRefusal('A reason is wanted.');
    if (by === '') return setRefusal('Nobody is named.');
    const seen = { by, at: new Date().toISOString(), notMeasured: why.trim() };
    setRefusal(edit(changesOf({ facts: {}, seen: { [at]: seen } }), `No photograph. ${photo.what}`));
  }
  return (
    <div className={styles.photoReason}>
      <button type="button" aria-expanded={open} onClick={() => setOpen(!open)}>
        No photograph
      </button>
      {open && (
        <>
          <TypedField label="Why not" value={why} onType={setWhy} onEnter={keep} refusal={refusal} />
          <Act onPress={keep}>Close it without one</Act>
        </>
      )}
    </div>
  );
}
