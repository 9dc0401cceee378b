import type { ModuleChoice, ModuleSheet, RowChoice } from '@eaveline/job';
import { planeToHouse } from '@eaveline/job';
import { insideByM, leftOf } from '../roof/clipConvex.ts';
import { clearBox } from '../roof/takenArea.ts';
import type { RoofPlane, UV } from '../roof/types.ts';
import type { PlacedModule } from './types.ts';

/** Width along the eave and height up the slope of one module as it lies, m. */
export function laidSizeM(
  sheet: ModuleSheet,
  orientation: RowChoice['orientation'],
): { widthM: number; heightM: number } {
  const [width, height] =
    orientation === 'portrait' ? [sheet.widthMm, sheet.lengthMm] : [sheet.lengthMm, sheet.widthMm];
  return { widthM: width / 1000, heightM: height / 1000 };
}

/** Left edge of a place in a row, m along the eave: places are one width and one gap apart. */
export function placeLeftM(row: RowChoice, widthM: number, place: number): number {
  return row.uM + (place - 1) * (widthM + row.gapMm / 1000);
}

/** Where a plane stands, for turning its own coordinates into the house's. */
export type PlaneStand = Parameters<typeof planeToHouse>[0];

/** One module at its place on its plane, with its room to edges and obstructions; overlaps are found afterwards. */
export function placeModule(
  id: string,
  choice: ModuleChoice,
  row: RowChoice,
  sheet: ModuleSheet,
  plane: RoofPlane,
  stand: PlaneStand,
): PlacedModule {
  const { widthM, heightM } = laidSizeM(sheet, row.orientation);
  const left = placeLeftM(row, widthM, choice.place);
  const low = row.vM;
  const centre: UV = [left + widthM / 2, low + heightM / 2];
  const corners: UV[] = [
    [left, low],
    [left + widthM, low],
    [left + widthM, low + heightM],
    [left, low + heightM],
  ];
  const obstruction = nearestObstruction(plane, corners);
  return {
    id,
    name: `${plane.letter}${row.row}·${choice.place}`,
    rowId: choice.rowId,
    planeId: row.planeId,
    row: row.row,
    place: choice.place,
    unitId: choice.unitId,
    input: choice.input,
    sheetId: row.moduleSheet,
    at: [left, low],
    widthM,
    heightM,
    corners,
    centre,
    centre3d: planeToHouse(stand, centre),
    pmpW: sheet.pmpW,
    clear: roomToEdges(plane, corners),
    ...(obstruction && { obstruction }),
  };
}

/**
 * Least distance from a module's corners to each kind of edge, m; negative beyond it.
 *
 * Plane and module are both convex, so the corner that reaches farthest settles it. A ridge without length counts as
 * a level line through the peak: the module's top has to stay below it.
 */
function roomToEdges(plane: RoofPlane, corners: readonly UV[]): PlacedModule['clear'] {
  const least = (side: 'eave' | 'ridge' | 'side') => {
    const edges = plane.edges.filter(
      (edge) => (edge.side === 'eave' || edge.side === 'ridge' ? edge.side : 'side') === side,
    );
    return Math.min(...edges.flatMap(({ from, to }) => corners.map((corner) => insideByM(leftOf(from, to), corner))));
  };
  const peakV = Math.max(...plane.outline.map(([, v]) => v));
  const toPeak = Math.min(...corners.map(([, v]) => peakV - v));
  const hasRidge = plane.edges.some((edge) => edge.side === 'ridge');
  return { eave: least('eave'), ridge: hasRidge ? least('ridge') : toPeak, side: least('side') };
}

/** The obstruction whose clear zone is nearest, and the room left to it; negative inside. */
function nearestObstruction(plane: RoofPlane, corners: readonly UV[]): PlacedModule['obstruction'] {
  const [[left, low], , [right, high]] = corners as [UV, UV, UV, UV];
  return plane.obstructions
    .map((thing) => {
      const zone = clearBox(thing);
      const acrossM = Math.max(zone.left - right, left - zone.right);
      const upM = Math.max(zone.low - high, low - zone.high);
      // beside and above at once: corner to corner; the zone's own corners are left square, which errs on the safe side
      const roomM = acrossM > 0 && upM > 0 ? Math.hypot(acrossM, upM) : Math.max(acrossM, upM);
      return { id: thing.id, name: thing.name, roomM };
    })
    .reduce<PlacedModule['obstruction']>((best, one) => (best && best.roomM <= one.roomM ? best : one), undefined);
}

/** Two modules whose frames meet but do not cover each other lie up to this far into one another by rounding, m. */
const TOUCH_M = 1e-6;

/** Names for each module another one of the same plane that it lies on, where there is one. */
export function findOverlaps(modules: readonly PlacedModule[]): PlacedModule[] {
  return modules.map((module) => {
    const other = modules.find((one) => one.planeId === module.planeId && one.id !== module.id && cover(module, one));
    return other ? { ...module, overlaps: other.id } : module;
  });
}

function cover(a: PlacedModule, b: PlacedModule): boolean {
  const across = Math.min(a.at[0] + a.widthM, b.at[0] + b.widthM) - Math.max(a.at[0], b.at[0]);
  const up = Math.min(a.at[1] + a.heightM, b.at[1] + b.heightM) - Math.max(a.at[1], b.at[1]);
  return across > TOUCH_M && up > TOUCH_M;
}
