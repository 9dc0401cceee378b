import type { PlaneFacts } from '../schema/facts.ts';

/** Two measures of one length that were taken apart from each other. */
export interface TwoMeasures {
  /** What is measured twice: `slope`. */
  readonly what: 'slope' | 'ridge against eave';
  readonly firstM: number;
  readonly secondM: number;
  /** |first − second| ÷ second, a share. */
  readonly apart: number;
}

const two = (what: TwoMeasures['what'], firstM: number, secondM: number): TwoMeasures => ({
  what,
  firstM,
  secondM,
  apart: Math.abs(firstM - secondM) / secondM,
});

/**
 * The taped slope and the slope by its plan:
 *
 *     L  against  W ÷ cos p
 *
 * with W the plan width from eave to below the ridge and p the pitch. Undefined until all three are there, or where
 * they give no length.
 */
export function slopeMeasures(
  plane: Partial<Pick<PlaneFacts, 'slopeLengthM' | 'planWidthM' | 'pitchDeg'>>,
): TwoMeasures | undefined {
  const { slopeLengthM, planWidthM, pitchDeg } = plane;
  if (slopeLengthM === undefined || planWidthM === undefined || pitchDeg === undefined) return undefined;
  const byPlanM = planWidthM / Math.cos((pitchDeg * Math.PI) / 180);
  return byPlanM > 0 && Number.isFinite(byPlanM) ? two('slope', slopeLengthM, byPlanM) : undefined;
}

/**
 * Ridge against eave of a plane between two verges or walls: its sides run straight up, so both are one length.
 * Undefined for hips and valleys, where the ridge is shorter or longer by right.
 */
export function ridgeMeasures(
  plane: Partial<Pick<PlaneFacts, 'eaveLengthM' | 'ridgeFromM' | 'ridgeToM'>> & {
    readonly edges?: Partial<Pick<PlaneFacts['edges'], 'left' | 'right'>> | undefined;
  },
): TwoMeasures | undefined {
  const { eaveLengthM, ridgeFromM, ridgeToM, edges } = plane;
  if (eaveLengthM === undefined || ridgeFromM === undefined || ridgeToM === undefined) return undefined;
  const straight = [edges?.left, edges?.right].every((edge) => edge === 'verge' || edge === 'wall');
  return straight ? two('ridge against eave', ridgeToM - ridgeFromM, eaveLengthM) : undefined;
}

/** All pairs of measures this plane has. */
export function measuresOf(
  plane: Parameters<typeof slopeMeasures>[0] & Parameters<typeof ridgeMeasures>[0],
): TwoMeasures[] {
  return [slopeMeasures(plane), ridgeMeasures(plane)].filter((pair) => pair !== undefined);
}
