import type { SheetNo } from '@eaveline/plan';
import { Link } from '@tanstack/react-router';
import { Icon, type IconName } from './Icon.tsx';
import styles from './Phone.module.css';

const PLACES: readonly { readonly no: SheetNo; readonly word: string; readonly icon: IconName }[] = [
  { no: '10', word: 'Day', icon: 'day' },
  { no: '03', word: 'Roof', icon: 'roof' },
  { no: '08', word: 'Checks', icon: 'checks' },
  { no: '11', word: 'Tests', icon: 'tests' },
];

export interface PhoneBarProps {
  readonly jobId: string;
  /** Undefined on the list of all sheets. */
  readonly current: SheetNo | undefined;
}

/** The five places at the foot of the phone frame: four sheets that are opened most, and all of them. */
export function PhoneBar({ jobId, current }: PhoneBarProps) {
  const others = current !== undefined && !PLACES.some(({ no }) => no === current);
  return (
    <nav className={styles.bar} aria-label="Places">
      {PLACES.map(({ no, word, icon }) => (
        <Link
          key={no}
          to="/job/$id/$sheet"
          params={{ id: jobId, sheet: no }}
          aria-current={no === current ? 'page' : undefined}
        >
          <Icon name={icon} />
          {word}
        </Link>
      ))}
      <Link
        to="/job/$id"
        params={{ id: jobId }}
        activeOptions={{ exact: true }}
        aria-current={current === undefined || others ? 'page' : undefined}
      >
        <Icon name="book" />
        Sheets
      </Link>
    </nav>
  );
}
