import type { Choices, Job, PlaneFacts, SiteFacts } from '@eaveline/job';
import type { ArrayPlan, Rail } from '../array/types.ts';
import { byKey } from '../byKey.ts';
import { sheetOf } from '../equipment.ts';
import type { RoofPlan, RoofPlane } from '../roof/types.ts';
import { packFor } from '../rules/index.ts';
import type { Stage } from '../stage.ts';
import { worked } from '../working.ts';
import { CODE, snowPa, type UpliftFactors, upliftFactors } from './combinations.ts';
import { houseSize, type ZoneWidths, zoneOf, zoneWidths } from './edgeZones.ts';
import { type Coefficients, type LoadedRail, loadRail, type RailLoading } from './loadRail.ts';
import { railBeam, shareOfRow } from './railBeam.ts';
import { sitePressure, type WindMethod } from './sitePressure.ts';
import type { FootLoad, StructurePlan } from './types.ts';
import { worstFoot } from './worstFoot.ts';

/** What the structure depends on. */
export interface StructureView {
  readonly site: Pick<SiteFacts, 'wind' | 'snow' | 'elevationM'>;
  readonly rafters: Readonly<Record<string, PlaneFacts['rafters']>>;
  readonly units: Choices['units'];
  readonly equipment: Choices['equipment'];
  readonly mounting?: NonNullable<Choices['mounting']>;
  readonly wind: Choices['wind'];
  readonly rules: Choices['rules'];
}

/** Wind and snow on every fixing and rail, against what the fixing's sheet says it holds. */
export const structureStage: Stage<'structure', 'roof' | 'array', StructureView> = {
  name: 'structure',
  before: ['roof', 'array'],
  view: ({ facts, choices }: Job): StructureView => ({
    site: {
      wind: facts.site.wind,
      snow: facts.site.snow,
      ...(facts.site.elevationM === undefined ? {} : { elevationM: facts.site.elevationM }),
    },
    rafters: Object.fromEntries(Object.entries(facts.roof.planes).map(([id, { rafters }]) => [id, rafters])),
    units: choices.units,
    equipment: choices.equipment,
    ...(choices.mounting && { mounting: choices.mounting }),
    wind: choices.wind,
    rules: choices.rules,
  }),

  run(view, { roof, array }): StructurePlan {
    const { method, limit } = packFor(view.rules).wind;
    const { wind, snow, elevationM } = view.site;
    const pressure = sitePressure(method, wind, elevationM);
    const { netUplift, netDown } = view.wind;
    const factorsOf = (planeId: string) => upliftFactors(CODE[method], pitchOf(roof, planeId));
    const widths = widthsByPlane(method, roof, array, wind.roofHeightM);
    const up =
      pressure.pressurePa !== undefined && netUplift
        ? { pressurePa: pressure.pressurePa, coefficients: awayFromRoof(netUplift) }
        : undefined;
    const down = { netDown, pressurePa: pressure.pressurePa, groundKPa: snow.groundKPa };
    const lists = {
      modulesOfRow: byKey(array.modules, ({ rowId }) => rowId),
      modulesOfUnit: byKey(array.modules, ({ unitId }) => unitId),
      railsOfRow: byKey(array.rails, ({ rowId }) => rowId),
    };
    const context: Context = { view, roof, ...lists, method, widths, factorsOf, down, ...(up && { up }) };
    const loaded = array.rails.flatMap((rail) => loadOne(rail, context));
    const capacity = capacityOf(view);
    const worst =
      up && pressure.working
        ? worstFoot({
            feet: loaded.flatMap(({ feet }) => feet),
            rails: array.rails,
            factorsOf,
            pitchOf: (planeId) => pitchOf(roof, planeId),
            pressure: pressure.working,
            pressurePa: up.pressurePa,
            coefficients: up.coefficients,
            coefficientSource: view.wind.source ?? 'entered for this job, source not named',
            ...(capacity && { capacityN: capacity.upliftN }),
          })
        : undefined;
    const surfaceM2 = array.modules.reduce((sum, { widthM, heightM }) => sum + widthM * heightM, 0);
    const level = upliftFactors(CODE[method], 0).level;
    return {
      method: `${method}, ${limit.value}`,
      level,
      ...(pressure.pressurePa === undefined ? {} : { pressurePa: pressure.pressurePa }),
      ...(widths.size === 0 ? {} : { edgeWidthM: Math.max(...[...widths.values()].map(({ edgeM }) => edgeM)) }),
      feet: loaded.flatMap(({ feet }) => feet.map(({ areaM2, massKg, ...foot }): FootLoad => foot)),
      ...(worst && { worst }),
      ...(capacity && { capacity }),
      rails: loaded.map(({ rail }) => rail),
      massPerM2: surfaceM2 === 0 ? 0 : array.massKg / surfaceM2,
      missing: [...new Set([...pressure.missing, ...missingOf(view, array)])],
      workings: [
        ...(pressure.working ? [pressure.working] : []),
        worked(
          'Array on the roof',
          surfaceM2 === 0 ? 0 : array.massKg / surfaceM2,
          'kg/m²',
          'modules, units and rails ÷ module surface',
          'equipment sheets',
          [
            { name: 'mass', value: array.massKg, unit: 'kg', source: 'equipment sheets' },
            { name: 'surface', value: surfaceM2, unit: 'm²', source: 'equipment sheets' },
          ],
        ),
      ],
      leavesOut: leavesOut(method, view),
    };
  },
};

