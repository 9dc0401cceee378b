import { FindingsHere } from '../checks/FindingsHere.tsx';
import type { SheetProps } from '../desk/sheetView.ts';
import { Part } from '../parts/Part.tsx';
import { ObstructionGrid } from './ObstructionGrid.tsx';
import { PlaneGrid } from './PlaneGrid.tsx';
import { RoofDrawing } from './RoofDrawing.tsx';

/** Sheet 02: the planes as they were measured, the sun each sees, and what stands on them. */
export function RoofSheet(props: SheetProps) {
  const { planes, obstructions } = props.job.facts.roof;
  return (
    <>
      <RoofDrawing {...props} what="planes" />
      <Part title="Planes, as measured" count={Object.keys(planes).length}>
        <PlaneGrid {...props} />
      </Part>
      <Part title="On the roof" count={Object.keys(obstructions).length}>
        <ObstructionGrid {...props} />
      </Part>
      <FindingsHere {...props} findings={props.plan.checks.findings} sheet="02" />
    </>
  );
}
