import type { Job } from '@eaveline/job';
import type { Plan, StageName, WorkedPlan } from './plan.ts';
import { stageNames } from './stageNames.ts';

/** The plan of a job from its thirteen parts. They stand in the order of the road, whichever was walked to first. */
export function planOfParts<P extends Pick<Plan, StageName>>({ id, name, invented }: Job, parts: P) {
  const inOrder = Object.fromEntries(stageNames.map((stage) => [stage, parts[stage]]));
  return { jobId: id, jobName: name, invented, ...(inOrder as unknown as P) };
}

/** A part as sheets and papers read it: without its series of steps, which take a hundred times the room of its figures. */
export function figuresOf<N extends StageName>(stage: N, part: WorkedPlan[N]): Plan[N] {
  const strip = STRIP[stage] as ((part: WorkedPlan[N]) => Plan[N]) | undefined;
  return strip === undefined ? part : strip(part);
}

const STRIP: { readonly [N in StageName]?: (part: WorkedPlan[N]) => Plan[N] } = {
  sun: withoutSeries,
  roof: ({ planes, ...roof }) => ({
    ...roof,
    planes: planes.map((plane) => ({ ...plane, sun: withoutSeries(plane.sun) })),
  }),
  energy: ({ acW: _array, acByLineW: _lines, ...figures }) => figures,
};

function withoutSeries<T extends object>(part: T): T {
  return Object.fromEntries(Object.entries(part).filter(([, value]) => !ArrayBuffer.isView(value))) as T;
}

/** All of a plan as sheets and papers read it. */
export function planFigures(plan: WorkedPlan): Plan {
  const { sun, roof, energy } = plan;
  return { ...plan, sun: figuresOf('sun', sun), roof: figuresOf('roof', roof), energy: figuresOf('energy', energy) };
}
