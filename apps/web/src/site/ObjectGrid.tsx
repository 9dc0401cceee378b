import type { SheetProps } from '../desk/sheetView.ts';
import { cellMarks } from '../grid/cellMarks.ts';
import type { Column } from '../grid/column.ts';
import { freshId } from '../grid/freshId.ts';
import { Grid } from '../grid/Grid.tsx';
import { same } from '../grid/options.ts';

const at = (field: string) => (id: string) => ['facts', 'site', 'objects', id, field];

/** What stands near and throws a shadow, from the house's own origin. */
export function ObjectGrid({ plan, job, selected, onSelect }: SheetProps) {
  const { objects } = job.facts.site;
  const metres = { kind: 'quantity', unit: 'm' } as const;
  const columns: readonly Column[] = [
    { id: 'name', title: 'near object', kind: 'text', path: at('name') },
    { id: 'kind', title: 'kind', kind: 'pick', path: at('kind'), options: same(['tree', 'building', 'pole']) },
    { id: 'east', title: 'east', ...metres, path: at('eastM') },
    { id: 'north', title: 'north', ...metres, path: at('northM') },
    { id: 'base', title: 'foot', ...metres, path: at('baseM'), optional: true },
    { id: 'height', title: 'height', ...metres, path: at('heightM') },
    { id: 'width', title: 'width', ...metres, path: at('widthM') },
    {
      id: 'passes',
      title: 'light passes',
      kind: 'quantity',
      unit: '%',
      times: 100,
      path: at('transmission'),
      optional: true,
    },
  ];
  return (
    <Grid
      label="near objects"
      rows={Object.entries(objects).map(([id, { name }]) => ({ id, name, subject: `object:${id}` }))}
      columns={columns}
      selected={selected}
      onSelect={onSelect}
      marks={cellMarks(plan)}
      none="Nothing near throws a shadow."
      add={{
        words: 'Add an object',
        row: () => {
          const id = freshId('object', objects);
          return { id, name: 'the new object', subject: `object:${id}` };
        },
      }}
      takeOut={{ changes: ({ id }) => [{ path: ['facts', 'site', 'objects', id], value: undefined }] }}
    />
  );
}
