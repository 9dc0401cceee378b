import type { Climate } from './types.ts';

/** `90 km away`: how far from the site the weather was taken, as every screen and paper says it. */
export function howFar({ distanceKm, far }: Pick<Climate, 'distanceKm' | 'far'>): string {
  if (distanceKm === undefined) return 'nobody knows how far away';
  return `${Math.round(distanceKm)} km away${far ? ', farther than it may carry' : ''}`;
}
