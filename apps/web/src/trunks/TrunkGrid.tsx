import type { SheetProps } from '../desk/sheetView.ts';
import { cellMarks } from '../grid/cellMarks.ts';
import type { Column } from '../grid/column.ts';
import { Grid } from '../grid/Grid.tsx';
import { lineOptions, same, sheetsOfKind } from '../grid/options.ts';
import { figure } from '../words/figure.ts';
import { riseFinding } from './headOfTrunks.ts';

const at =
  (...steps: readonly string[]) =>
  (id: string) => ['choices', 'trunks', id, ...steps];

const METHODS = same(['A1', 'A2', 'B1', 'B2', 'C', 'D1', 'E', 'raceway']);

/** Every trunk as it was chosen: its cable, where it is fed, the home run and how that lies, its breaker. */
export function TrunkGrid({ plan, job, selected, onSelect }: SheetProps) {
  const rows = Object.entries(job.choices.trunks).map(([id, { name }]) => ({ id, name, subject: `rise:${id}` }));
  const laid = (id: string) => plan.trunks.trunks.find((trunk) => trunk.id === id);
  const columns: readonly Column[] = [
    { id: 'name', title: 'trunk', kind: 'text', path: at('name') },
    { id: 'lines', title: 'lines', kind: 'pick', path: at('lines'), options: lineOptions(job) },
    { id: 'units', title: 'units', kind: 'figure', show: (id) => String(laid(id)?.unitCount ?? '') },
    {
      id: 'rise',
      title: 'rises',
      unit: 'V',
      kind: 'figure',
      show: (id) => {
        const trunk = laid(id);
        return trunk === undefined ? '' : figure(trunk.rise.totalV, 2);
      },
      state: (id) => riseFinding(plan.checks.findings, id)?.state,
    },
    { id: 'feed', title: 'fed at drop', kind: 'whole', path: at('feedDrop') },
    { id: 'home', title: 'home run', kind: 'quantity', unit: 'm', path: at('homeRun', 'lengthM') },
    {
      id: 'size',
      title: 'home run in',
      kind: 'pick',
      path: at('homeRun', 'cableSheet'),
      options: sheetsOfKind(job, 'cable'),
    },
    { id: 'method', title: 'method', kind: 'pick', path: at('homeRun', 'route', 'method'), options: METHODS },
    { id: 'ambient', title: 'ambient', kind: 'quantity', unit: '°C', path: at('homeRun', 'route', 'ambientC') },
    {
      id: 'together',
      title: 'together',
      kind: 'whole',
      path: at('homeRun', 'route', 'circuitsTogether'),
      optional: true,
    },
    {
      id: 'insulation',
      title: 'in insulation',
      kind: 'quantity',
      unit: 'mm',
      path: at('homeRun', 'route', 'insulationMm'),
      optional: true,
    },
    { id: 'breaker', title: 'breaker', kind: 'pick', path: at('breakerSheet'), options: sheetsOfKind(job, 'breaker') },
    {
      id: 'cable',
      title: 'trunk cable',
      kind: 'pick',
      path: at('cableSheet'),
      options: sheetsOfKind(job, 'trunk-cable'),
    },
    { id: 'spare', title: 'spare drops', kind: 'whole', path: at('spareDrops'), optional: true },
  ];
  return (
    <Grid
      label="trunks"
      rows={rows}
      columns={columns}
      selected={selected}
      onSelect={onSelect}
      marks={cellMarks(plan)}
      takeOut={{
        changes: ({ id }) => [{ path: at()(id), value: undefined }],
        hangs: ({ id }) => {
          const n = Object.values(job.choices.units).filter(({ trunkId }) => trunkId === id).length;
          return n === 0 ? undefined : `${n} ${n === 1 ? 'unit hangs' : 'units hang'} on it.`;
        },
      }}
    />
  );
}
