import { type Job, regions } from '@eaveline/job';
import { useNavigate } from '@tanstack/react-router';
import { useEffect, useMemo, useRef, useState } from 'react';
import { OpenFile } from '../file/OpenFile.tsx';
import desk from '../frame/Desk.module.css';
import { PhoneHead } from '../frame/PhoneHead.tsx';
import { nextPaper } from '../frame/paper.ts';
import { SheetFrame } from '../frame/SheetFrame.tsx';
import { KeyList } from '../keys/KeyList.tsx';
import { useKeys } from '../keys/useKeys.ts';
import { Act } from '../parts/Act.tsx';
import { counted, sentence } from '../words/count.ts';
import { BookList } from './BookList.tsx';
import { BookPad } from './BookPad.tsx';
import styles from './BookPage.module.css';
import { ClosedRows } from './ClosedRows.tsx';
import { DuplicateJob } from './DuplicateJob.tsx';
import { ARCHIVED, SHELVES } from './entry.ts';
import { FilesBrought } from './FilesBrought.tsx';
import { find } from './find.ts';
import { firmOf } from './firmOf.ts';
import { headOfBook } from './headOfBook.ts';
import { inventedNotice } from './inventedNotice.ts';
import { keepNewJob, keepOnDevice, type Outcome } from './keepJob.ts';
import { keptWords } from './keptWords.ts';
import { NewJob } from './NewJob.tsx';
import { PlainPick } from './PlainPick.tsx';
import { Shelves } from './Shelves.tsx';
import { keepParts, useBook } from './useBook.ts';

type Panel = { readonly kind: 'new' } | { readonly kind: 'duplicate'; readonly job: Job };

export interface BookPageProps {
  /** True where one came here to look for a job. */
  readonly find: boolean;
}

