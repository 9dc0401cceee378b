import type { PlacedModule } from '../array/types.ts';
import type { Mend } from '../finding.ts';
import { insideByM, leftOf } from '../roof/clipConvex.ts';
import { type Box, clearBox } from '../roof/takenArea.ts';
import type { RoofEdge, RoofPlane, UV } from '../roof/types.ts';
import type { CheckContext } from './context.ts';
import { edgeLimit } from './edgeLimit.ts';
import { isWithin } from './rule.ts';

/** A row moved in its plane, m along the eave and up the slope. */
export interface Shift {
  readonly du: number;
  readonly dv: number;
}

/** Moves are given in whole millimetres: nobody marks out finer. */
const MM = 1e-3;

/**
 * The shortest straight move of a row, along the eave or up and down the slope, that clears every edge, obstruction
 * and other row of its plane.
 *
 * Candidates are the moves that just clear one thing each, rounded up to a millimetre: the shortest move that clears
 * everything just clears something, so it is among them. Slanting moves are not tried.
 */
export function shortestShift(context: CheckContext, rowId: string): Shift | undefined {
  const modules = context.array.modules.filter((module) => module.rowId === rowId);
  const plane = context.roof.planes.find(({ id }) => id === modules[0]?.planeId);
  if (plane === undefined) return undefined;
  const others = context.array.modules.filter((one) => one.planeId === plane.id && one.rowId !== rowId);
  const moves = candidates(context, modules, plane, others)
    .filter(({ du, dv }) => Math.abs(du) + Math.abs(dv) > 0)
    .sort((a, b) => Math.abs(a.du) + Math.abs(a.dv) - Math.abs(b.du) - Math.abs(b.dv));
  return moves.find((move) => isClear(context, modules, plane, others, move));
}

/** The move as a mend of the row's place. */
export function shiftMend(context: CheckContext, rowId: string): readonly Mend[] {
  const row = context.choices.rows[rowId];
  const shift = shortestShift(context, rowId);
  if (row === undefined || shift === undefined)
    return [{ words: 'No straight move of the row is enough: take a module out.' }];
  const along = shift.du !== 0;
  const byMm = Math.round(1000 * Math.abs(along ? shift.du : shift.dv));
  const way = along ? (shift.du > 0 ? 'right' : 'left') : shift.dv > 0 ? 'up the slope' : 'down the slope';
  const value = rounded(along ? row.uM + shift.du : row.vM + shift.dv);
  return [
    {
      words: `Move the row ${byMm} mm ${way}.`,
      changes: [{ path: ['choices', 'rows', rowId, along ? 'uM' : 'vM'], value }],
    },
  ];
}

const rounded = (metres: number) => Math.round(metres * 1e6) / 1e6;
// `|| 0`: no move is no move, whichever way it was looked for
const upToMm = (metres: number) => Math.sign(metres) * Math.ceil(Math.abs(metres) / MM - 1e-6) * MM || 0;

function candidates(
  context: CheckContext,
  modules: readonly PlacedModule[],
  plane: RoofPlane,
  others: readonly PlacedModule[],
): readonly Shift[] {
  const moves: Shift[] = [];
  const add = (du: number, dv: number) => moves.push({ du: upToMm(du), dv: upToMm(dv) });
  for (const edge of plane.edges) {
    const line = leftOf(edge.from, edge.to);
    const lackM = limitOf(context, edge) - Math.min(...cornersOf(modules).map((at) => insideByM(line, at)));
    if (Math.abs(line.inward[0]) > 1e-6) add(lackM / line.inward[0], 0);
    if (Math.abs(line.inward[1]) > 1e-6) add(0, lackM / line.inward[1]);
  }
  const inTheWay = [...plane.obstructions.map(clearBox), ...strips(others)];
  for (const box of inTheWay) {
    for (const mine of strips(modules)) {
      add(box.left - mine.right, 0);
      add(box.right - mine.left, 0);
      add(0, box.low - mine.high);
      add(0, box.high - mine.low);
    }
  }
  return moves;
}

function isClear(
  context: CheckContext,
  modules: readonly PlacedModule[],
  plane: RoofPlane,
  others: readonly PlacedModule[],
  { du, dv }: Shift,
): boolean {
  const corners = cornersOf(modules).map(([u, v]): UV => [u + du, v + dv]);
  const offEdges = plane.edges.every((edge) => {
    const line = leftOf(edge.from, edge.to);
    return corners.every((at) => isWithin(insideByM(line, at), limitOf(context, edge), 'at least'));
  });
  if (!offEdges) return false;
  const inTheWay = [...plane.obstructions.map(clearBox), ...strips(others)];
  return strips(modules).every((mine) =>
    inTheWay.every((box) => {
      const across = Math.min(box.right, mine.right + du) - Math.max(box.left, mine.left + du);
      const up = Math.min(box.high, mine.high + dv) - Math.max(box.low, mine.low + dv);
      return across <= 1e-9 || up <= 1e-9;
    }),
  );
}

function limitOf(context: CheckContext, edge: RoofEdge): number {
  return edgeLimit(context, edge.side).limitM;
}

const cornersOf = (modules: readonly PlacedModule[]) => modules.flatMap(({ corners }) => corners);

/** Modules this near each other side by side are one thing in the way: nothing of a roof stands in a clamp gap, m. */
const CLAMP_GAP_M = 0.05;

/** Modules as the strips they make: a hall of thousands of modules has few of them to look at. */
function strips(modules: readonly PlacedModule[]): readonly Box[] {
  const boxes = modules
    .map(({ at, widthM, heightM }): Box => ({ left: at[0], right: at[0] + widthM, low: at[1], high: at[1] + heightM }))
    .sort((one, other) => one.low - other.low || one.high - other.high || one.left - other.left);
  const found: Box[] = [];
  for (const box of boxes) {
    const last = found.at(-1);
    const goesOn =
      last !== undefined && last.low === box.low && last.high === box.high && box.left - last.right <= CLAMP_GAP_M;
    if (goesOn) found[found.length - 1] = { ...last, right: Math.max(last.right, box.right) };
    else found.push(box);
  }
  return found;
}
