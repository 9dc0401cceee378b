import type { ExistingFacts, Facts, Job, SiteFacts, SupplyFacts } from '@eaveline/job';
import type { PlacedModule } from '../array/types.ts';
import { sheetOf } from '../equipment.ts';
import type { Stage } from '../stage.ts';
import type { Line } from '../trunks/types.ts';
import { type Working, worked } from '../working.ts';
import { nineInTen, rangeWorking } from './energyRange.ts';
import { type ExportLimit, exportLossAtMostKwh } from './exportCap.ts';
import { houseLoads } from './houseLoads.ts';
import { DUST } from './moduleYear.ts';
import { moduleYears } from './moduleYears.ts';
import { meanDays, sumArray } from './sumArray.ts';
import type { EnergyPlan, ModuleEnergy } from './types.ts';
import { unitWires } from './unitWire.ts';
import { workUnits } from './workUnits.ts';

/** What the energy depends on. */
export interface EnergyView {
  readonly equipment: Job['choices']['equipment'];
  readonly units: Job['choices']['units'];
  readonly objects: readonly SiteFacts['objects'][string][];
  readonly horizon: SiteFacts['horizon'];
  readonly supply: Pick<SupplyFacts, 'system' | 'nominalV'>;
  readonly exportLimit: ExportLimit;
  readonly loads: Pick<Facts['loads'], 'annualKwh' | 'dayShape'>;
}

/** Sun to a.c. at the board, module by module, hour by hour. */
export const energyStage: Stage<'energy', 'sun' | 'roof' | 'array' | 'trunks', EnergyView> = {
  name: 'energy',
  before: ['sun', 'roof', 'array', 'trunks'],
  view: ({ facts, choices }) => ({
    equipment: energyEquipment(choices.equipment),
    units: choices.units,
    objects: Object.values(facts.site.objects),
    horizon: facts.site.horizon,
    supply: { system: facts.supply.system, nominalV: facts.supply.nominalV },
    exportLimit: {
      ...exportLimitOf(facts.network, choices.exportLimitSetVA),
      ...thereOf(facts.existing, facts.supply.nominalV),
    },
    loads: { annualKwh: facts.loads.annualKwh, dayShape: facts.loads.dayShape },
  }),
  run: (view, { sun, roof, array, trunks }): EnergyPlan => {
    const sheetOfUnit = (id: string) => {
      const unit = view.units[id];
      if (unit === undefined) throw new Error(`unit '${id}' is not in the job`);
      return sheetOf(view.equipment, unit.sheet, 'unit');
    };
    const wires = unitWires(trunks, sheetOfUnit, view.supply);
    const planes = new Map(roof.planes.map((plane) => [plane.id, plane]));
    const range = nineInTen(sun.climate.annualSd);
    const { equipment, objects, horizon } = view;
    const years = moduleYears({ sun, planes: roof.planes, modules: array.modules, equipment, objects, horizon });
    const context = { sun, planes, wires, sheetOfUnit, units: view.units, equipment, range };
    const units = workUnits(array.modules, years, context);
    const modules = inOrder(
      array.modules,
      units.flatMap((unit) => unit.modules),
    );
    const { acW, acByLineW } = sumArray(units, wires, sun.steps);
    const monthlyKwh = Array.from({ length: 12 }, (_, m) => sum(modules.map((one) => one.monthlyKwh[m] as number)));
    const annualKwh = sum(monthlyKwh);
    const lossAtMost = exportLossAtMostKwh(acByLineW, view.exportLimit, sun.stepS);
    const working = annualWorking(array.modules, modules, planes, annualKwh, range, sun.climate);
    return {
      modules,
      monthlyKwh,
      annualKwh,
      rangeKwh: [annualKwh * range[0], annualKwh * range[1]],
      kwhPerKw: array.stcW > 0 ? annualKwh / (array.stcW / 1000) : 0,
      clippedKwh: sum(modules.map((one) => one.clippedKwh)),
      ...(lossAtMost !== undefined && { exportLimitLossAtMostKwh: lossAtMost }),
      acW,
      acByLineW,
      meanDayW: meanDays(acW, sun),
      loads: houseLoads(view.loads, sun.daylight),
      working,
      workings: [
        working,
        rangeWorking(sun.climate.annualSd, sun.climate.quality),
        ...lossWorking(lossAtMost, view.exportLimit),
      ],
      leavesOut: [...leavesOut, ...years.why],
    };
  },
};

