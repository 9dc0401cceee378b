import type { Job } from '@eaveline/job';
import type { Finding, SourceCircuit } from '@eaveline/plan';
import { worstState } from '../checks/worstState.ts';
import { Mark } from '../parts/Mark.tsx';
import table from '../parts/Table.module.css';
import { sentence } from '../words/count.ts';
import { figure } from '../words/figure.ts';

export interface SourceCircuitsProps {
  readonly circuits: readonly SourceCircuit[];
  readonly job: Job;
  readonly findings: readonly Finding[];
  readonly selected: string | undefined;
  readonly onSelect: (id: string) => void;
}

/** The circuits of the sources: design current, breaker, cable and what it carries, the loop at its far end. */
export function SourceCircuits({ circuits, job, findings, selected, onSelect }: SourceCircuitsProps) {
  const named = (sheetId: string) => job.choices.equipment[sheetId]?.name ?? sheetId;
  return (
    <div className={table.scroll}>
      <table className={table.table}>
        <thead>
          <tr>
            <th scope="col">Circuit</th>
            <th scope="col">line</th>
            <th scope="col" className="num">
              design
            </th>
            <th scope="col" className="num">
              breaker
            </th>
            <th scope="col" className="num">
              cable carries
            </th>
            <th scope="col" className={table.spare}>
              cable
            </th>
            <th scope="col" className={`num ${table.spare}`}>
              loop, hot
            </th>
            <th scope="col">stands</th>
          </tr>
        </thead>
        <tbody>
          {circuits.map((circuit) => {
            const state = worstState(
              findings.filter(
                ({ sheet, about }) => sheet === '05' && (about.id === circuit.id || about.id === circuit.of),
              ),
            );
            return (
              <tr key={circuit.id} data-selected={selected === `circuit:${circuit.id}` || undefined}>
                <th scope="row">
                  <button
                    type="button"
                    data-subject={`circuit:${circuit.id}`}
                    onClick={() => onSelect(`circuit:${circuit.id}`)}
                  >
                    {sentence(circuit.name)}
                  </button>
                </th>
                <td>{circuit.lines.join(' ')}</td>
                <td className="num">{figure(circuit.designA, 2)} A</td>
                <td className="num">{circuit.breakerA} A</td>
                <td className="num">{figure(circuit.capacity.capacityA, 1)} A</td>
                <td className={table.spare}>
                  {named(circuit.cableSheetId)}
                  <br />
                  {figure(circuit.lengthM, 1)}&nbsp;m
                </td>
                <td className={`num ${table.spare}`}>
                  {circuit.loop === undefined
                    ? 'not known'
                    : `${figure(circuit.loop.ohm, 2)}${circuit.loop.limitOhm === undefined ? '' : ` of ${figure(circuit.loop.limitOhm, 2)}`} Ω`}
                </td>
                <td style={{ whiteSpace: 'nowrap' }}>
                  {state !== undefined && (
                    <>
                      <Mark state={state} size={15} /> <span className="small">{state}</span>
                    </>
                  )}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </div>
  );
}
