import type { Plan, SheetNo, StageName } from '@eaveline/plan';
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

/** The last stage along the road that a sheet reads: it is drawn as soon as that is there. */
export const DRAWN_AFTER: Readonly<Record<SheetNo, StageName>> = {
  '01': 'checks',
  '02': 'checks',
  '03': 'checks',
  '04': 'checks',
  '05': 'checks',
  '06': 'checks',
  '07': 'checks',
  '08': 'checks',
  '09': 'kit',
  '10': 'day',
  '11': 'tests',
  '12': 'tests',
};

/** The plan a sheet can be drawn from; undefined while it still waits for a stage. */
export function planFor(no: SheetNo, { plan, begun }: Pick<Planned, 'plan' | 'begun'>): Plan | undefined {
  return plan ?? (begun?.has.has(DRAWN_AFTER[no]) ? begun.plan : undefined);
}

/**
 * Figures that follow sooner are not marked meanwhile: marking them and taking the marks off again costs two frames
 * of drawing, which the figures then wait for.
 */
export const STALE_AFTER_MS = 100;

/** Are figures of this sheet of an earlier state of the job? */
export function staleOn(no: SheetNo, { stale, fresh }: Planned): boolean {
  return stale && !SHOWN[no].every((stage) => fresh.has(stage));
}
