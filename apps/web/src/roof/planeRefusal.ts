import type { CellRefusal } from '../grid/cellRefusal.ts';
import { valueAt } from '../job/path.ts';
import { figure } from '../words/figure.ts';

type Side = 'left' | 'right';

const mm = (metres: number) => `${figure(metres * 1000, 0)}\u00a0mm`;

/**
 * Why a plane of these sizes cannot stand on any house, or undefined where it can, or is not yet told in full.
 *
 * Its four corners are joined by straight edges, so it closes where the ridge ends after it begins. A hip leans in over
 * its own eave; a verge or a wall may be raked, but not past 45° in the surface. A valley leans out as far as it likes.
 * Whether two measures agree is another question, which the checks ask.
 *
 * @param plane  as the document holds it, maybe half filled in.
 */
export function planeRefusal(plane: unknown): CellRefusal | undefined {
  const number = (field: string) => {
    const value = valueAt(plane, [field]);
    return typeof value === 'number' ? value : undefined;
  };
  const eave = number('eaveLengthM');
  const slope = number('slopeLengthM');
  const from = number('ridgeFromM');
  const to = number('ridgeToM');
  if (from !== undefined && to !== undefined && from > to)
    return {
      found: `The ridge would begin at ${mm(from)} and end at ${mm(to)}`,
      wanted: 'a ridge that ends after it begins',
      mend: 'Both are counted from the left end of the eave. Move the other end first.',
    };
  const outM: Record<Side, number | undefined> = {
    left: from === undefined ? undefined : -from,
    right: eave === undefined || to === undefined ? undefined : to - eave,
  };
  for (const side of ['left', 'right'] as const) {
    const out = outM[side];
    if (out === undefined || out <= 0) continue;
    const kind = valueAt(plane, ['edges', side]);
    const past = `The ridge would reach ${mm(out)} past the ${side} end of the eave`;
    const wayOut = `${side === 'left' ? 'Draw in the ridge' : 'Lengthen the eave or draw in the ridge'} first, or call the ${side} edge a valley.`;
    if (kind === 'hip')
      return {
        found: `${past}, and a hip leans in`,
        wanted: 'a ridge inside the eave',
        mend: wayOut,
      };
    if ((kind === 'verge' || kind === 'wall') && slope !== undefined && out > slope)
      return {
        found: `${past}, further than the slope of ${mm(slope)} is long`,
        wanted: 'a verge or wall raked by 45° at most',
        mend: wayOut,
      };
  }
  return undefined;
}
