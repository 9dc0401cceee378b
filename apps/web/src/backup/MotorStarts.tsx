import type { Finding, MotorStart } from '@eaveline/plan';
import { Mark } from '../parts/Mark.tsx';
import { RuleGauge } from '../parts/RuleGauge.tsx';
import table from '../parts/Table.module.css';
import { useNarrow } from '../parts/useNarrow.ts';
import { figure, percent } from '../words/figure.ts';
import styles from './MotorStarts.module.css';

export interface MotorStartsProps {
  readonly starts: readonly MotorStart[];
  readonly findings: readonly Finding[];
  readonly selected: string | undefined;
  readonly onSelect: (id: string) => void;
}

const SAYS: Readonly<
  Record<MotorStart['verdict'], { readonly state: 'meets' | 'ask' | 'fails'; readonly words: string }>
> = {
  starts: { state: 'meets', words: 'Starts' },
  'no start peak': { state: 'meets', words: 'Has no start peak' },
  ask: { state: 'ask', words: 'May not start' },
  'plate missing': { state: 'ask', words: 'Plate not read' },
  'will not': { state: 'fails', words: 'Will not start' },
};

/** Each motor's start on the rule: what it asks with the rest running, of what the battery gives for the moment. */
export function MotorStarts({ starts, findings, selected, onSelect }: MotorStartsProps) {
  const narrow = useNarrow();
  return (
    <table className={`${table.table} ${table.middle} ${styles.starts}`}>
      <tbody>
        {starts.map(({ circuitId, name, lines, startVA, withRestVA, availableVA, k, verdict }) => {
          const id = `start:${circuitId}`;
          // the rule has the last word: it judges the sum, the stage weighs the motor alone
          const finding = findings.find(({ rule, about }) => rule === 'backup-start' && about.id === circuitId);
          const said = SAYS[verdict];
          const state = finding?.state ?? said.state;
          const words = state === said.state ? said.words : { fails: 'Fails', ask: 'Ask', meets: 'Meets' }[state];
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
                {withRestVA !== undefined && (
                  <RuleGauge
                    unit="kVA"
                    width={narrow ? 120 : 220}
                    decimals={2}
                    limit={{ value: availableVA / 1000, sense: 'at most' }}
                    needle={{ value: withRestVA / 1000, fails: state === 'fails' }}
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
