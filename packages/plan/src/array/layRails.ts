import type { ClampSheet, Job, ModuleSheet, RowChoice } from '@eaveline/job';
import type { RoofPlane } from '../roof/types.ts';
import { layFeet } from './layFeet.ts';
import { laidSizeM } from './placeModules.ts';
import type { ArrayRow, PlacedModule, Rail } from './types.ts';

type Mounting = NonNullable<Job['choices']['mounting']>;

/** One row with what its rails need to know. */
export interface RailedRow {
  readonly row: ArrayRow;
  readonly choice: RowChoice;
  readonly sheet: ModuleSheet;
  readonly plane: RoofPlane;
  /** In the order of their places. */
  readonly modules: readonly PlacedModule[];
}

/** Two rails under a row, along the eave, each with its feet and the places where frames bear on it. */
export function layRails(
  { row, choice, sheet, plane, modules }: RailedRow,
  mounting: Mounting,
  endClamp: ClampSheet,
): Rail[] {
  const first = modules[0];
  const last = modules.at(-1);
  if (first === undefined || last === undefined) return [];
  // the rail has to reach under the whole end clamp, however short it was chosen
  const pastM = Math.max(mounting.railPastMm, endClamp.gapMm) / 1000;
  const fromU = first.at[0] - pastM;
  const toU = last.at[0] + last.widthM + pastM;
  const laid = layFeet(fromU, toU, mounting.footSpacingMm / 1000, plane.raftersU);
  return (['lower', 'upper'] as const).map((which, k): Rail => {
    const id = `${row.id}-${which}`;
    const zone = clampZone(choice, sheet, which);
    const fromModuleEdgeMm = choice.railsMm?.[k] ?? (zone.mm[0] + zone.mm[1]) / 2;
    return {
      id,
      name: `${row.name} ${which}`,
      rowId: row.id,
      planeId: row.planeId,
      v: row.at[1] + fromModuleEdgeMm / 1000,
      fromU,
      toU,
      lengthMm: (toU - fromU) * 1000,
      feet: laid.feet.map((foot, n) => ({ id: `${id}-${n + 1}`, ...foot })),
      onRafters: laid.onRafters,
      keepsLimits: laid.keepsLimits,
      clamps: clampPlaces(modules),
      fromModuleEdgeMm,
      zoneMm: zone.mm,
      zoneKnown: zone.known,
      inZone: zone.known && fromModuleEdgeMm >= zone.mm[0] && fromModuleEdgeMm <= zone.mm[1],
    };
  });
}

/**
 * Where a rail may hold the modules, mm from their lower edge.
 *
 * The sheet gives the zone on the long side. In portrait that side runs up the slope and the rails cross it there. In
 * landscape rails along the eave cross the short side, for which the sheet says nothing: the same shares of it serve
 * to draw with, and the zone counts as not known.
 */
function clampZone(choice: RowChoice, sheet: ModuleSheet, which: 'lower' | 'upper') {
  const heightMm = laidSizeM(sheet, choice.orientation).heightM * 1000;
  const [from, to] = [sheet.clampZoneFrom * heightMm, sheet.clampZoneTo * heightMm];
  const mm: readonly [number, number] = which === 'lower' ? [from, to] : [heightMm - to, heightMm - from];
  return { mm, known: choice.orientation === 'portrait' };
}

/** End clamps at the row's ends and at every place left out, mid clamps in the middle of the gaps between. */
function clampPlaces(modules: readonly PlacedModule[]): Rail['clamps'] {
  return modules.flatMap((module, k): Rail['clamps'][number][] => {
    const before = modules[k - 1];
    const after = modules[k + 1];
    const left = module.at[0];
    const right = left + module.widthM;
    const joined = before !== undefined && before.place === module.place - 1;
    const start = joined
      ? { u: (before.at[0] + before.widthM + left) / 2, kind: 'mid' as const }
      : { u: left, kind: 'end' as const };
    const ends = after === undefined || after.place !== module.place + 1;
    return ends ? [start, { u: right, kind: 'end' }] : [start];
  });
}
