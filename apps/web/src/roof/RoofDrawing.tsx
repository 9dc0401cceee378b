import type { Job } from '@eaveline/job';
import type { Plan } from '@eaveline/plan';
import { useId } from 'react';
import { openState } from '../checks/openState.ts';
import { Drawing } from '../drawing/Drawing.tsx';
import { type Box, freeSpot } from '../drawing/freeSpot.ts';
import { Hatch } from '../drawing/Hatch.tsx';
import { linesOfModules } from '../drawing/linesOfModules.ts';
import { NorthArrow } from '../drawing/NorthArrow.tsx';
import { boundsOf, planView } from '../drawing/planView.ts';
import { Sideways } from '../drawing/Sideways.tsx';
import { scaleFor } from '../drawing/scale.ts';
import { useWidth } from '../drawing/useWidth.ts';
import { labelOf } from './labelSpot.ts';
import { ModuleOnRoof } from './ModuleOnRoof.tsx';
import { nameSpot } from './nameSpot.ts';
import { ObstructionOnRoof } from './ObstructionOnRoof.tsx';
import { PlaneOnRoof } from './PlaneOnRoof.tsx';
import { RoofSizes } from './RoofSizes.tsx';
import { ThingsAround } from './ThingsAround.tsx';

export interface RoofDrawingProps {
  readonly plan: Plan;
  readonly job: Job;
  readonly selected: string | undefined;
  readonly onSelect: (id: string) => void;
  /** Whether planes or modules are what is selected on it. */
  readonly what: 'planes' | 'modules';
}

/** Room for the mark of what is open on a plane. */
const MARK = { width: 18, height: 18 };

/** The roof from above to scale: planes, what stands on them, setbacks, clear rings, modules, sizes, north. */
export function RoofDrawing({ plan, job, selected, onSelect, what }: RoofDrawingProps) {
  const { ref, width } = useWidth<HTMLDivElement>();
  const hatch = useId();
  const { planes } = plan.roof;
  const sheet = what === 'planes' ? '02' : '03';
  const findings = plan.checks.findings.filter((finding) => finding.sheet === sheet);
  const bounds = boundsOf(planes);
  const phone = width < 500;
  const house = { wideM: bounds.maxE - bounds.minE, highM: bounds.maxN - bounds.minN };
  const roomy = { x: phone ? 30 : 42, y: 54, foot: 44 };
  const fits = scaleFor(house, { width: width - 2 * roomy.x, height: phone ? 700 : 470 });
  // a wide house gets less room round it before it is drawn smaller than modules can be lettered
  const tight = { ...roomy, x: 22 };
  const tightFits = fits > 200 ? scaleFor(house, { width: width - 2 * tight.x, height: 560 }) : fits;
  const margin = tightFits < fits ? tight : roomy;
  const view = planView(bounds, phone ? Math.min(fits, 125) : tightFits, margin);
  const left = Math.max((width - view.width) / 2, 0);

  const lines = linesOfModules(plan);
  const boxes = [
    ...plan.array.modules.map(({ planeId, corners }) => ({ planeId, corners })),
    ...planes.flatMap(({ id, obstructions }) =>
      obstructions.map(({ centre: [u, v], widthM, clearM }) => {
        const r = widthM / 2 + clearM;
        return {
          planeId: id,
          corners: [
            [u - r, v - r],
            [u + r, v + r],
            [u - r, v + r],
            [u + r, v - r],
          ] as const,
        };
      }),
    ),
  ].flatMap(({ planeId, corners }): Box[] => {
    const plane = planes.find(({ id }) => id === planeId);
    if (plane === undefined) return [];
    const points = corners.map((corner) => view.inPlane(plane, corner));
    const xs = points.map(([x]) => x);
    const ys = points.map(([, y]) => y);
    const [x, y] = [Math.min(...xs), Math.min(...ys)];
    return [{ x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y }];
  });

  const labels = planes.flatMap((plane) =>
    plane.obstructions.map((obstruction) => ({ plane, obstruction, label: labelOf(obstruction, plane, view, boxes) })),
  );
  const taken = [...boxes, ...labels.map(({ label }) => label.box)];

  return (
    <Sideways room={ref}>
      <Drawing
        width={Math.max(view.width, width - 1)}
        height={view.height}
        left={left}
        label={`Roof from above, 1:${view.scale}, ${planes.length} planes, ${plan.array.modules.length} modules`}
      >
        <defs>
          <Hatch id={hatch} ink="fails" />
        </defs>
        {planes.map((plane) => {
          const outline = (plane.usable.length > 2 ? plane.usable : plane.outline).map((at) => view.inPlane(plane, at));
          const name = `${plane.name} ${Number(plane.pitchDeg.toFixed(1))}°`;
          const open = openState(findings, { kind: 'plane', id: plane.id });
          const spot = nameSpot(name, outline, taken);
          const marked =
            open &&
            (freeSpot(outline, spot === undefined ? taken : [...taken, spot.box], MARK) ?? spot?.at ?? outline[0]);
          return (
            <PlaneOnRoof
              key={plane.id}
              plane={plane}
              view={view}
              name={name}
              spot={spot}
              markAt={marked}
              open={open}
              selected={selected === `plane:${plane.id}`}
              onSelect={what === 'planes' ? onSelect : undefined}
            />
          );
        })}
        {plan.array.modules.map((module) => {
          const plane = planes.find(({ id }) => id === module.planeId);
          if (plane === undefined) return null;
          return (
            <ModuleOnRoof
              key={module.id}
              module={module}
              plane={plane}
              view={view}
              lines={lines.get(module.id) ?? []}
              annualKwh={plan.energy.modules.find(({ moduleId }) => moduleId === module.id)?.annualKwh}
              open={openState(findings, { kind: 'module', id: module.id, parts: true })}
              selected={selected === `module:${module.id}`}
              onSelect={what === 'modules' ? onSelect : undefined}
              hatch={hatch}
            />
          );
        })}
        {labels.map(({ plane, obstruction, label }) => (
          <ObstructionOnRoof key={obstruction.id} obstruction={obstruction} plane={plane} view={view} label={label} />
        ))}
        <RoofSizes plan={plan} view={view} bounds={bounds} selected={selected} />
        <ThingsAround objects={job.facts.site.objects} view={view} bounds={bounds} />
        <NorthArrow x={margin.x - 18} y={2} />
        <text className="qt close" x={view.width - margin.x} y={view.height - 4} textAnchor="end">
          1:{view.scale}, slopes as seen from above
        </text>
      </Drawing>
    </Sideways>
  );
}
