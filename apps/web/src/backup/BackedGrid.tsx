import type { SheetProps } from '../desk/sheetView.ts';
import { cellMarks } from '../grid/cellMarks.ts';
import type { Column } from '../grid/column.ts';
import { Grid } from '../grid/Grid.tsx';
import { figure } from '../words/figure.ts';

const at = (field: string) => (id: string) => ['choices', 'backup', 'circuits', id, field];

/** Which circuits are moved to the backed-up side, which of them are shed first, and which stay dark. */
export function BackedGrid({ plan, job, selected, onSelect }: SheetProps) {
  const { circuits, leftDark } = plan.backup;
  const of = (id: string) => job.facts.loads.circuits[id];
  const backed = (id: string) => circuits.find((circuit) => circuit.id === id);
  const columns: readonly Column[] = [
    { id: 'name', title: 'circuit', kind: 'figure', words: true, show: (id) => of(id)?.name ?? '' },
    { id: 'moved', title: 'moved', kind: 'tick', path: at('moved') },
    {
      id: 'shed',
      title: 'shed first',
      kind: 'tick',
      path: at('shed'),
      also: (id) => (job.choices.backup?.circuits[id] === undefined ? [{ path: at('moved')(id), value: false }] : []),
    },
    { id: 'lines', title: 'stands on', kind: 'figure', words: true, show: (id) => of(id)?.lines.join(' ') ?? '' },
    { id: 'run', title: 'running', unit: 'W', kind: 'figure', show: (id) => figure(of(id)?.runW ?? 0, 0) },
    { id: 'night', title: 'at night', unit: 'W', kind: 'figure', show: (id) => figure(of(id)?.nightW ?? 0, 0) },
    { id: 'wanted', title: 'in an outage', kind: 'figure', words: true, show: (id) => of(id)?.wanted ?? '' },
    {
      id: 'dark',
      title: 'comes to',
      kind: 'figure',
      words: true,
      show: (id) => {
        const circuit = backed(id);
        if (circuit === undefined) return '';
        if (circuit.moved && !circuit.fed) return 'moved and not fed';
        if (leftDark.includes(id)) return 'stays dark';
        return circuit.fed ? 'stays on' : 'dark, as wanted';
      },
      state: (id) => (leftDark.includes(id) ? 'ask' : undefined),
    },
  ];
  return (
    <Grid
      label="moved circuits"
      rows={Object.entries(job.facts.loads.circuits).map(([id, { name }]) => ({ id, name, subject: `load:${id}` }))}
      columns={columns}
      selected={selected}
      onSelect={onSelect}
      marks={cellMarks(plan)}
    />
  );
}
