import { saveText } from '../job/saveText.ts';
import { Act } from '../parts/Act.tsx';
import { Mark } from '../parts/Mark.tsx';
import { Part } from '../parts/Part.tsx';
import styles from './BookPage.module.css';
import type { ClosedEntry } from './entry.ts';

export interface ClosedRowsProps {
  readonly closed: readonly ClosedEntry[];
}

/** Jobs that are kept and do not open: why, and the way to have what is there. */
export function ClosedRows({ closed }: ClosedRowsProps) {
  if (closed.length === 0) return null;
  return (
    <Part title="Does not open" count={closed.length} ruled>
      <ul>
        {closed.map(({ id, name, where, words, document, otherCopyOpens }) => (
          <li key={`${where} ${id}`} className={styles.closed}>
            <p>
              <b data-state="fails">
                <Mark state="fails" size={15} /> {name}
              </b>{' '}
              {where === 'device' ? 'On this device' : 'On the server'} as <code>{id}</code>. It is left as it is.{' '}
              {otherCopyOpens && `The copy ${where === 'device' ? 'on the server' : 'on this device'} opens, above.`}
            </p>
            <ul className="small">
              {words.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
            <Act
              onPress={() => saveText(`${id}.as-kept.json`, asText(document))}
              label={`Save what is there of ${name}`}
            >
              Save what is there
            </Act>
          </li>
        ))}
      </ul>
    </Part>
  );
}

/** As JSON; what JSON has no words for is written as text, so that nothing keeps the rest from being saved. */
function asText(document: unknown): string {
  try {
    return JSON.stringify(document, (_key, value) => (typeof value === 'bigint' ? String(value) : value), 2) ?? '';
  } catch (error) {
    return `${String(error)}\n${String(document)}\n`;
  }
}
