import { sheetOf } from '../equipment.ts';
import { given, type Working, worked } from '../working.ts';
import type { ArrayView } from './arrayView.ts';
import type { ArrayRow, PlacedModule, Rail } from './types.ts';

/** What stands on the roof, kg. */
export interface MassParts {
  readonly modulesKg: number;
  readonly unitsKg: number;
  readonly railsKg: number;
}

/** Mass of modules, of the units under them, and of the rails; clamps, feet and cable are light and left out. */
export function massParts(view: ArrayView, modules: readonly PlacedModule[], rails: readonly Rail[]): MassParts {
  const moduleKg = (module: PlacedModule) => sheetOf(view.equipment, module.sheetId, 'module').massKg;
  const unitIds = [...new Set(modules.map((module) => module.unitId))];
  const unitKg = (id: string) => {
    const unit = view.units[id];
    return unit ? sheetOf(view.equipment, unit.sheet, 'unit').massKg : 0;
  };
  const { mounting } = view;
  const perM = mounting ? sheetOf(view.equipment, mounting.railSheet, 'rail').massKgPerM : 0;
  return {
    modulesKg: sum(modules.map(moduleKg)),
    unitsKg: sum(unitIds.map(unitKg)),
    railsKg: (sum(rails.map((rail) => rail.lengthMm)) / 1000) * perM,
  };
}

/** How power, mass, row and rail lengths come about. */
export function arrayWorkings(
  view: ArrayView,
  modules: readonly PlacedModule[],
  rows: readonly ArrayRow[],
  rails: readonly Rail[],
  mass: MassParts,
): Working[] {
  return [
    ratedPower(view, modules),
    worked(
      'Mass on the roof',
      mass.modulesKg + mass.unitsKg + mass.railsKg,
      'kg',
      'modules + units + rails',
      'equipment sheets',
      [
        worked('modules', mass.modulesKg, 'kg', 'Σ mass of each', 'equipment sheets', []),
        worked('units', mass.unitsKg, 'kg', 'Σ mass of each', 'equipment sheets', []),
        worked('rails', mass.railsKg, 'kg', 'length · mass per metre', 'equipment sheets', []),
      ],
    ),
    ...rows.filter((row) => row.moduleIds.length > 0).map((row) => rowLength(view, row)),
    ...rails.map((rail) => railLength(view, rail, rows)),
  ];
}

function ratedPower(view: ArrayView, modules: readonly PlacedModule[]): Working {
  const counts = new Map<string, number>();
  for (const { sheetId } of modules) counts.set(sheetId, (counts.get(sheetId) ?? 0) + 1);
  const parts = [...counts].flatMap(([id, count]) => {
    const sheet = sheetOf(view.equipment, id, 'module');
    return [
      worked(`${sheet.name}, count`, count, '', 'modules placed', 'the job', []),
      given(`${sheet.name}, rated power`, sheet.pmpW, 'W', `choices.equipment.${id}.pmpW`, 'equipment sheet'),
    ];
  });
  return worked(
    'Rated power of the array',
    sum(modules.map((m) => m.pmpW)),
    'W',
    'Σ count · rated power',
    'equipment sheets',
    parts,
  );
}

function rowLength(view: ArrayView, row: ArrayRow): Working {
  const choice = view.rows[row.id];
  const sheetId = choice?.moduleSheet ?? '';
  const sheet = sheetOf(view.equipment, sheetId, 'module');
  const portrait = row.orientation === 'portrait';
  const width = portrait
    ? given('module, short side', sheet.widthMm, 'mm', `choices.equipment.${sheetId}.widthMm`, 'equipment sheet')
    : given('module, long side', sheet.lengthMm, 'mm', `choices.equipment.${sheetId}.lengthMm`, 'equipment sheet');
  return worked(
    `Row ${row.name}, length`,
    row.lengthMm,
    'mm',
    'n · width + (n − 1) · gap, places left out counted',
    'geometry',
    [
      worked('modules', row.moduleIds.length, '', 'modules placed', 'the job', []),
      width,
      given('gap', row.gapMm, 'mm', `choices.rows.${row.id}.gapMm`),
    ],
    { decimals: 0 },
  );
}

function railLength(view: ArrayView, rail: Rail, rows: readonly ArrayRow[]): Working {
  const row = rows.find((one) => one.id === rail.rowId);
  const { mounting } = view;
  const inputs: Working[] = [
    worked(`Row ${row?.name}`, row?.lengthMm ?? 0, 'mm', 'first frame to last', 'geometry', []),
  ];
  if (mounting) {
    const clamp = sheetOf(view.equipment, mounting.endClampSheet, 'clamp');
    inputs.push(
      given('rail past the last frame', mounting.railPastMm, 'mm', 'choices.mounting.railPastMm'),
      given('end clamp', clamp.gapMm, 'mm', `choices.equipment.${mounting.endClampSheet}.gapMm`, 'equipment sheet'),
    );
  }
  const formula = 'row + 2 · the longer of rail past the frame and end clamp';
  return worked(`Rail ${rail.name}, length`, rail.lengthMm, 'mm', formula, 'geometry', inputs, { decimals: 0 });
}

function sum(values: readonly number[]): number {
  return values.reduce((all, one) => all + one, 0);
}
