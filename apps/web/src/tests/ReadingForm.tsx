import type { TestRow } from '@eaveline/plan';
import { useState } from 'react';
import { useJob } from '../job/JobContext.tsx';
import { Act } from '../parts/Act.tsx';
import { PersonField } from '../parts/PersonField.tsx';
import { readNumber } from '../parts/readNumber.ts';
import { TypedField } from '../parts/TypedField.tsx';
import { useDevicePerson } from '../parts/useDevicePerson.ts';
import styles from './ReadingForm.module.css';
import { isLook, lastInstrument, readingChange, type Taken, unitOf, wantsSun } from './reading.ts';

export interface ReadingFormProps {
  readonly row: TestRow;
  readonly rows: readonly TestRow[];
  /** Where there is one: the test after this, for a phone. */
  readonly onNext?: (() => void) | undefined;
}

/** A reading typed at the meter: value, who, with what. It is added to the records; nothing on record is changed. */
export function ReadingForm({ row, rows, onNext }: ReadingFormProps) {
  const { job, edit } = useJob();
  const { readings } = job.records;
  const [text, setText] = useState('');
  const [sun, setSun] = useState('');
  const [cell, setCell] = useState('');
  const [by, setBy] = useDevicePerson();
  const [instrument, setInstrument] = useState(() => lastInstrument(readings, rows, row.instrument));
  const [refusal, setRefusal] = useState<{ readonly at: 'value' | 'by' | 'with' | 'sun' | 'cell'; words: string }>();
  const unit = unitOf(row);
  const look = isLook(row);
  const people = Object.values(job.choices.crew).map(({ name }) => name);
  const named = people.length === 0 ? by.trim() : people.includes(by) ? by : '';

  function add(value: number, more: Partial<Taken>) {
    const at = new Date();
    const taken = { test: row.id, value, unit, by: named, with: instrument.trim(), ...more };
    const refused = edit([readingChange(readings, taken, at)], `the reading of ${at.toTimeString().slice(0, 8)}`);
    setRefusal(refused === undefined ? undefined : { at: 'value', words: refused });
    if (refused !== undefined) return;
    setText('');
    setSun('');
    setCell('');
  }
  function whoIsMissing(): boolean {
    if (named === '') setRefusal({ at: 'by', words: 'Nobody is named. A reading stands with who took it.' });
    else if (!look && instrument.trim() === '')
      setRefusal({ at: 'with', words: 'No instrument is named. Its number is enough.' });
    else return false;
    return true;
  }
  function keep() {
    const value = readNumber(text, unit);
    if (value.kind !== 'number')
      return setRefusal({
        at: 'value',
        words: value.kind === 'empty' ? 'Nothing is typed yet.' : `${value.text} is no number.`,
      });
    const light = readNumber(sun, 'W/m²');
    if (light.kind === 'words') return setRefusal({ at: 'sun', words: `${light.text} is no number.` });
    const warm = readNumber(cell, '°C');
    if (warm.kind === 'words') return setRefusal({ at: 'cell', words: `${warm.text} is no number.` });
    if (whoIsMissing()) return;
    add(value.value, {
      ...(light.kind === 'number' ? { sunWM2: light.value } : {}),
      ...(warm.kind === 'number' ? { cellC: warm.value } : {}),
    });
  }
  function answer(value: 0 | 1) {
    if (!whoIsMissing()) add(value, {});
  }
  const said = (at: NonNullable<typeof refusal>['at']) => (refusal?.at === at ? refusal.words : undefined);
  const again = row.reading !== undefined;
  return (
    <div className={styles.form}>
      <div className={styles.fields}>
        {!look && (
          <div className={styles.value}>
            <TypedField
              label={again ? 'Read again' : 'Reading'}
              value={text}
              onType={setText}
              onEnter={keep}
              unit={unit}
              inputMode="decimal"
              placeholder="not read"
              refusal={said('value')}
            />
          </div>
        )}
        <PersonField label="By" value={by} people={people} onPick={setBy} refusal={said('by')} />
        <TypedField
          label="With"
          value={instrument}
          onType={setInstrument}
          placeholder={look ? 'where one was used' : 'instrument and number'}
          refusal={said('with')}
        />
        {wantsSun(row) && (
          <>
            <TypedField
              label="Sun in the plane"
              value={sun}
              onType={setSun}
              unit="W/m²"
              inputMode="decimal"
              refusal={said('sun')}
            />
            <TypedField
              label="Cell"
              value={cell}
              onType={setCell}
              unit="°C"
              inputMode="decimal"
              refusal={said('cell')}
            />
          </>
        )}
      </div>
      {look && refusal?.at === 'value' && <p className={styles.refused}>{refusal.words}</p>}
      <div className={styles.acts} data-look={look || undefined}>
        {onNext && <Act onPress={onNext}>Next test</Act>}
        {look ? (
          <>
            <Act onPress={() => answer(0)}>Not so</Act>
            <Act look="main" onPress={() => answer(1)}>
              It is so
            </Act>
          </>
        ) : (
          <Act look="main" onPress={keep}>
            Keep the reading
          </Act>
        )}
      </div>
      <p className={styles.note}>
        {again ? 'It takes the place of the one above, which stays on record.' : 'Kept with this minute.'}
      </p>
    </div>
  );
}
