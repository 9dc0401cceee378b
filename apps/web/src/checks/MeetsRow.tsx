import type { Finding } from '@eaveline/plan';
import { Mark } from '../parts/Mark.tsx';
import { apart } from '../words/figure.ts';
import { keepTogether } from '../words/keepTogether.ts';
import styles from './MeetsRow.module.css';

export interface MeetsRowProps {
  readonly finding: Finding;
  readonly selected: boolean;
  readonly onSelect: (id: string) => void;
}

/** One finding that meets, quietly: what, its figure of its limit; and said where nobody has confirmed the limit. */
export function MeetsRow({
  finding: { id, title, value, limit, unit = '', sense, unconfirmed },
  selected,
  onSelect,
}: MeetsRowProps) {
  const pair = value !== undefined && limit !== undefined ? apart(value, limit) : undefined;
  return (
    <li className={styles.row} data-selected={selected || undefined}>
      <Mark state="meets" size={15} />
      <button type="button" data-subject={id} aria-pressed={selected} onClick={() => onSelect(id)}>
        <span>
          <span className="out-of-sight">meets: </span>
          {keepTogether(title)}
        </span>
        {unconfirmed && <span className={styles.aside}>meets, limit unconfirmed</span>}
      </button>
      <span className="num">
        {pair &&
          (sense === 'at least'
            ? `${pair.value}, least ${pair.limit}\u00a0${unit}`
            : `${pair.value} of ${pair.limit}\u00a0${unit}`)}
      </span>
    </li>
  );
}
