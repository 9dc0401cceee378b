import type { SheetProps } from '../desk/sheetView.ts';
import { cellMarks } from '../grid/cellMarks.ts';
import type { Column } from '../grid/column.ts';
import { freshId } from '../grid/freshId.ts';
import { Grid } from '../grid/Grid.tsx';
import { lineOptions, same } from '../grid/options.ts';

const at = (field: string) => (id: string) => ['facts', 'loads', 'circuits', id, field];

/** The circuits of the house as they were found: lines, breaker, what each draws, and what has to stay on. */
export function CircuitGrid({ plan, job, selected, onSelect }: SheetProps) {
  const { circuits } = job.facts.loads;
  const backed = (id: string) => job.choices.backup?.circuits[id];
  const columns: readonly Column[] = [
    { id: 'name', title: 'circuit', kind: 'text', path: at('name') },
    { id: 'lines', title: 'lines', kind: 'pick', path: at('lines'), options: lineOptions(job) },
    ...(job.facts.supply.system === 'split-phase'
      ? [{ id: 'between', title: 'line to line', kind: 'tick', path: at('lineToLine') } as const]
      : []),
    { id: 'run', title: 'running', kind: 'quantity', unit: 'W', path: at('runW') },
    { id: 'night', title: 'at night', kind: 'quantity', unit: 'W', path: at('nightW'), optional: true },
    { id: 'breaker', title: 'breaker', kind: 'quantity', unit: 'A', path: at('breakerA'), optional: true },
    {
      id: 'wanted',
      title: 'in an outage',
      kind: 'pick',
      path: at('wanted'),
      options: same(['must stay on', 'would be good', 'no']),
    },
    {
      id: 'residual',
      title: 'residual device',
      kind: 'pick',
      path: at('residualDevice'),
      options: [
        { value: true, words: 'yes' },
        { value: false, words: 'no' },
      ],
      none: 'not looked at',
    },
  ];
  return (
    <Grid
      label="circuits"
      rows={Object.entries(circuits).map(([id, { name }]) => ({ id, name, subject: `load:${id}` }))}
      columns={columns}
      selected={selected}
      onSelect={onSelect}
      marks={cellMarks(plan)}
      none="No circuit has been looked at."
      add={{
        words: 'Add a circuit',
        row: () => {
          const id = freshId('circuit', circuits);
          return { id, name: 'the new circuit', subject: `load:${id}` };
        },
      }}
      takeOut={{
        changes: ({ id }) => [
          { path: ['facts', 'loads', 'circuits', id], value: undefined },
          ...(backed(id) === undefined ? [] : [{ path: ['choices', 'backup', 'circuits', id], value: undefined }]),
        ],
        hangs: ({ id }) =>
          backed(id)?.moved === true ? 'It is moved to the backed-up side: untick it on sheet 06 first.' : undefined,
      }}
    />
  );
}
