import type { KitPlan, Rail } from '@eaveline/plan';
import { Mark } from '../parts/Mark.tsx';
import { figure } from '../words/figure.ts';
import styles from './SpliceList.module.css';

export interface SpliceListProps {
  readonly splices: KitPlan['splices'];
  readonly breaks: KitPlan['breaks'];
  readonly rails: readonly Pick<Rail, 'id' | 'name'>[];
}

/** Where each rail is joined or broken off, from its left end; a splice that stands badly says so. */
export function SpliceList({ splices, breaks, rails }: SpliceListProps) {
  const names = new Map(rails.map(({ id, name }) => [id, name]));
  return (
    <ul className={styles.splices}>
      {splices.map(({ railId, atMm, clear }) => (
        <li key={`${railId}-${atMm}`}>
          <span>{names.get(railId) ?? railId}, splice</span>
          {!clear && (
            <span className={styles.near}>
              <Mark state="ask" size={14} /> near a foot, a mid-span or a splice beside it
            </span>
          )}
          <span className="num">{figure(atMm, 0)} mm</span>
        </li>
      ))}
      {breaks.map(({ railId, atMm }) => (
        <li key={`${railId}-${atMm}-break`}>
          <span>{names.get(railId) ?? railId}, expansion break</span>
          <span className="num">{figure(atMm, 0)} mm</span>
        </li>
      ))}
    </ul>
  );
}
