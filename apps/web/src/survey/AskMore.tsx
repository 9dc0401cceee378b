import type { Asked } from '@eaveline/job';
import { useState } from 'react';
import { Act } from '../parts/Act.tsx';
import { TypedField } from '../parts/TypedField.tsx';
import styles from './Ask.module.css';
import { useFactDesk } from './factDesk.ts';
import { PhotoField } from './PhotoField.tsx';
import { seenWords } from './seenWords.ts';
import type { OnQuestion } from './useAnswer.ts';

export interface AskMoreProps {
  readonly asked: Asked;
  readonly on: OnQuestion;
}

/** Below an answer: who found it, when and with what; opened, the instrument, a note, a photograph, and the way out. */
export function AskMore({ asked, on }: AskMoreProps) {
  const { job } = useFactDesk();
  const [open, setOpen] = useState(false);
  const [why, setWhy] = useState('');
  const { standing, seen } = on;
  const zone = job.facts.site.zone;
  return (
    <div className={styles.more}>
      <p className={styles.seen}>
        <span>{standingWords(on, zone)}</span>
        {standing === 'assumed' && (
          <button type="button" onClick={on.confirm}>
            Seen, it is so
          </button>
        )}
        <button type="button" aria-expanded={open} onClick={() => setOpen(!open)}>
          {open ? 'Less' : 'More'}
        </button>
      </p>
      {open && (
        <div className={styles.opened}>
          {standing === 'answered' && seen !== undefined && (
            <>
              <TypedField
                label="With"
                value={seen.with ?? ''}
                onType={(words) => on.amend({ with: words === '' ? undefined : words })}
                placeholder="instrument and number"
              />
              <TypedField
                label="Note"
                value={seen.note ?? ''}
                onType={(words) => on.amend({ note: words === '' ? undefined : words })}
              />
            </>
          )}
          {standing !== 'assumed' && <PhotoField of={asked.path} what={asked.ask} seen={seen} small />}
          {standing !== 'answered' && !asked.must && (
            <div className={styles.reason}>
              <TypedField
                label="Why it could not be measured"
                value={why}
                onType={setWhy}
                placeholder={standing === 'not measured' ? (seen?.notMeasured ?? '') : 'hatch painted shut'}
              />
              <Act
                onPress={() => {
                  if (why.trim() === '')
                    return on.say('A reason is wanted: whoever reads this has not seen the place.');
                  on.notMeasured(why.trim());
                  setOpen(false);
                }}
              >
                Close it without a value
              </Act>
            </div>
          )}
        </div>
      )}
    </div>
  );
}

function standingWords({ standing, seen }: OnQuestion, zone: string): string {
  switch (standing) {
    case 'answered':
      return seen === undefined ? 'Nobody is named.' : seenWords(seen, zone, new Date());
    case 'assumed':
      return 'The region’s usual. Nobody has looked yet.';
    case 'not measured':
      return `Could not be measured: ${seen?.notMeasured}. ${seen === undefined ? '' : seenWords(seen, zone, new Date())}`;
    case 'open':
      return '';
  }
}
