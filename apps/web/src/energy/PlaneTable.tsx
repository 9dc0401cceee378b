import table from '../parts/Table.module.css';
import { figure, percent } from '../words/figure.ts';
import type { PlaneYear } from './planeYears.ts';

export interface PlaneTableProps {
  readonly planes: readonly PlaneYear[];
  readonly selected: string | undefined;
  readonly onSelect: (id: string) => void;
}

/** Plane by plane: what it makes in a year, for each kW on it, and what shade and the units' ceilings take. */
export function PlaneTable({ planes, selected, onSelect }: PlaneTableProps) {
  return (
    <table className={table.table}>
      <thead>
        <tr>
          <th scope="col">plane</th>
          <th scope="col" className="num">
            modules
          </th>
          <th scope="col" className="num">
            kWh
          </th>
          <th scope="col" className="num">
            for each kW
          </th>
          <th scope="col" className={`num ${table.spare}`}>
            near shade
          </th>
          <th scope="col" className={`num ${table.spare}`}>
            above rating, kWh
          </th>
        </tr>
      </thead>
      <tbody>
        {planes.map(({ planeId, name, modules, kw, kwh, shadeLoss, clippedKwh }) => {
          const id = `plane:${planeId}`;
          return (
            <tr key={id} data-selected={selected === id || undefined}>
              <th scope="row">
                <button type="button" data-subject={id} aria-pressed={selected === id} onClick={() => onSelect(id)}>
                  {name}
                </button>
              </th>
              <td className="num">{modules}</td>
              <td className="num">{figure(kwh, 0)}</td>
              <td className="num">{kw > 0 ? figure(kwh / kw, 0) : ''}</td>
              <td className={`num ${table.spare}`}>{percent(shadeLoss, 1)}</td>
              <td className={`num ${table.spare}`}>{figure(clippedKwh, 1)}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
