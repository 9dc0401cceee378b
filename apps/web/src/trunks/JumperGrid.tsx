import type { TrunkPlan } from '@eaveline/plan';
import type { SheetProps } from '../desk/sheetView.ts';
import { cellMarks } from '../grid/cellMarks.ts';
import type { Column } from '../grid/column.ts';
import { freshId } from '../grid/freshId.ts';
import { Grid } from '../grid/Grid.tsx';

export interface JumperGridProps extends SheetProps {
  readonly trunk: TrunkPlan;
}

/** Extra cable between two drops of one trunk; it adds to the pitch of the drops. */
export function JumperGrid({ plan, job, trunk, selected, onSelect }: JumperGridProps) {
  const jumpers = job.choices.trunks[trunk.id]?.jumpers ?? {};
  const at = (field: string) => (id: string) => ['choices', 'trunks', trunk.id, 'jumpers', id, field];
  const subject = (id: string) => `jumper:${trunk.id}:${id}`;
  const columns: readonly Column[] = [
    { id: 'after', title: 'after drop', kind: 'whole', path: at('afterDrop') },
    { id: 'length', title: 'adds', kind: 'quantity', unit: 'm', path: at('lengthM') },
    { id: 'why', title: 'why', kind: 'text', path: at('why'), optional: true },
  ];
  return (
    <Grid
      label={`jumpers of trunk ${trunk.name}`}
      rows={Object.entries(jumpers).map(([id, { afterDrop }]) => ({
        id,
        name: `jumper after drop ${afterDrop}`,
        subject: subject(id),
      }))}
      columns={columns}
      selected={selected}
      onSelect={onSelect}
      marks={cellMarks(plan)}
      none="No jumper: every drop is one pitch from the next."
      add={{
        words: 'Add a jumper',
        row: () => {
          const id = freshId('jumper', jumpers);
          return { id, name: 'the new jumper', subject: subject(id) };
        },
      }}
      takeOut={{ changes: ({ id }) => [{ path: ['choices', 'trunks', trunk.id, 'jumpers', id], value: undefined }] }}
    />
  );
}
