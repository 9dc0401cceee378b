import { designSignature } from '@eaveline/job';
import type { Tally } from '@eaveline/plan';
import { useState } from 'react';
import { useJob } from '../job/JobContext.tsx';
import { Act } from '../parts/Act.tsx';
import { Mark } from '../parts/Mark.tsx';
import { TypedField } from '../parts/TypedField.tsx';
import { useDevicePerson } from '../parts/useDevicePerson.ts';
import styles from './SignDesign.module.css';
import { beforeSigning, signatureChange, standingWords } from './signing.ts';

export interface SignDesignProps {
  readonly tally: Tally;
}

/** A licensed person puts a name to the design as it stands now. Kept with this minute; a later change is noticed. */
export function SignDesign({ tally }: SignDesignProps) {
  const { job, edit } = useJob();
  const [name, setName] = useDevicePerson();
  const [licence, setLicence] = useState('');
  const [refusal, setRefusal] = useState<{ readonly at: 'name' | 'licence'; readonly words: string }>();
  const signature = designSignature(job);
  const stands = signature?.of === 'this design';
  const before = beforeSigning(tally);
  const crew = Object.values(job.choices.crew)
    .filter(({ role }) => role !== 'roof hand')
    .map((person) => person.name);
  const said = (at: 'name' | 'licence') => (refusal?.at === at ? refusal.words : undefined);

  function sign() {
    if (name.trim() === '') return setRefusal({ at: 'name', words: 'Nobody is named.' });
    if (licence.trim() === '') return setRefusal({ at: 'licence', words: 'A design is signed under a licence.' });
    const signer = { name: name.trim(), licence: licence.trim() };
    const refused = edit([signatureChange(job, signer, signature?.id, new Date())], 'the signature of the design');
    setRefusal(refused === undefined ? undefined : { at: 'name', words: refused });
  }
  return (
    <div className={styles.sign}>
      <p className={styles.standing} role="status">
        <Mark state={stands ? 'meets' : 'ask'} size={17} />
        <span className="out-of-sight">{stands ? 'meets: ' : 'ask: '}</span>
        <b>{standingWords(signature)}</b>
      </p>
      {!stands && (
        <>
          <p className={styles.how}>
            A name here says: this design, its facts and its choices, as they stand now. Whoever changes one of them
            afterwards, by hand or by a mend, is asked for a new signature. {before}
          </p>
          <div className={styles.fields}>
            <TypedField label="Licensed person" value={name} onType={setName} offered={crew} refusal={said('name')} />
            <TypedField
              label="Licence number"
              value={licence}
              onType={setLicence}
              refusal={said('licence')}
              onEnter={sign}
            />
            <Act onPress={sign}>{signature === undefined ? 'Sign the design' : 'Sign it again'}</Act>
          </div>
          <p className={styles.how}>Kept with this minute.</p>
        </>
      )}
    </div>
  );
}
