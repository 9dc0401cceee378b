import type { Plan } from '@eaveline/plan';
import { figure } from '../words/figure.ts';
import styles from './ModuleStrip.module.css';

export interface ModuleStripProps {
  readonly plan: Plan;
  readonly selected: string | undefined;
  readonly onSelect: (id: string) => void;
}

/** Every module's year as a small bar under its name, row by row. */
export function ModuleStrip({ plan: { array, energy }, selected, onSelect }: ModuleStripProps) {
  const most = Math.max(...energy.modules.map(({ annualKwh }) => annualKwh), 1);
  const of = new Map(energy.modules.map((each) => [each.moduleId, each]));
  return (
    <ul className={styles.strip}>
      {array.modules.map(({ id, name }) => {
        const kwh = of.get(id)?.annualKwh;
        const subject = `energy:${id}`;
        return (
          <li key={id} data-selected={selected === subject || undefined}>
            <button
              type="button"
              data-subject={subject}
              aria-pressed={selected === subject}
              onClick={() => onSelect(subject)}
            >
              <span>{name}</span>
              <span className={styles.bar} aria-hidden="true">
                <span style={{ height: `${((kwh ?? 0) / most) * 100}%` }} />
              </span>
              <span>{kwh === undefined ? '' : figure(kwh, 0)}</span>
            </button>
          </li>
        );
      })}
    </ul>
  );
}
