import type { Finding, MotorStart } from '@eaveline/plan';
import { Mark } from '../parts/Mark.tsx';
import { RuleGauge } from '../parts/RuleGauge.tsx';
import table from '../parts/Table.module.css';
import { useNarrow } from '../parts/useNarrow.ts';
import { figure, percent } from '../words/figure.ts';
import styles from './MotorStarts.module.css';
import { startOnRule } from './startOnRule.ts';

export interface MotorStartsProps {
  readonly starts: readonly MotorStart[];
  readonly findings: readonly Finding[];
  readonly selected: string | undefined;
  readonly onSelect: (id: string) => void;
}

/** Each motor's start on the rule: what it asks with the rest running, of what the battery gives for the moment. */
export function MotorStarts({ starts, findings, selected, onSelect }: MotorStartsProps) {
  const narrow = useNarrow();
  return (
    <table className={`${table.table} ${table.middle} ${styles.starts}`}>
      <tbody>
        {starts.map((start) => {
          const { circuitId, name, lines, startVA, k } = start;
          const id = `start:${circuitId}`;
          const { state, words, gauge } = startOnRule(start, findings);
          return (
            <tr key={id} data-selected={selected === id || undefined}>
              <th scope="row">
                <button type="button" data-subject={id} onClick={() => onSelect(id)}>
                  {name}
                </button>
                <br />
                <span className="small quiet">
                  {lines.join(' ')}
                  {startVA !== undefined && `, asks ${figure(startVA / 1000, 2)}\u00a0kVA alone`}
                  {k !== undefined && k < 1 && `, finds ${percent(k)} of it`}
                </span>
              </th>
              <td>
                {gauge !== undefined && (
                  <RuleGauge
                    unit={gauge.unit}
                    width={narrow ? 120 : 220}
                    decimals={gauge.decimals}
                    limit={{ value: gauge.limit, sense: gauge.sense }}
                    needle={{ value: gauge.value, fails: state === 'fails' }}
                  />
                )}
              </td>
              <td>
                <Mark state={state} size={16} /> <b>{words}</b>
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
