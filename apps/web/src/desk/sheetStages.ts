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
  '12': ['energy', 'checks', 'kit', 'day', 'tests'],
};

/** What a sheet is drawn from: it is drawn as soon as these stages are there, and with them all that they stand on. */
export const DRAWN_FROM: Readonly<Record<SheetNo, readonly StageName[]>> = {
  '01': ['checks'],
  '02': ['energy', 'checks'],
  '03': ['energy', 'checks'],
  '04': ['checks'],
  '05': ['checks'],
  '06': ['checks'],
  '07': ['energy', 'checks'],
  '08': ['checks'],
  '09': ['checks', 'kit'],
  '10': ['checks', 'day'],
  '11': ['tests'],
  '12': ['energy', 'checks', 'kit', 'day', 'tests'],
};

/** The plan a sheet can be drawn from; undefined while it still waits for a stage. */
export function planFor(no: SheetNo, { plan, begun }: Pick<Planned, 'plan' | 'begun'>): Plan | undefined {
  return plan ?? (DRAWN_FROM[no].every((stage) => begun?.has.has(stage)) ? begun?.plan : undefined);
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
