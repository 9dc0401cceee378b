import { FindingsHere } from '../checks/FindingsHere.tsx';
import type { SheetProps } from '../desk/sheetView.ts';
import { Part } from '../parts/Part.tsx';
import { RoofDrawing } from '../roof/RoofDrawing.tsx';
import { RowDrawing } from './RowDrawing.tsx';
import { RowGrid } from './RowGrid.tsx';

/** Sheet 03: modules on the roof, and the rails and feet of the row one is on. */
export function ArraySheet({ plan, job, selected, onSelect }: SheetProps) {
  const { modules, rows } = plan.array;
  const module = modules.find(({ id }) => selected === `module:${id}`);
  const row = rows.find(({ id }) => id === module?.rowId || selected === `row:${id}`) ?? rows[0];
  return (
    <>
      <RoofDrawing plan={plan} job={job} selected={selected} onSelect={onSelect} what="modules" />
      {row && (
        <Part title={`Row ${row.name} seen from its eave, true lengths`}>
          <RowDrawing plan={plan} row={row} module={module} />
        </Part>
      )}
      <Part title="Rows" count={Object.keys(job.choices.rows).length}>
        <RowGrid plan={plan} job={job} selected={selected} onSelect={onSelect} />
      </Part>
      <FindingsHere findings={plan.checks.findings} sheet="03" selected={selected} onSelect={onSelect} />
    </>
  );
}
