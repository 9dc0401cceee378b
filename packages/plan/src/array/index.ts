import { sheetOf } from '../equipment.ts';
import type { RoofPlane } from '../roof/types.ts';
import type { Stage } from '../stage.ts';
import type { ArrayView } from './arrayView.ts';
import { layRails, type RailedRow } from './layRails.ts';
import { findOverlaps, laidSizeM, placeModule } from './placeModules.ts';
import type { ArrayPlan, ArrayRow, PlacedModule } from './types.ts';
import { arrayWorkings, massParts } from './workings.ts';

/** Modules in their rows on the planes, rails under them, feet on rafters. */
export const arrayStage: Stage<'array', 'roof', ArrayView> = {
  name: 'array',
  before: ['roof'],
  view: ({ facts, choices }) => ({
    rows: choices.rows,
    modules: choices.modules,
    units: choices.units,
    equipment: choices.equipment,
    ...(choices.mounting && { mounting: choices.mounting }),
    stands: Object.fromEntries(
      Object.entries(facts.roof.planes).map(([id, { facingDeg, pitchDeg, eaveLeft }]) => [
        id,
        { facingDeg, pitchDeg, eaveLeft },
      ]),
    ),
  }),
  run: (view, { roof }): ArrayPlan => {
    const planes = new Map(roof.planes.map((plane) => [plane.id, plane]));
    const modules = findOverlaps(placeAll(view, planes));
    const railed = rowsOf(view, planes, modules);
    const { mounting } = view;
    const endClamp = mounting && sheetOf(view.equipment, mounting.endClampSheet, 'clamp');
    const railsOf = (one: RailedRow) => (mounting && endClamp ? layRails(one, mounting, endClamp) : []);
    const rails = railed.flatMap(railsOf);
    const rows = railed.map(({ row }) => ({
      ...row,
      railIds: rails.filter((rail) => rail.rowId === row.id).map((rail) => rail.id),
    }));
    const mass = massParts(view, modules, rails);
    return {
      modules,
      rows,
      rails,
      stcW: modules.reduce((sum, { pmpW }) => sum + pmpW, 0),
      massKg: mass.modulesKg + mass.unitsKg + mass.railsKg,
      workings: arrayWorkings(view, modules, rows, rails, mass),
      leavesOut: mounting ? leavesOut : [...leavesOut, 'No mounting is chosen: rails and feet are not laid.'],
    };
  },
};

const leavesOut = [
  'Rails run along the eave under every row, two to a row. Rails up the slope are not laid.',
  'In landscape the clamps hold the short side. The sheet’s zone is for the long side: ask the maker.',
  'Feet are the fewest that keep spacing and overhang. Feet of neighbouring rails are not staggered, and keep no distance from splices, units or clamps.',
  'Rails are one piece here. Joints and expansion breaks come with the cut list.',
  'Expansion of the rails by heat is not worked out.',
] as const;

function placeAll(view: ArrayView, planes: ReadonlyMap<string, RoofPlane>): PlacedModule[] {
  return Object.entries(view.modules).map(([id, choice]) => {
    const row = had(view.rows[choice.rowId], `row '${choice.rowId}' of module '${id}'`);
    const plane = had(planes.get(row.planeId), `plane '${row.planeId}' of row '${choice.rowId}'`);
    const stand = had(view.stands[row.planeId], `plane '${row.planeId}'`);
    return placeModule(id, choice, row, sheetOf(view.equipment, row.moduleSheet, 'module'), plane, stand);
  });
}

/** `parseJob` refuses a job whose references lead nowhere, so a miss here is our own mistake. */
function had<T>(value: T | undefined, what: string): T {
  if (value === undefined) throw new Error(`${what} is not in the job`);
  return value;
}

function rowsOf(view: ArrayView, planes: ReadonlyMap<string, RoofPlane>, all: readonly PlacedModule[]): RailedRow[] {
  return Object.entries(view.rows).map(([id, choice]): RailedRow => {
    const plane = had(planes.get(choice.planeId), `plane '${choice.planeId}' of row '${id}'`);
    const sheet = sheetOf(view.equipment, choice.moduleSheet, 'module');
    const modules = all.filter((module) => module.rowId === id).sort((a, b) => a.place - b.place);
    const first = modules[0];
    const last = modules.at(-1);
    const row: ArrayRow = {
      id,
      name: `${plane.letter}${choice.row}`,
      planeId: choice.planeId,
      row: choice.row,
      orientation: choice.orientation,
      moduleIds: modules.map((module) => module.id),
      lengthMm: first && last ? (last.at[0] + last.widthM - first.at[0]) * 1000 : 0,
      gapMm: choice.gapMm,
      at: first?.at ?? [choice.uM, choice.vM],
      heightM: laidSizeM(sheet, choice.orientation).heightM,
      railIds: [],
    };
    return { row, choice, sheet, plane, modules };
  });
}
