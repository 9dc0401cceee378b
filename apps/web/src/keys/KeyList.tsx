import { useEffect, useRef } from 'react';
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

/** As `grid/gridKeys.ts` and the cells take them; the walk of the tables by keyboard goes by these. */
const TABLE_KEYS: readonly (readonly [string, string])[] = [
  ['arrows', 'from cell to cell; with Shift more cells at once'],
  ['Home, End', 'ends of the row; with Ctrl first and last cell'],
  ['a letter or figure', 'types over the cell, with its unit: 12 ft, 6 mm²'],
  ['Enter, F2', 'opens the cell; Enter takes what is typed and goes down'],
  ['Tab', 'takes it and goes on to the next cell'],
  ['Space', 'ticks, or opens a choice'],
  ['Delete', 'empties the cells'],
  ['Ctrl C, Ctrl V', 'copy and paste, also with a spreadsheet'],
  ['Ctrl D', 'fills the cells below from the first'],
  ['Ctrl A', 'the whole table'],
  ['Ctrl Z', 'takes the last change back'],
  ['Esc', 'puts back what stood there'],
];

export interface KeyListProps {
  readonly onClose: () => void;
}

function Keys({ keys }: { readonly keys: typeof KEYS }) {
  return (
    <table>
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

/** Where the keys are. */
export function KeyList({ onClose }: KeyListProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog ref={dialog} className={styles.keys} aria-labelledby="keys-title" onClose={onClose}>
      <h2 id="keys-title">Where the keys are</h2>
      <div className={styles.both}>
        <section>
          <h3>On every sheet</h3>
          <Keys keys={KEYS} />
        </section>
        <section>
          <h3>In a table</h3>
          <Keys keys={TABLE_KEYS} />
        </section>
      </div>
      <p className="quiet small">Single letters are off while something is typed.</p>
      <Act onPress={() => dialog.current?.close()}>Close</Act>
    </dialog>
  );
}