interface Context {
  readonly view: StructureView;
  readonly roof: RoofPlan;
  readonly modulesOfRow: (rowId: string) => ArrayPlan['modules'];
  readonly modulesOfUnit: (unitId: string) => ArrayPlan['modules'];
  readonly railsOfRow: (rowId: string) => ArrayPlan['rails'];
  readonly method: WindMethod;
  readonly widths: ReadonlyMap<string, ZoneWidths>;
  readonly factorsOf: (planeId: string) => UpliftFactors;
  readonly up?: NonNullable<RailLoading['up']>;
  readonly down: { netDown: number | undefined; pressurePa: number | undefined; groundKPa: number | undefined };
}

/** Books write uplift with a minus or without: here it is the size that counts, and it pulls away from the roof. */
function awayFromRoof({ interior, edge, corner }: Coefficients): Coefficients {
  return { interior: Math.abs(interior), edge: Math.abs(edge), corner: Math.abs(corner) };
}

function planeOf(roof: RoofPlan, planeId: string): RoofPlane {
  const plane = roof.planes.find(({ id }) => id === planeId);
  if (plane === undefined) throw new Error(`plane '${planeId}' of a rail is not on the roof`);
  return plane;
}

const pitchOf = (roof: RoofPlan, planeId: string) => planeOf(roof, planeId).pitchDeg;

function widthsByPlane(method: WindMethod, roof: RoofPlan, array: ArrayPlan, heightM: number | undefined) {
  const planeIds = new Set(array.rails.map(({ planeId }) => planeId));
  return new Map(
    roof.planes
      .filter(({ id }) => planeIds.has(id))
      .map((plane) => [plane.id, zoneWidths(method, houseSize(plane, roof.planes), heightM)]),
  );
}

/** One rail with its feet; a rail on fewer than two feet holds nothing and has no figures. */
function loadOne(rail: Rail, context: Context): LoadedRail[] {
  const { view, roof, widths, factorsOf, up } = context;
  const { mounting, equipment } = view;
  const width = widths.get(rail.planeId);
  if (mounting === undefined || width === undefined) return [];
  const plane = planeOf(roof, rail.planeId);
  const modules = context.modulesOfRow(rail.rowId);
  const pair = context.railsOfRow(rail.rowId);
  const other = pair.find(({ id }) => id !== rail.id);
  const heightM = modules[0]?.heightM ?? 0;
  const bottomV = rail.v - rail.fromModuleEdgeMm / 1000;
  const lower = other === undefined || rail.v < other.v;
  const band = { fromV: bottomV + (lower ? 0 : heightM / 2), toV: bottomV + (lower ? heightM / 2 : heightM) };
  const zones = rail.feet.map(({ u }, k) => zoneOf({ ...tributaryU(rail, u, k), ...band }, plane, width));
  if (rail.feet.length < 2) return [unloaded(rail, zones)];
  const sheet = sheetOf(equipment, mounting.railSheet, 'rail');
  const share = other === undefined ? 1 : shareOfRow(rail.fromModuleEdgeMm, other.fromModuleEdgeMm, 1000 * heightM);
  const beam = railBeam(rail, share, modules, (module) => massOf(module, context), sheet);
  const down = downPressures(context, plane.pitchDeg);
  const loading: RailLoading = {
    code: CODE[context.method],
    slopeDeg: plane.pitchDeg,
    factors: factorsOf(rail.planeId),
    ...(up && { up }),
    ...(down && { down }),
  };
  return [loadRail(rail, beam, zones, loading, sheet)];
}

