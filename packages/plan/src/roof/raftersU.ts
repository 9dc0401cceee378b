import type { PlaneFacts } from '@eaveline/job';

/** u of each rafter's middle along the eave, m; undefined where the first rafter or the spacing was not taken. */
export function raftersU({ rafters, eaveLengthM }: PlaneFacts): number[] | undefined {
  const { firstMm, spacingMm } = rafters;
  if (firstMm === undefined || spacingMm === undefined) return undefined;
  const count = Math.floor((eaveLengthM * 1000 - firstMm) / spacingMm + 1e-9) + 1;
  return Array.from({ length: Math.max(0, count) }, (_, k) => (firstMm + k * spacingMm) / 1000);
}