/** The Book: all jobs of the firm on their shelves, what stops each, found by typing; and the files they come from. */
export function BookPage({ find: toFind }: BookPageProps) {
  const { book, desk: books } = useBook();
  const { entries, closed, device, server } = book;
  const [words, setWords] = useState('');
  const [shelf, setShelf] = useState<string>();
  const [panel, setPanel] = useState<Panel>();
  const [said, setSaid] = useState<string>();
  const [keysShown, setKeysShown] = useState(false);
  const field = useRef<HTMLInputElement>(null);
  const panelAt = useRef<HTMLDivElement>(null);
  const navigate = useNavigate();
  const showAll = () => {
    setWords('');
    setShelf(undefined);
    setPanel(undefined);
  };
  useKeys({
    '/': () => field.current?.focus(),
    d: nextPaper,
    '?': () => setKeysShown(true),
    Escape: showAll,
  });
  useEffect(() => {
    document.title = 'The Book · Eaveline';
    if (toFind) field.current?.focus();
  }, [toFind]);

  // what an act opens or says stands at the head of the sheet, and the row may be far down
  useEffect(() => {
    if (panel === undefined) return;
    panelAt.current?.scrollIntoView({ block: 'start' });
    panelAt.current?.querySelector('input')?.focus({ preventScroll: true });
  }, [panel]);
  useEffect(() => {
    if (said !== undefined) document.querySelector('#sheet [role="status"]')?.scrollIntoView({ block: 'nearest' });
  }, [said]);

  const { hits, slip } = useMemo(() => find(entries, words), [entries, words]);
  const looked = words.trim() !== '';
  const shelves = [...SHELVES, ARCHIVED].filter(({ name }) =>
    shelf === undefined ? looked || name !== ARCHIVED.name : name === shelf,
  );
  const shown = hits.filter(({ entry }) => shelves.some(({ holds }) => holds(entry.job)));
  const first = looked ? shown[0] : undefined;
  const firm = useMemo(() => firmOf(entries.map(({ job }) => job.firm.name)), [entries]);
  const onServerOnly = entries.filter(({ where }) => where === 'server');
  const ready = device.kind !== 'asking' && server.kind !== 'asking';
  const isTaken = (id: string) => entries.some(({ job }) => job.id === id) || closed.some((each) => each.id === id);

  const act = async (id: string, does: () => Promise<Outcome>) => {
    const { words: became } = await does();
    await books.again(id);
    setSaid(became);
  };
  const keepAll = async () => {
    const outcomes: Outcome[] = [];
    for (const { job } of onServerOnly) outcomes.push(await keepOnDevice(job, keepParts));
    const refused = outcomes.filter(({ done }) => !done).map(({ words: why }) => why);
    const kept = outcomes.length - refused.length;
    const took =
      kept === 0 ? [] : [`${sentence(counted(kept, 'job'))} ${kept === 1 ? 'is' : 'are'} kept on this device too.`];
    setSaid([...took, ...refused].join(' '));
    await books.open();
  };
  const made = async (job: Job, opens: boolean) => {
    const outcome = await keepNewJob(job, keepParts);
    setSaid(outcome.words);
    if (!outcome.done) return;
    setPanel(undefined);
    if (opens) await navigate({ to: '/job/$id/survey', params: { id: job.id } });
    else await books.again(job.id);
  };

  return (
    <div className={desk.desk}>
      <PhoneHead title="The Book" aside={ready ? counted(entries.length, 'job') : ''} />
      <Shelves book={book} current={shelf} onPick={setShelf} onKeys={() => setKeysShown(true)} />
      <SheetFrame
        no="00"
        head={headOfBook(book)}
        said={said}
        cells={[
          { what: 'firm', says: firm ?? 'no firm yet', strong: true },
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
            placeholder="address, customer, serial, equipment, state"
            onChange={(event) => setWords(event.target.value)}
            onKeyDown={(event) => {
              if (event.key === 'Escape') field.current?.blur();
              if (event.key !== 'Enter' || first === undefined) return;
              const { entry, goes } = first;
              void navigate({
                to: '/job/$id/$sheet',
                params: { id: entry.job.id, sheet: goes?.sheet ?? '08' },
                search: goes?.at === undefined ? {} : { at: goes.at },
              });
            }}
          />
          <span className="quiet small">press /</span>
        </div>
        <div className={`${styles.bar} ${styles.head}`}>
          <Act
            look={entries.length === 0 && ready && panel === undefined ? 'main' : 'edge'}
            onPress={() => setPanel({ kind: 'new' })}
          >
            Begin a job
          </Act>
          <OpenFile />
          {onServerOnly.length > 0 && (
            <>
              <Act onPress={() => void keepAll()}>Keep all on this device</Act>
              <span className="quiet small">They open without the server then.</span>
            </>
          )}
          {server.kind === 'away' && <Act onPress={() => void books.open()}>Ask the server again</Act>}
        </div>
        <div className={styles.narrow}>
          <PlainPick
            label="Shelf"
            value={shelf ?? ''}
            options={[
              { value: '', words: 'all' },
              ...[...SHELVES, ARCHIVED].map(({ name }) => ({ value: name, words: name })),
            ]}
            onPick={(name) => setShelf(name === '' ? undefined : name)}
          />
          <p className="quiet small">{keptWords(book)}.</p>
        </div>
        <FilesBrought entries={entries} ready={ready} isTaken={isTaken} onKept={(id) => void books.again(id)} />
        {panel !== undefined && (
          <div ref={panelAt} className={styles.panel}>
            {panel.kind === 'new' && (
              <NewJob
                region={entries.map(({ job }) => job.choices.rules.variant).find((code) => code in regions) ?? 'au'}
                firm={entries.find(({ job }) => !job.invented)?.job.firm.name}
                isTaken={isTaken}
                onMade={(job) => void made(job, true)}
                onLeave={() => setPanel(undefined)}
              />
            )}
            {panel.kind === 'duplicate' && (
              <DuplicateJob
                key={panel.job.id}
                job={panel.job}
                isTaken={isTaken}
                onMade={(job) => void made(job, false)}
                onLeave={() => setPanel(undefined)}
              />
            )}
          </div>
        )}
        {slip && <p className="small">Nothing has “{words}” in it. With one letter changed:</p>}
        <BookList
          hits={shown}
          shelves={shelves}
          server={server}
          first={first}
          onShown={books.wants}
          onDuplicate={(job) => setPanel({ kind: 'duplicate', job })}
          onAct={(id, does) => void act(id, does)}
        />
        {ready && looked && shown.length === 0 && <p>No job has “{words}” in it. Esc shows all again.</p>}
        {ready && !looked && shelf !== undefined && shown.length === 0 && <p>Nothing stands on this shelf.</p>}
        {!looked && shelf === undefined && (
          <ClosedRows
            closed={closed}
            onLaidAside={(id, became) => {
              setSaid(became);
              void books.again(id).then(() => books.open());
            }}
          />
        )}
      </SheetFrame>
      <BookPad firm={firm ?? 'no firm yet'} entries={entries} />
      {keysShown && <KeyList onClose={() => setKeysShown(false)} />}
    </div>
  );
}
