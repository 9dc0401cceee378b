import { useEffect, useRef } from 'react';
import { TABLE_KEYS } from '../grid/tableKeys.ts';
import { Act } from '../parts/Act.tsx';
import styles from './KeyList.module.css';

const KEYS: readonly (readonly [string, string])[] = [
  ['1 to 9, 0, -, =', 'sheets 01 to 12'],
  ['B', 'the Book'],
  ['/', 'find a job'],
  ['W', 'the working of the thing under focus'],
  ['N, P', 'next and previous finding, or test on sheet 11'],
  ['M', 'take the first mend of the finding selected'],
  ['Z', 'take the last change back, and the one before it, without end'],
  ['Shift Z', 'do it again'],
  ['H', 'the history of the job'],
  ['D', 'next paper'],
  ['arrows', 'walk a drawing from thing to thing'],
  ['Enter', 'open, select'],
  ['Esc', 'back one level'],
];

export interface KeyListProps {
  readonly onClose: () => void;
}

/** Where the keys are. */
export function KeyList({ onClose }: KeyListProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog ref={dialog} className={styles.keys} aria-labelledby="keys-title" onClose={onClose}>
      <h2 id="keys-title">Where the keys are</h2>
      <div className={styles.two}>
        <Keys title="On the pages" keys={KEYS} />
        <Keys title="In a table" keys={TABLE_KEYS.map(({ keys, does }) => [keys, does])} />
      </div>
      <p className="quiet small">
        Single letters are off while something is typed or a cell of a table has the focus. Ctrl is Cmd where the
        keyboard has that.
      </p>
      <Act onPress={() => dialog.current?.close()}>Close</Act>
    </dialog>
  );
}

function Keys({ title, keys }: { readonly title: string; readonly keys: readonly (readonly [string, string])[] }) {
  return (
    <table>
      <caption>{title}</caption>
      <tbody>
        {keys.map(([key, does]) => (
          <tr key={key}>
            <th scope="row">{key}</th>
            <td>{does}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
