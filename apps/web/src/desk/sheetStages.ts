import type { SheetNo, StageName } from '@eaveline/plan';
import type { Planned } from '../job/planning.ts';

/** The stages whose figures a sheet shows as its own. What fails and asks on it is of `checks`. */
const SHOWN: Readonly<Record<SheetNo, readonly StageName[]>> = {
  '01': ['site', 'sun'],
  '02': ['roof', 'array'],
  '03': ['array', 'structure'],
  '04': ['trunks'],
  '05': ['board'],
  '06': ['backup'],
  '07': ['energy'],
  '08': ['checks'],
  '09': ['kit'],
  '10': ['day'],
  '11': ['tests'],
  '12': ['checks', 'kit', 'day', 'tests'],
};

/**
 * Figures that follow sooner are not marked meanwhile: marking them and taking the marks off again costs two frames
 * of drawing, which the figures then wait for.
 */
export const STALE_AFTER_MS = 100;

/** Are figures of this sheet of an earlier state of the job? */
export function staleOn(no: SheetNo, { stale, fresh }: Planned): boolean {
  return stale && !SHOWN[no].every((stage) => fresh.has(stage));
}
