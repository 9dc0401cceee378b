import type { SheetProps } from '../desk/sheetView.ts';
import { cellMarks } from '../grid/cellMarks.ts';
import type { Column } from '../grid/column.ts';
import { freshId } from '../grid/freshId.ts';
import { Grid } from '../grid/Grid.tsx';
import { same, sheetsOfKind } from '../grid/options.ts';
import { counted, sentence } from '../words/count.ts';
import { figure } from '../words/figure.ts';

const at = (field: string) => (id: string) => ['choices', 'rows', id, field];

/** The rows of modules: where each begins on its plane, how it lies, and how many it holds. */
export function RowGrid({ plan, job, selected, onSelect }: SheetProps) {
  const { rows, modules } = job.choices;
  const { planes } = job.facts.roof;
  const held = (id: string) => Object.values(modules).filter(({ rowId }) => rowId === id).length;
  const laid = (id: string) => plan.array.rows.find((row) => row.id === id);
  const mm = { kind: 'quantity', unit: 'mm', times: 1000 } as const;
  const columns: readonly Column[] = [
    { id: 'row', title: 'row', kind: 'figure', words: true, show: (id) => laid(id)?.name ?? '' },
    {
      id: 'plane',
      title: 'plane',
      kind: 'pick',
      path: at('planeId'),
      options: Object.entries(planes).map(([value, { name }]) => ({ value, words: name })),
    },
    { id: 'number', title: 'from the eave', kind: 'whole', path: at('row') },
    { id: 'lies', title: 'lies', kind: 'pick', path: at('orientation'), options: same(['portrait', 'landscape']) },
    { id: 'u', title: 'along eave', ...mm, path: at('uM') },
    { id: 'v', title: 'up slope', ...mm, path: at('vM') },
    { id: 'gap', title: 'gap', kind: 'quantity', unit: 'mm', path: at('gapMm') },
    { id: 'modules', title: 'modules', kind: 'figure', show: (id) => String(held(id)) },
    {
      id: 'length',
      title: 'length',
      unit: 'mm',
      kind: 'figure',
      show: (id) => {
        const row = laid(id);
        return row === undefined ? '' : figure(row.lengthMm, 0);
      },
    },
    { id: 'module', title: 'module', kind: 'pick', path: at('moduleSheet'), options: sheetsOfKind(job, 'module') },
  ];
  return (
    <Grid
      label="rows"
      rows={Object.keys(rows).map((id) => ({ id, name: laid(id)?.name ?? id, subject: `row:${id}` }))}
      columns={columns}
      selected={selected}
      onSelect={onSelect}
      marks={cellMarks(plan)}
      add={{
        words: 'Add a row',
        row: () => {
          const id = freshId('row', rows);
          return { id, name: 'the new row', subject: `row:${id}` };
        },
      }}
      takeOut={{
        changes: ({ id }) => [{ path: ['choices', 'rows', id], value: undefined }],
        hangs: ({ id }) => {
          const n = held(id);
          if (n === 0) return undefined;
          return `${sentence(counted(n, 'module'))} ${n === 1 ? 'lies' : 'lie'} in it, and ${n === 1 ? 'its unit hangs' : 'their units hang'} on a trunk.`;
        },
      }}
      none="No row yet."
    />
  );
}
