import type { Job } from '@eaveline/job';
import { useState } from 'react';
import { sayWhoIsHere, useWho } from '../job/whoIsHere.ts';
import { Act } from '../parts/Act.tsx';
import { TypedField } from '../parts/TypedField.tsx';
import { useNarrow } from '../parts/useNarrow.ts';
import styles from './AskWho.module.css';

export interface AskWhoProps {
  readonly job: Job;
  /** True while this device has made a step of the job. */
  readonly changed: boolean;
}

/** For as long as the page stands: who would not say once is not asked on every sheet. */
let declined = false;

/** On a phone: asks for a name at the first step that has none. On a wide page the register has the field in sight. */
export function AskWho({ job, changed }: AskWhoProps) {
  const who = useWho();
  const narrow = useNarrow();
  const [name, setName] = useState('');
  const [left, setLeft] = useState(declined);
  if (!narrow || left || !changed || who.trim() !== '') return null;
  const keep = () => {
    if (name.trim() !== '') sayWhoIsHere(name.trim());
  };
  return (
    <section className={styles.ask} aria-label="Who is here">
      <TypedField
        label="Who is at this phone? The history names who did what"
        value={name}
        onType={setName}
        placeholder="name"
        offered={Object.values(job.choices.crew).map((each) => each.name)}
        onEnter={keep}
      />
      <div className={styles.acts}>
        <Act look="main" onPress={keep}>
          Keep the name
        </Act>
        <Act
          onPress={() => {
            declined = true;
            setLeft(true);
          }}
        >
          Not now
        </Act>
      </div>
    </section>
  );
}