/** Half-way to the neighbouring feet; to the rail's end beyond an end foot. */
function tributaryU(rail: Rail, u: number, k: number) {
  const before = rail.feet[k - 1]?.u;
  const after = rail.feet[k + 1]?.u;
  return {
    fromU: before === undefined ? rail.fromU : (before + u) / 2,
    toU: after === undefined ? rail.toU : (after + u) / 2,
  };
}

function unloaded(rail: Rail, zones: readonly FootLoad['zone'][]): LoadedRail {
  const feet = rail.feet.map(({ id }, k) => ({
    footId: id,
    railId: rail.id,
    planeId: rail.planeId,
    zone: zones[k] ?? ('corner' as const),
    areaM2: 0,
    massKg: 0,
  }));
  return { feet, rail: { railId: rail.id, longestSpanM: 0, longestOverhangM: rail.toU - rail.fromU } };
}

/** A module with its share of the unit it is on, kg. */
function massOf(module: ArrayPlan['modules'][number], { view, modulesOfUnit }: Context): number {
  const own = sheetOf(view.equipment, module.sheetId, 'module').massKg;
  const unit = view.units[module.unitId];
  if (unit === undefined) return own;
  const sharing = modulesOfUnit(module.unitId).length;
  return own + sheetOf(view.equipment, unit.sheet, 'unit').massKg / sharing;
}

function downPressures({ down, method }: Context, slopeDeg: number): RailLoading['down'] {
  const snow = snowPa(method, down.groundKPa, slopeDeg);
  const wind = down.netDown === undefined || down.pressurePa === undefined ? undefined : down.netDown * down.pressurePa;
  if (snow === undefined && wind === undefined) return undefined;
  return { windPa: wind ?? 0, snowPa: snow ?? 0 };
}

function capacityOf({ mounting, equipment }: StructureView): StructurePlan['capacity'] {
  if (mounting === undefined) return undefined;
  const { upliftN, upliftLevel, upliftBasis, name } = sheetOf(equipment, mounting.fixingSheet, 'fixing');
  if (upliftN === undefined || upliftLevel === undefined) return undefined;
  return { upliftN, level: upliftLevel, basis: `${name}, ${upliftBasis ?? 'basis not stated'}` };
}

function missingOf({ mounting, equipment, wind, rafters }: StructureView, array: ArrayPlan): string[] {
  if (mounting === undefined) return ['choices.mounting'];
  const { upliftN, upliftLevel } = sheetOf(equipment, mounting.fixingSheet, 'fixing');
  const planes = new Set(
    array.rails.filter(({ onRafters, feet }) => !onRafters || feet.length < 2).map(({ planeId }) => planeId),
  );
  return [
    ...(wind.netUplift === undefined ? ['choices.wind.netUplift'] : []),
    ...(upliftN === undefined ? [`choices.equipment.${mounting.fixingSheet}.upliftN`] : []),
    ...(upliftN !== undefined && upliftLevel === undefined
      ? [`choices.equipment.${mounting.fixingSheet}.upliftLevel`]
      : []),
    ...[...planes].map(
      (id) => `facts.roof.planes.${id}.rafters.${rafters[id]?.spacingMm === undefined ? 'spacingMm' : 'firstMm'}`,
    ),
  ];
}

function leavesOut(method: WindMethod, { site, wind }: StructureView): string[] {
  return [
    'Net coefficients are the ones entered. They come from the edition’s table, a report or an engineer, never from here.',
    'A foot takes the worst zone its share of the modules touches. Every edge of a plane counts, hips and ridges too.',
    'Each foot is judged with the whole rail at its own coefficient. Gusts on single modules are not tried.',
    'A rail counts as one beam: splices as stiff as the rail, expansion breaks not yet made.',
    'Bending and deflection are under the same factored loads, not under a service load.',
    'Screws, hooks, clamps, battens and rafters have limits of their own. The rafter is not judged.',
    method === 'AS/NZS 1170.2'
      ? 'Direction, shielding and hill factors are one. Snow is not worked out.'
      : 'Hill factors are one. Snow is even: drift, sliding from above and ice are not in it. Its pull down the slope is not set against the feet.',
    ...(method === 'ASCE 7'
      ? ['Loads are at the allowable level. Rail stress has to be set against an allowable stress, not a design one.']
      : []),
    ...(method === 'ASCE 7' && site.elevationM === undefined
      ? ['Height above sea is not known: air is taken as at the sea, the heavier.']
      : []),
    ...(wind.netDown === undefined ? ['No downward coefficient is entered: wind towards the roof is not judged.'] : []),
  ];
}
