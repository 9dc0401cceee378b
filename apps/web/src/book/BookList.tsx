import type { Job } from '@eaveline/job';
import { useEffect, useState } from 'react';
import { Act } from '../parts/Act.tsx';
import { Part } from '../parts/Part.tsx';
import { figure } from '../words/figure.ts';
import styles from './BookPage.module.css';
import { BookRow } from './BookRow.tsx';
import type { Answered } from './bookDesk.ts';
import type { BookEntry, Shelf } from './entry.ts';
import type { Hit } from './find.ts';
import type { Outcome } from './keepJob.ts';
import { whereWords } from './keptWords.ts';
import { RowActs } from './RowActs.tsx';

/** Rows drawn at once; a longer list is narrowed by Find, or drawn further on. */
const AT_ONCE = 60;

export interface BookListProps {
  readonly hits: readonly Hit<BookEntry>[];
  readonly shelves: readonly Shelf[];
  readonly server: Answered;
  /** The one Enter opens. */
  readonly first: Hit<BookEntry> | undefined;
  /** Which are drawn: their plans are wanted first. */
  readonly onShown: (ids: readonly string[]) => void;
  readonly onDuplicate: (job: Job) => void;
  readonly onAct: (id: string, does: () => Promise<Outcome>) => void;
}

/** The jobs found, shelf by shelf. */
export function BookList({ hits, shelves, server, first, onShown, onDuplicate, onAct }: BookListProps) {
  const [most, setMost] = useState(AT_ONCE);
  const [open, setOpen] = useState<string>();
  const onShelf = shelves.map((shelf) => ({ shelf, here: hits.filter(({ entry }) => shelf.holds(entry.job)) }));
  let room = most;
  const drawn = onShelf.map(({ shelf, here }) => {
    const rows = here.slice(0, room);
    room -= rows.length;
    return { shelf, rows, count: here.length };
  });
  const ids = drawn.flatMap(({ rows }) => rows.map(({ entry }) => entry.job.id));
  const idText = ids.join(' ');
  // biome-ignore lint/correctness/useExhaustiveDependencies: the list is new each time, its ids seldom are
  useEffect(() => onShown(ids), [idText, onShown]);
  return (
    <>
      {drawn
        .filter(({ rows }) => rows.length > 0)
        .map(({ shelf, rows, count }) => (
          <Part key={shelf.name} title={shelf.name} count={count} ruled>
            <ul>
              {rows.map((hit) => {
                const { entry } = hit;
                const { id } = entry.job;
                return (
                  <BookRow
                    key={id}
                    hit={hit}
                    kept={whereWords(entry, server)}
                    selected={hit === first}
                    open={open === id}
                    onOpen={() => setOpen(open === id ? undefined : id)}
                  >
                    <RowActs
                      entry={entry}
                      server={server}
                      onDuplicate={() => {
                        setOpen(undefined);
                        onDuplicate(entry.job);
                      }}
                      onAct={(does) => {
                        setOpen(undefined);
                        onAct(id, does);
                      }}
                    />
                  </BookRow>
                );
              })}
            </ul>
          </Part>
        ))}
      {ids.length < hits.length && (
        <div className={styles.bar}>
          <p className="quiet small">{figure(hits.length - ids.length, 0)} more. Find narrows them.</p>
          <Act onPress={() => setMost(most + 4 * AT_ONCE)}>Show more</Act>
        </div>
      )}
    </>
  );
}
