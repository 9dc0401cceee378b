import type { Job } from '@eaveline/job';
import { useId } from 'react';
import { sayWhoIsHere, useWho } from '../job/whoIsHere.ts';
import styles from './WhoIsHere.module.css';

export interface WhoIsHereProps {
  readonly job: Job;
  /** True while this device has made a step of the job. */
  readonly changed: boolean;
}

/** Who is at this device: the history says it of every change from here on. */
export function WhoIsHere({ job, changed }: WhoIsHereProps) {
  const who = useWho();
  const id = useId();
  const list = useId();
  return (
    <div className={styles.who}>
      <label htmlFor={id}>At this device</label>
      <input
        id={id}
        list={list}
        defaultValue={who}
        key={who}
        autoComplete="off"
        placeholder="your name"
        onBlur={(event) => sayWhoIsHere(event.target.value)}
        onKeyDown={(event) => {
          if (event.key === 'Enter') event.currentTarget.blur();
        }}
      />
      <datalist id={list}>
        {Object.values(job.choices.crew).map(({ name }) => (
          <option key={name} value={name} />
        ))}
      </datalist>
      {changed && who.trim() === '' && <p className={styles.unnamed}>The history has your steps without a name.</p>}
    </div>
  );
}
