import { type HousePoint, type PlanePoint, planeToHouse } from '../roof/planeGeometry.ts';
import type { RowChoice } from '../schema/choices.ts';
import type { PlaneFacts } from '../schema/facts.ts';
import type { ModuleSheet } from '../schema/sheets.ts';

/** Width along the eave and height up the slope of one module as it lies in a row, m. */
export function moduleSizeM(
  sheet: Pick<ModuleSheet, 'lengthMm' | 'widthMm'>,
  orientation: 'portrait' | 'landscape',
): { readonly alongM: number; readonly upM: number } {
  const [along, up] = orientation === 'portrait' ? [sheet.widthMm, sheet.lengthMm] : [sheet.lengthMm, sheet.widthMm];
  return { alongM: along / 1000, upM: up / 1000 };
}

/** Four corners of the module at a place of a row, lower left first. */
export function moduleCorners(row: RowChoice, sheet: ModuleSheet, place: number): PlanePoint[] {
  const { alongM, upM } = moduleSizeM(sheet, row.orientation);
  const leftM = row.uM + (place - 1) * (alongM + row.gapMm / 1000);
  return [
    [leftM, row.vM],
    [leftM + alongM, row.vM],
    [leftM + alongM, row.vM + upM],
    [leftM, row.vM + upM],
  ];
}

/** Middle of the module at a place of a row, in the house. */
export function moduleCentre(row: RowChoice, sheet: ModuleSheet, place: number, plane: PlaneFacts): HousePoint {
  const corners = moduleCorners(row, sheet, place);
  const low = corners[0] as PlanePoint;
  const high = corners[2] as PlanePoint;
  return planeToHouse(plane, [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2]);
}
