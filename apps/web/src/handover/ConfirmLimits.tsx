import type { Confirmation } from '@eaveline/job';
import { useState } from 'react';
import { useJob } from '../job/JobContext.tsx';
import { Act } from '../parts/Act.tsx';
import { TypedField } from '../parts/TypedField.tsx';
import { useDevicePerson } from '../parts/useDevicePerson.ts';
import styles from './ConfirmLimits.module.css';
import { confirmationChange, type LimitToConfirm, ruleWords } from './confirming.ts';

export interface ConfirmLimitsProps {
  readonly limits: readonly LimitToConfirm[];
  readonly confirmed: Readonly<Record<string, Confirmation>>;
}

const today = () => {
  const now = new Date();
  const two = (n: number) => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
};

/** Limits known from memory, one by one: a licensed person reads the text and puts a name to it, once for the edition. */
export function ConfirmLimits({ limits, confirmed }: ConfirmLimitsProps) {
  const { job, edit } = useJob();
  const [by, setBy] = useDevicePerson();
  const [licence, setLicence] = useState('');
  const [on, setOn] = useState(today);
  const [refusal, setRefusal] = useState<{ readonly at: 'by' | 'licence' | 'on'; readonly words: string }>();
  const said = (at: 'by' | 'licence' | 'on') => (refusal?.at === at ? refusal.words : undefined);

  function confirm(limit: LimitToConfirm) {
    if (by.trim() === '') return setRefusal({ at: 'by', words: 'Nobody is named.' });
    if (licence.trim() === '') return setRefusal({ at: 'licence', words: 'A limit is confirmed under a licence.' });
    const signer = { by: by.trim(), licence: licence.trim(), on };
    const words = edit([confirmationChange(limit, signer)], `the word for ${limit.name.toLowerCase()}`);
    setRefusal(words === undefined ? undefined : { at: 'on', words });
  }
  const crew = Object.values(job.choices.crew)
    .filter(({ role }) => role !== 'roof hand')
    .map(({ name }) => name);
  const given = Object.entries(confirmed);
  return (
    <>
      {limits.length > 0 && (
        <>
          <p className={styles.how}>
            Read the text of the edition first. A name here says: this limit stands there as it is written below.
          </p>
          <div className={styles.signer}>
            <TypedField label="Licensed person" value={by} onType={setBy} offered={crew} refusal={said('by')} />
            <TypedField label="Licence" value={licence} onType={setLicence} refusal={said('licence')} />
            <TypedField label="On" type="date" value={on} onType={setOn} refusal={said('on')} />
          </div>
          <ul className={styles.limits}>
            {limits.map((limit) => (
              <li key={`${limit.rule}-${limit.edition}`}>
                <div>
                  <b>{limit.name}</b>
                  {limit.says.length > 0 && <span className={styles.says}>{limit.says.join('; ')}</span>}
                  <p className={styles.clause}>
                    {limit.clause}. {limit.edition}.
                  </p>
                </div>
                <Act onPress={() => confirm(limit)} label={`Confirm ${limit.name.toLowerCase()}`}>
                  Confirm
                </Act>
              </li>
            ))}
          </ul>
        </>
      )}
      {given.length > 0 && (
        <ul className={styles.limits}>
          {given.map(([id, { rule, edition, by: who, licence: under, on: day }]) => (
            <li key={id}>
              <div>
                <b>{ruleWords(rule)}</b>
                <p className={styles.clause}>
                  {edition}. Confirmed by {who}
                  {under !== undefined && `, licence ${under}`}, {day}.
                </p>
              </div>
              <Act
                look="plain"
                onPress={() =>
                  edit([{ path: ['choices', 'confirmations', id], value: undefined }], `no word for ${rule}`)
                }
              >
                Take it back
              </Act>
            </li>
          ))}
        </ul>
      )}
    </>
  );
}
