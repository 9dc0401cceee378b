import type { Plan } from '@eaveline/plan';
import { figure } from '../words/figure.ts';
import styles from './ModuleStrip.module.css';

export interface ModuleStripProps {
  readonly plan: Plan;
  readonly selected: string | undefined;
  readonly onSelect: (id: string) => void;
}

/** Every module's year as a small bar under its name, in the order of the roof: plane, row, place. */
export function ModuleStrip({ plan: { array, energy, roof }, selected, onSelect }: ModuleStripProps) {
  const most = Math.max(...energy.modules.map(({ annualKwh }) => annualKwh), 1);
  const of = new Map(energy.modules.map((each) => [each.moduleId, each]));
  const planeAt = new Map(roof.planes.map(({ id }, i) => [id, i]));
  const order = [...array.modules].sort(
    (a, b) => (planeAt.get(a.planeId) ?? 0) - (planeAt.get(b.planeId) ?? 0) || a.row - b.row || a.place - b.place,
  );
  return (
    <ul className={styles.strip}>
      {order.map(({ id, name }) => {
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
