import { when } from '../history/when.ts';
import { saveText } from '../job/saveText.ts';
import { Act } from '../parts/Act.tsx';
import { Mark } from '../parts/Mark.tsx';
import { Part } from '../parts/Part.tsx';
import { asText } from './asText.ts';
import styles from './BookPage.module.css';
import type { ClosedEntry } from './entry.ts';
import { LaidAsideActs } from './LaidAsideActs.tsx';
import { LayAsideActs } from './LayAsideActs.tsx';
import { laidAsideOf } from './layAside.ts';

export interface ClosedRowsProps {
  readonly closed: readonly ClosedEntry[];
  /** A job was laid aside; the words say what became of it. */
  readonly onLaidAside: (id: string, words: string) => void;
}

/** Jobs that are kept and do not open: why, and the ways out. */
export function ClosedRows({ closed, onLaidAside }: ClosedRowsProps) {
  if (closed.length === 0) return null;
  return (
    <Part title="Does not open" count={closed.length} ruled>
      <ul>
        {closed.map((entry) => {
          const DeviceActs = laidAsideOf(entry.id) === undefined ? LayAsideActs : LaidAsideActs;
          return (
            <li key={`${entry.where} ${entry.id}`} className={styles.closed}>
              <p>
                <b data-state="fails">
                  <Mark state="fails" size={15} /> {entry.name}
                </b>{' '}
                {whereWords(entry)}
              </p>
              <ul className="small">
                {entry.words.map((line) => (
                  <li key={line}>{line}</li>
                ))}
              </ul>
              {entry.where === 'device' ? (
                <DeviceActs
                  id={entry.id}
                  name={entry.name}
                  document={entry.document}
                  onDone={(words) => onLaidAside(entry.id, words)}
                />
              ) : (
                <Act
                  onPress={() => saveText(`${entry.id.replaceAll(':', '-')}.as-kept.json`, asText(entry.document))}
                  label={`Save what is there of ${entry.name}`}
                >
                  Save what is there
                </Act>
              )}
            </li>
          );
        })}
      </ul>
    </Part>
  );
}

function whereWords({ id, where, otherCopyOpens }: ClosedEntry): string {
  const laid = laidAsideOf(id);
  if (laid !== undefined) return `Laid aside on this device, whole, ${when(new Date(laid.at), new Date())}.`;
  const other = otherCopyOpens
    ? ` The copy ${where === 'device' ? 'on the server' : 'on this device'} opens, above.`
    : '';
  return `${where === 'device' ? 'On this device' : 'On the server'} as ${id}. It is left as it is.${other}`;
}
