import type { RoofEdge } from '../roof/types.ts';
import type { Limit } from '../rules/pack.ts';
import type { CheckContext } from './context.ts';

/** What has to stay free along one side of a plane, and where that stands. */
export interface EdgeLimit {
  readonly limitM: number;
  readonly from: Pick<Limit<unknown>, 'clause' | 'document' | 'seen'>;
}

/**
 * The largest of what the region asks and what was chosen for this job.
 *
 * The region's strip is its own figure, or its number of gaps under the module where the gap is chosen, and at the
 * ridge the wider one where the array takes more of the roof in plan than the region lets pass.
 */
export function edgeLimit(context: CheckContext, side: RoofEdge['side']): EdgeLimit {
  const { pack, choices } = context;
  const which = side === 'eave' ? 'eaveM' : side === 'ridge' ? 'ridgeM' : 'sideM';
  const asked: EdgeLimit[] = [{ limitM: pack.setbacks[which].value, from: pack.setbacks[which] }];
  const gapMm = choices.mounting?.gapUnderMm;
  if (pack.setbackGaps !== undefined && gapMm !== undefined) {
    // the region's own figure is worked out from the gap: it takes the place of the one for a gap of 100 mm
    asked[0] = { limitM: (pack.setbackGaps.value * gapMm) / 1000, from: pack.setbackGaps };
  }
  const wide = pack.ridgeAboveShare;
  if (side === 'ridge' && wide !== undefined && roofShare(context) > wide.value.roofShare) {
    asked.push({ limitM: wide.value.ridgeM, from: wide });
  }
  const chosenM = choices.setbacks[which];
  if (chosenM !== undefined) {
    asked.push({ limitM: chosenM, from: { clause: 'strip chosen for this job', document: 'job', seen: 'job' } });
  }
  return asked.reduce((most, one) => (one.limitM > most.limitM ? one : most));
}

/** Share of the whole roof that the array covers, both in plan. */
export function roofShare({ array, roof }: Pick<CheckContext, 'array' | 'roof'>): number {
  const level = new Map(roof.planes.map((plane) => [plane.id, Math.cos((plane.pitchDeg * Math.PI) / 180)]));
  const roofM2 = roof.planes.reduce((sum, plane) => sum + plane.areaM2 * (level.get(plane.id) ?? 1), 0);
  const arrayM2 = array.modules.reduce(
    (sum, { planeId, widthM, heightM }) => sum + widthM * heightM * (level.get(planeId) ?? 1),
    0,
  );
  return roofM2 > 0 ? arrayM2 / roofM2 : 0;
}