const leavesOut = [
  'Shadows are followed at four points in each of a module’s three sections. Cells of one section in unlike light are not followed, nor modules that shade each other.',
  'A tree is one crown from its foot to its top, the same in all months. A building is a square block with its sides to the compass points; its survey has one width.',
  'Near objects hide their share of an evenly bright sky, and neither brighten the module nor darken the ground before it.',
  `Dust takes ${DUST * 100} % all year, common practice, no source. Snow, age and damage are not followed.`,
  'Cells warm by the sheet’s own rule, without wind. Light from behind is not counted.',
  'A unit has one efficiency. Its tracking window and its start are judged by the checks, not hour by hour.',
  'Wire loss falls with the square of the power, all units of a trunk loaded alike. The mains are left out: the house’s own use flows there too.',
  'High grid voltage that holds units back is not followed.',
] as const;

/** Only the sheets that energy is made from: a new breaker leaves the year as it was. */
function energyEquipment(equipment: Job['choices']['equipment']): Job['choices']['equipment'] {
  return Object.fromEntries(Object.entries(equipment).filter(([, { kind }]) => kind === 'module' || kind === 'unit'));
}

/** The limit as set, else as the network gives it; the set one is for a line where the network’s is. */
function exportLimitOf(
  { exportLimitVAPerLine, exportLimitVATotal }: Facts['network'],
  setVA: number | undefined,
): ExportLimit {
  const perLine = exportLimitVAPerLine !== undefined;
  const perLineVA = perLine ? (setVA ?? exportLimitVAPerLine) : undefined;
  const totalVA = perLine ? exportLimitVATotal : (setVA ?? exportLimitVATotal);
  return { ...(perLineVA !== undefined && { perLineVA }), ...(totalVA !== undefined && { totalVA }) };
}

/** Solar already there, at its rating on each of its lines; left out where there is none. */
function thereOf(existing: Readonly<Record<string, ExistingFacts>>, nominalV: number): Pick<ExportLimit, 'thereVA'> {
  const thereVA: Partial<Record<Line, number>> = {};
  for (const { kind, ratedA, lines } of Object.values(existing)) {
    if (kind !== 'solar') continue;
    for (const line of lines) thereVA[line] = (thereVA[line] ?? 0) + ratedA * nominalV;
  }
  return Object.keys(thereVA).length === 0 ? {} : { thereVA };
}

function inOrder(placed: readonly PlacedModule[], worked: readonly ModuleEnergy[]): ModuleEnergy[] {
  const byId = new Map(worked.map((one) => [one.moduleId, one]));
  return placed.flatMap(({ id }) => byId.get(id) ?? []);
}

function annualWorking(
  placed: readonly PlacedModule[],
  modules: readonly ModuleEnergy[],
  planes: ReadonlyMap<string, { readonly name: string }>,
  annualKwh: number,
  range: readonly [number, number],
  climate: { readonly name: string },
): Working {
  const byPlane = [...planes].flatMap(([id, { name }]) => {
    const own = modules.filter((_, k) => placed[k]?.planeId === id);
    const kwh = sum(own.map((one) => one.annualKwh));
    return own.length > 0
      ? [worked(`${name}, ${own.length} modules`, kwh, 'kWh', 'Σ modules', 'each module’s ledger', [])]
      : [];
  });
  return worked(
    'Energy of the array in a year',
    annualKwh,
    'kWh',
    'Σ modules, at the board',
    'each module’s ledger',
    byPlane,
    {
      range: [annualKwh * range[0], annualKwh * range[1]],
      note: `${climate.name}; nine years in ten`,
      decimals: 0,
    },
  );
}

function lossWorking(lossAtMost: number | undefined, { perLineVA, totalVA, thereVA = {} }: ExportLimit): Working[] {
  if (lossAtMost === undefined) return [];
  const inputs = [
    ...(perLineVA === undefined
      ? []
      : [worked('limit on each line', perLineVA, 'VA', 'as set', 'the network, or the setting', [])]),
    ...(totalVA === undefined
      ? []
      : [worked('limit in sum', totalVA, 'VA', 'as set', 'the network, or the setting', [])]),
    ...Object.entries(thereVA).map(([line, va]) =>
      worked(`solar already there on ${line}`, va, 'VA', 'current at its rating · nominal voltage', 'survey', []),
    ),
  ];
  const old = Object.keys(thereVA).length > 0;
  const note = `if the house used nothing${old ? ' and the solar already there gave its rating' : ''}: the most it can be`;
  return [
    worked(
      'Held back by the export limit, at most',
      lossAtMost,
      'kWh',
      old ? 'Σ max(0, power − (limit − solar already there)) · step' : 'Σ max(0, power − limit) · step',
      'hour by hour',
      inputs,
      { note },
    ),
  ];
}

function sum(values: readonly number[]): number {
  return values.reduce((all, one) => all + one, 0);
}
