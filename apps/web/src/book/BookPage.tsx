import { useNavigate } from '@tanstack/react-router';
import { useEffect, useRef, useState } from 'react';
import desk from '../frame/Desk.module.css';
import { PhoneHead } from '../frame/PhoneHead.tsx';
import { nextPaper } from '../frame/paper.ts';
import { SheetFrame } from '../frame/SheetFrame.tsx';
import { KeyList } from '../keys/KeyList.tsx';
import { useKeys } from '../keys/useKeys.ts';
import { Part } from '../parts/Part.tsx';
import { counted } from '../words/count.ts';
import { BookPad } from './BookPad.tsx';
import styles from './BookPage.module.css';
import { BookRow } from './BookRow.tsx';
import { found, SHELVES } from './entry.ts';
import { headOfBook } from './headOfBook.ts';
import { inventedNotice } from './inventedNotice.ts';
import { Shelves } from './Shelves.tsx';
import { useBook } from './useBook.ts';

export interface BookPageProps {
  /** True where one came here to look for a job. */
  readonly find: boolean;
}

/** The Book: all jobs of the firm on their shelves, what stops each, found by typing. */
export function BookPage({ find }: BookPageProps) {
  const { entries, closed, away, listed } = useBook();
  const [words, setWords] = useState('');
  const [shelf, setShelf] = useState<string>();
  const [keysShown, setKeysShown] = useState(false);
  const field = useRef<HTMLInputElement>(null);
  const navigate = useNavigate();
  const showAll = () => {
    setWords('');
    setShelf(undefined);
  };
  useKeys({
    '/': () => field.current?.focus(),
    d: nextPaper,
    '?': () => setKeysShown(true),
    Escape: showAll,
  });
  useEffect(() => {
    document.title = 'The Book · Eaveline';
    if (find) field.current?.focus();
  }, [find]);

  const shown = found(entries, words);
  const shelves = SHELVES.filter(({ name }) => shelf === undefined || name === shelf);
  const first = shown[0];
  const firm = entries[0]?.job.firm.name ?? 'no firm yet';
  return (
    <div className={desk.desk}>
      <PhoneHead title="The Book" aside={listed ? counted(entries.length, 'job') : ''} />
      <Shelves entries={entries} current={shelf} onPick={setShelf} onKeys={() => setKeysShown(true)} />
      <SheetFrame
        no="00"
        head={
          away === undefined
            ? listed
              ? headOfBook(entries)
              : { sentence: 'The Book is being opened.' }
            : { sentence: 'The Book cannot be fetched.', quiet: away }
        }
        cells={[
          { what: 'firm', says: firm, strong: true },
          { what: 'sheet', says: 'The Book', strong: true },
          { what: 'jobs', says: String(entries.length) },
          {
            what: 'modules',
            says: String(entries.reduce((sum, { job }) => sum + Object.keys(job.choices.modules).length, 0)),
          },
          {
            what: 'worked out',
            says: `${entries.filter(({ summary }) => summary !== undefined).length} of ${entries.length}`,
          },
        ]}
        {...inventedNotice(entries)}
      >
        <div className={styles.find}>
          <label htmlFor="find">Find</label>
          <input
            id="find"
            ref={field}
            value={words}
            autoComplete="off"
            placeholder="address, serial, name, state"
            onChange={(event) => setWords(event.target.value)}
            onKeyDown={(event) => {
              if (event.key === 'Escape') field.current?.blur();
              if (event.key === 'Enter' && first !== undefined)
                void navigate({ to: '/job/$id/$sheet', params: { id: first.job.id, sheet: '08' } });
            }}
          />
          <span className="quiet small">press /</span>
        </div>
        {closed.map((line) => (
          <p key={line}>{line}</p>
        ))}
        {shelves.map(({ name, states }) => {
          const here = shown.filter(({ job }) => states.includes(job.state));
          if (here.length === 0) return null;
          return (
            <Part key={name} title={name} count={here.length} ruled>
              <ul>
                {here.map((entry) => (
                  <BookRow key={entry.job.id} entry={entry} selected={words !== '' && entry === first} />
                ))}
              </ul>
            </Part>
          );
        })}
        {listed && words !== '' && shown.length === 0 && <p>No job has “{words}” in it. Esc shows all again.</p>}
      </SheetFrame>
      <BookPad firm={firm} entries={entries} />
      {keysShown && <KeyList onClose={() => setKeysShown(false)} />}
    </div>
  );
}
