import type { KitLine } from '@eaveline/plan';
import type { SheetProps } from '../desk/sheetView.ts';
import { NumberField } from '../parts/NumberField.tsx';
import { Part } from '../parts/Part.tsx';
import table from '../parts/Table.module.css';
import fields from '../trunks/TrunkFields.module.css';
import { sentence } from '../words/count.ts';
import { figure, percent } from '../words/figure.ts';
import { RailCuts } from './RailCuts.tsx';

const GROUPS: readonly KitLine['group'][] = [
  'array',
  'mounting',
  'trunks',
  'cables',
  'board',
  'battery',
  'labels',
  'tools and tests',
];

const said = ({ count, unit }: Pick<KitLine, 'count' | 'unit'>) =>
  `${figure(count, unit === 'm' && !Number.isInteger(count) ? 1 : 0)} ${unit === 'pieces' ? '' : unit}`;

/** Sheet 09: what to order, each count with its working, and how the rails are cut. */
export function KitSheet({ plan: { kit }, selected, onSelect }: SheetProps) {
  return (
    <>
      {GROUPS.map((group) => {
        const lines = kit.lines.filter((line) => line.group === group);
        if (lines.length === 0) return null;
        return (
          <Part key={group} title={sentence(group)} ruled>
            <table className={table.table}>
              <tbody>
                {lines.map(({ id, name, count, unit, working }) => (
                  <tr key={id} data-selected={selected === `kit:${id}` || undefined}>
                    <th scope="row">
                      <button type="button" data-subject={`kit:${id}`} onClick={() => onSelect(`kit:${id}`)}>
                        {sentence(name)}
                      </button>
                    </th>
                    <td className={table.spare}>{working.formula}</td>
                    <td className="num">{said({ count, unit })}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </Part>
        );
      })}
      {kit.cuts.length > 0 && (
        <Part
          title="Rails, cut"
          ruled
          aside={`${kit.cutting.bars} bars${kit.cutting.proven ? ', proven least' : `, least possible ${kit.cutting.lowerBound}`}; saw ${kit.cutting.kerfMm} mm; ${percent(kit.cutting.wasteShare, 1)} left`}
        >
          <RailCuts cuts={kit.cuts} />
        </Part>
      )}
      {kit.labels.length > 0 && (
        <Part title="Labels" count={kit.labels.length} ruled>
          <table className={table.table}>
            <tbody>
              {kit.labels.map(({ id, text, where, clause, count }) => (
                <tr key={id}>
                  <th scope="row">{text}</th>
                  <td className="small">{where}</td>
                  <td className={table.spare}>{clause}</td>
                  <td className="num">{count}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </Part>
      )}
      <Part title="Spares">
        <div className={fields.fields}>
          <NumberField label="Modules" path={['choices', 'spares', 'modules']} unit="pieces" optional />
          <NumberField label="Units" path={['choices', 'spares', 'units']} unit="pieces" optional />
        </div>
      </Part>
    </>
  );
}
