import { surveyLists } from '@eaveline/job';
import type { SheetProps } from '../desk/sheetView.ts';
import { cellMarks } from '../grid/cellMarks.ts';
import type { Column } from '../grid/column.ts';
import { freshId } from '../grid/freshId.ts';
import { Grid } from '../grid/Grid.tsx';
import { asAsked, same } from '../grid/options.ts';
import { valueAt } from '../job/path.ts';
import { counted, listed, sentence } from '../words/count.ts';
import { figure } from '../words/figure.ts';
import { planeRefusal } from './planeRefusal.ts';

const at =
  (...steps: readonly string[]) =>
  (id: string) => ['facts', 'roof', 'planes', id, ...steps];

const EDGES = same(['eave', 'ridge', 'hip', 'valley', 'verge', 'wall']);

/** The planes as they were measured; beside them what they come to. */
export function PlaneGrid({ plan, job, selected, onSelect }: SheetProps) {
  const { planes } = job.facts.roof;
  const shown = (id: string) => plan.roof.planes.find((plane) => plane.id === id);
  const of = (id: string, value: (plane: NonNullable<ReturnType<typeof shown>>) => string) => {
    const plane = shown(id);
    return plane === undefined ? '' : value(plane);
  };
  const columns: readonly Column[] = [
    { id: 'name', title: 'plane', kind: 'text', path: at('name') },
    { id: 'facing', title: 'faces', kind: 'quantity', unit: '°', path: at('facingDeg') },
    { id: 'pitch', title: 'pitch', kind: 'quantity', unit: '°', path: at('pitchDeg') },
    { id: 'eave', title: 'eave', kind: 'quantity', unit: 'mm', times: 1000, path: at('eaveLengthM') },
    { id: 'slope', title: 'slope', kind: 'quantity', unit: 'mm', times: 1000, path: at('slopeLengthM') },
    {
      id: 'width',
      title: 'plan width',
      kind: 'quantity',
      unit: 'mm',
      times: 1000,
      path: at('planWidthM'),
      optional: true,
    },
    {
      id: 'spacing',
      title: 'rafters every',
      kind: 'quantity',
      unit: 'mm',
      path: at('rafters', 'spacingMm'),
      optional: true,
    },
    {
      id: 'first',
      title: 'first rafter',
      kind: 'quantity',
      unit: 'mm',
      path: at('rafters', 'firstMm'),
      optional: true,
    },
    { id: 'area', title: 'area', unit: 'm²', kind: 'figure', show: (id) => of(id, ({ areaM2 }) => figure(areaM2, 1)) },
    { id: 'free', title: 'free', unit: 'm²', kind: 'figure', show: (id) => of(id, (p) => figure(p.usableAreaM2, 1)) },
    {
      id: 'sun',
      title: 'sun a year',
      unit: 'kWh/m²',
      kind: 'figure',
      show: (id) => of(id, ({ sun }) => figure(sun.annualKwhM2, 0)),
    },
    { id: 'covering', title: 'covering', kind: 'pick', path: at('covering'), options: COVERINGS },
    { id: 'from', title: 'ridge from', kind: 'quantity', unit: 'mm', times: 1000, path: at('ridgeFromM') },
    { id: 'to', title: 'ridge to', kind: 'quantity', unit: 'mm', times: 1000, path: at('ridgeToM') },
    { id: 'left', title: 'left edge', kind: 'pick', path: at('edges', 'left'), options: EDGES },
    { id: 'right', title: 'right edge', kind: 'pick', path: at('edges', 'right'), options: EDGES },
    { id: 'east', title: 'left end east', kind: 'quantity', unit: 'm', path: at('eaveLeft', 'eastM') },
    { id: 'north', title: 'left end north', kind: 'quantity', unit: 'm', path: at('eaveLeft', 'northM') },
    { id: 'height', title: 'eave height', kind: 'quantity', unit: 'm', path: at('eaveLeft', 'heightM') },
  ];
  return (
    <Grid
      label="planes"
      rows={Object.entries(planes).map(([id, { name }]) => ({ id, name, subject: `plane:${id}` }))}
      columns={columns}
      selected={selected}
      onSelect={onSelect}
      marks={cellMarks(plan)}
      refuses={(id, document) => planeRefusal(valueAt(document, at()(id)))}
      add={{
        words: 'Add a plane',
        row: () => {
          const id = freshId('plane', planes);
          return { id, name: 'the new plane', subject: `plane:${id}` };
        },
      }}
      takeOut={{
        changes: ({ id }) => [{ path: at()(id), value: undefined }],
        hangs: ({ id }) => standsOn(job, id),
      }}
    />
  );
}

const COVERINGS = asAsked(surveyLists.planes.questions, 'covering');

/** What would hang in the air without the plane. */
function standsOn({ choices, facts }: SheetProps['job'], planeId: string): string | undefined {
  const rows = Object.values(choices.rows).filter((row) => row.planeId === planeId).length;
  const things = Object.values(facts.roof.obstructions).filter((thing) => thing.planeId === planeId).length;
  if (rows + things === 0) return undefined;
  const what = [...(rows > 0 ? [counted(rows, 'row')] : []), ...(things > 0 ? [counted(things, 'obstruction')] : [])];
  const many = rows + things > 1;
  return `${sentence(listed(what))} ${many ? 'stand' : 'stands'} on it: move ${many ? 'them' : 'it'} or take ${many ? 'them' : 'it'} out first.`;
}
