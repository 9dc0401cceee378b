import type { PlaneFacts } from '@eaveline/job';
import type { CheckContext } from './context.ts';

/** Planes that carry a module, in the order of the job. */
export function planesInUse({
  facts,
  array,
}: Pick<CheckContext, 'facts' | 'array'>): readonly { readonly id: string; readonly facts: PlaneFacts }[] {
  const used = new Set(array.modules.map((module) => module.planeId));
  return Object.entries(facts.roof.planes)
    .filter(([id]) => used.has(id))
    .map(([id, plane]) => ({ id, facts: plane }));
}
