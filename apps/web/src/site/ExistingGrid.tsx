import type { SheetProps } from '../desk/sheetView.ts';
import { cellMarks } from '../grid/cellMarks.ts';
import type { Column } from '../grid/column.ts';
import { freshId } from '../grid/freshId.ts';
import { Grid } from '../grid/Grid.tsx';
import { lineOptions, same } from '../grid/options.ts';

const at = (field: string) => (id: string) => ['facts', 'existing', id, field];
const KINDS = same(['solar', 'generator inlet', 'car charger', 'controlled load', 'second board']);
const ELEMENT = [
  { value: true, words: 'its own' },
  { value: false, words: 'the house’s' },
];

/** What already stands at the place and carries current. */
export function ExistingGrid({ plan, job, selected, onSelect }: SheetProps) {
  const { existing } = job.facts;
  const columns: readonly Column[] = [
    { id: 'name', title: 'equipment', kind: 'text', path: at('name') },
    { id: 'kind', title: 'kind', kind: 'pick', path: at('kind'), options: KINDS },
    { id: 'rated', title: 'rated', kind: 'quantity', unit: 'A', path: at('ratedA') },
    { id: 'lines', title: 'lines', kind: 'pick', path: at('lines'), options: lineOptions(job) },
    {
      id: 'element',
      title: 'meter element',
      kind: 'pick',
      path: at('meterElement'),
      options: ELEMENT,
      none: 'not looked at',
    },
    { id: 'length', title: 'cable to it', kind: 'quantity', unit: 'm', path: at('lengthM'), optional: true },
    { id: 'size', title: 'conductor', kind: 'size', path: at('conductor') },
  ];
  return (
    <Grid
      label="existing equipment"
      rows={Object.entries(existing).map(([id, { name }]) => ({ id, name, subject: `existing:${id}` }))}
      columns={columns}
      selected={selected}
      onSelect={onSelect}
      marks={cellMarks(plan)}
      none="Nothing else stands there that carries current."
      add={{
        words: 'Add equipment',
        row: () => {
          const id = freshId('existing', existing);
          return { id, name: 'the new one', subject: `existing:${id}` };
        },
      }}
      takeOut={{
        changes: ({ id }) => [{ path: ['facts', 'existing', id], value: undefined }],
        hangs: ({ id }) => {
          const on = Object.values(job.choices.trunks).filter(({ boardId }) => boardId === id);
          return on.length === 0 ? undefined : `Trunk ${on.map(({ name }) => name).join(', ')} lands on it.`;
        },
      }}
    />
  );
}
