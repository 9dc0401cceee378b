import type { SheetProps } from '../desk/sheetView.ts';
import { cellMarks } from '../grid/cellMarks.ts';
import type { Column } from '../grid/column.ts';
import { freshId } from '../grid/freshId.ts';
import { Grid } from '../grid/Grid.tsx';
import { same } from '../grid/options.ts';

const at = (field: string) => (id: string) => ['facts', 'roof', 'obstructions', id, field];
const KINDS = same(['vent', 'flue', 'skylight', 'chimney', 'aerial', 'hatch']);

/** What stands on the planes: its middle from the left end of the eave and up the slope, its size, what is kept free. */
export function ObstructionGrid({ plan, job, selected, onSelect }: SheetProps) {
  const { planes, obstructions } = job.facts.roof;
  const planeOptions = Object.entries(planes).map(([value, { name }]) => ({ value, words: name }));
  const mm = { kind: 'quantity', unit: 'mm', times: 1000 } as const;
  const columns: readonly Column[] = [
    { id: 'name', title: 'thing', kind: 'text', path: at('name'), optional: true },
    { id: 'kind', title: 'kind', kind: 'pick', path: at('kind'), options: KINDS },
    { id: 'plane', title: 'plane', kind: 'pick', path: at('planeId'), options: planeOptions },
    { id: 'u', title: 'along eave', ...mm, path: at('uM') },
    { id: 'v', title: 'up slope', ...mm, path: at('vM') },
    { id: 'width', title: 'width', ...mm, path: at('widthM') },
    { id: 'depth', title: 'depth', ...mm, path: at('depthM') },
    { id: 'height', title: 'height', ...mm, path: at('heightM') },
    { id: 'clear', title: 'kept free', ...mm, path: at('clearM') },
  ];
  return (
    <Grid
      label="obstructions"
      rows={Object.entries(obstructions).map(([id, { name, kind }]) => ({
        id,
        name: name ?? kind,
        subject: `obstruction:${id}`,
      }))}
      columns={columns}
      selected={selected}
      onSelect={onSelect}
      marks={cellMarks(plan)}
      none="Nothing stands on the roof."
      add={{
        words: 'Add an obstruction',
        row: () => {
          const id = freshId('obstruction', obstructions);
          return { id, name: 'the new one', subject: `obstruction:${id}` };
        },
      }}
      takeOut={{ changes: ({ id }) => [{ path: ['facts', 'roof', 'obstructions', id], value: undefined }] }}
    />
  );
}
