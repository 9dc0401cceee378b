import { clampSheetSchema, fixingSheetSchema, type Job, moduleSheetSchema, railSheetSchema } from '@eaveline/job';
import { expect, test } from 'vitest';
import type { ArrayPlan, PlacedModule, Rail } from '../array/types.ts';
import type { LitPlane, LitRoof, UV } from '../roof/types.ts';
import { type StructureView, structureStage } from './index.ts';

// Worked cases of loads on arrays parallel to a roof, each hand-worked from its standard's formulas to the newton, with
// coefficients stated and not looked up. Feet stand under the clamps here, so that a reaction is one clamp's load and
// its surface is spacing · half a module.

interface Row {
  readonly widthM: number;
  readonly heightM: number;
  readonly count: number;
  readonly fromU: number;
  readonly bottomV: number;
  /** All there is on the roof for each m² of module. */
  readonly kgPerM2: number;
  readonly gapM?: number;
  readonly endClampM?: number;
  readonly pastM?: number;
  readonly feet?: readonly number[];
}

function placeRow(row: Row): { array: ArrayPlan; massKg: number } {
  const { widthM, heightM, count, fromU, bottomV, gapM = 0, endClampM = 0, pastM = 0 } = row;
  const massKg = row.kgPerM2 * widthM * heightM;
  const modules = Array.from({ length: count }, (_, k) => ({
    id: `m${k}`,
    rowId: 'r',
    planeId: 'south',
    unitId: `u${k}`,
    sheetId: 'module',
    place: k + 1,
    at: [fromU + k * (widthM + gapM), bottomV] as UV,
    widthM,
    heightM,
  })) as unknown as PlacedModule[];
  const toU = fromU + count * widthM + (count - 1) * gapM;
  const joints = modules.slice(1).map((module) => module.at[0] - gapM / 2);
  const clamps = [fromU - endClampM, ...joints, toU + endClampM];
  const feet = row.feet ?? clamps;
  const rails = (['lower', 'upper'] as const).map((which, k) => ({
    id: `r-${which}`,
    name: `S1 ${which}`,
    rowId: 'r',
    planeId: 'south',
    v: bottomV + heightM * (k === 0 ? 0.25 : 0.75),
    fromU: fromU - pastM,
    toU: toU + pastM,
    lengthMm: 1000 * (toU - fromU + 2 * pastM),
    feet: feet.map((u, n) => ({ id: `r-${which}-${n + 1}`, u, rafter: n + 1 })),
    onRafters: true,
    keepsLimits: true,
    clamps: clamps.map((u, n) => ({ u, kind: n === 0 || n === count ? ('end' as const) : ('mid' as const) })),
    fromModuleEdgeMm: 1000 * heightM * (k === 0 ? 0.25 : 0.75),
    zoneMm: [0, 1],
    zoneKnown: true,
    inZone: true,
  })) as unknown as Rail[];
  const array: ArrayPlan = {
    modules,
    rows: [],
    rails,
    stcW: 0,
    massKg: count * massKg,
    workings: [],
    leavesOut: [],
  };
  return { array, massKg };
}

/** A south plane of a gable, its far side not surveyed. */
function gable(eaveM: number, planDepthM: number, pitchDeg: number): LitRoof {
  const slopeM = planDepthM / Math.cos((pitchDeg * Math.PI) / 180);
  const rise = planDepthM * Math.tan((pitchDeg * Math.PI) / 180);
  const outline: UV[] = [
    [0, 0],
    [eaveM, 0],
    [eaveM, slopeM],
    [0, slopeM],
  ];
  const kinds = ['eave', 'verge', 'ridge', 'verge'] as const;
  const sides = ['eave', 'right', 'ridge', 'left'] as const;
  const plane = {
    id: 'south',
    pitchDeg,
    along: [1, 0, 0],
    outline,
    outline3d: [
      [0, 0, 3],
      [eaveM, 0, 3],
      [eaveM, planDepthM, 3 + rise],
      [0, planDepthM, 3 + rise],
    ],
    edges: outline.map((from, k) => ({ side: sides[k], kind: kinds[k], from, to: outline[(k + 1) % 4] })),
  } as unknown as LitPlane;
  return { planes: [plane], workings: [], leavesOut: [] };
}

const fixing = { kind: 'fixing', name: 'Hook', suits: ['concrete-tile'], screws: 2 } as const;

function view(massKg: number, more: Partial<StructureView> = {}): StructureView {
  const clamp = { kind: 'clamp', name: 'c', torqueNm: 14, bonding: true };
  const equipment: Job['choices']['equipment'] = {
    module: moduleSheetSchema.parse({
      kind: 'module',
      name: 'm',
      lengthMm: 1722,
      widthMm: 1134,
      thicknessMm: 30,
      massKg,
      cellsInSeries: 54,
      pmpW: 430,
      vocV: 38.9,
      iscA: 13.9,
      vmpV: 32.6,
      impA: 13.2,
      vocPctPerK: -0.25,
      iscPctPerK: 0.046,
      pmpPctPerK: -0.3,
      noctC: 44,
      clampZoneFrom: 0.2,
      clampZoneTo: 0.3,
      leadMm: 1100,
    }),
    rail: railSheetSchema.parse({
      // its own mass is in the kg/m² of the cases
      kind: 'rail',
      name: 'Rail 40',
      stockMm: 4200,
      massKgPerM: 1e-9,
      secondMomentCm4: 6.9,
      sectionModulusCm3: 3.3,
      elasticGPa: 70,
      designStressMPa: 180,
      expansionPerK: 23.1e-6,
      longestRunMm: 12000,
    }),
    mid: clampSheetSchema.parse({ ...clamp, place: 'mid', gapMm: 20 }),
    end: clampSheetSchema.parse({ ...clamp, place: 'end', gapMm: 40 }),
    hook: fixingSheetSchema.parse({ ...fixing, upliftN: 2400, upliftLevel: 'design', upliftBasis: 'sheet' }),
  };
  return {
    site: { wind: { region: 'A', terrain: '3', roofHeightM: 5, exposed: false }, snow: {} },
    rafters: { south: { firstMm: 300, spacingMm: 600 } },
    units: {},
    equipment,
    mounting: {
      railSheet: 'rail',
      midClampSheet: 'mid',
      endClampSheet: 'end',
      fixingSheet: 'hook',
      railPastMm: 50,
      footSpacingMm: 1200,
      gapUnderMm: 100,
    },
    wind: { netUplift: { interior: 1.3, edge: 1.9, corner: 1.9 } },
    rules: { pack: 'au-nz', variant: 'au', editions: {} },
    ...more,
  };
}

const run = (of: StructureView, roof: LitRoof, array: ArrayPlan) => structureStage.run(of, { roof, array }, {});

// 2.17 m up the slope is 2.005 m in plan; the lower half-row ends at 3.031 m, 2.80 in plan, 2.2 below the ridge
const interiorRow: Row = { widthM: 1.2, heightM: 1.722, count: 6, fromU: 2.4, bottomV: 2.17, kgPerM2: 11.5 };

test('AS/NZS 1170.2, region A, terrain 3, 5 m: 837.0 Pa, edge 2.0 m, interior 1027 N, edge 1546 N', () => {
  // V = 45 · 0.83 = 37.35; q = 0.6 · 37.35² = 837.0; house 12 by 2 · 5 m: a = min(0.2·12, 0.2·10, 5) = 2
  // A = 1.2 · 1.722/2 = 1.0332; W = 1.3 · 837 · A = 1124.2; 0.9 · 116.6 · cos 22.5° = 96.9
  const { array, massKg } = placeRow(interiorRow);
  const plan = run(view(massKg), gable(12, 5, 22.5), array);
  expect(plan.pressurePa).toBeCloseTo(837.0, 1);
  expect(plan.edgeWidthM).toBeCloseTo(2, 9);
  expect(plan.level).toBe('design');
  expect(plan.massPerM2).toBeCloseTo(11.5, 9);
  const lower = plan.feet.filter(({ railId }) => railId === 'r-lower');
  const upper = plan.feet.filter(({ railId }) => railId === 'r-upper');
  expect(lower.slice(1, -1).map(({ zone, upliftN }) => [zone, Math.round(upliftN ?? 0)])).toEqual(
    Array(5).fill(['interior', 1027]),
  );
  expect(upper.slice(1, -1).map(({ zone, upliftN }) => [zone, Math.round(upliftN ?? 0)])).toEqual(
    Array(5).fill(['edge', 1546]),
  );
  // an end foot holds one module's half
  expect(lower[0]?.upliftN).toBeCloseTo(1027.3 / 2, 0);
  expect(plan.worst?.where).toMatch(/^S1 upper rail, foot [2-6], edge zone$/);
  expect(plan.worst).toMatchObject({ capacityN: 2400 });
  expect(plan.worst?.working.value).toBeCloseTo(1546.2, 0);
  expect(plan.missing).toEqual([]);
});

test('coefficients written with a minus pull the same way', () => {
  const { array, massKg } = placeRow(interiorRow);
  const minus = { netUplift: { interior: -1.3, edge: -1.9, corner: -1.9 } };
  expect(run(view(massKg, { wind: minus }), gable(12, 5, 22.5), array).worst?.upliftN).toBeCloseTo(1546.2, 0);
});

test('EN 1991-1-4, 24 m/s, terrain II, 6 m: 733.4 Pa; 1.2 m of half a landscape module at 35° and 12 kg/m²: 914 N', () => {
  // 1.5 · 733.4 · 1.3 · 0.6804 = 973.1; 0.9 · 12 · 9.81 · 0.6804 · cos 35° = 59.1
  const { array, massKg } = placeRow({ ...interiorRow, heightM: 1.134, kgPerM2: 12 });
  const plan = run(
    view(massKg, {
      site: { wind: { basicSpeedMS: 24, terrain: 'II', roofHeightM: 6, exposed: false }, snow: { groundKPa: 1 } },
      wind: { netUplift: { interior: 1.3, edge: 1.3, corner: 1.3 } },
      rules: { pack: 'iec-eu', variant: 'gb', editions: {} },
    }),
    gable(10, 5, 35),
    array,
  );
  expect(plan.pressurePa).toBeCloseTo(733.4, 1);
  // e = min(10, 2·6) = 10, a tenth of it
  expect(plan.edgeWidthM).toBeCloseTo(1, 9);
  expect(Math.round(plan.feet[3]?.upliftN ?? 0)).toBe(914);
  // snow 0.8 · cos² 35° = 0.5368 kPa on 0.6804 m² = 365.2 N; weight 80.10 · cos 35° = 65.6 N
  // 1.35 · 65.6 + 1.5 · 365.2 = 636 N, with no wind towards the roof entered
  expect(plan.feet[3]?.downN).toBeCloseTo(1.35 * 65.61 + 1.5 * 365.24, 0);
});

test('ASCE 7, 115 mph, exposure B, 1600 m: 796.8 Pa; 0.6D + 0.6W gives 536 and 1740 N, allowable', () => {
  const { array, massKg } = placeRow({ ...interiorRow, widthM: 1.219, kgPerM2: 12 });
  const at = (net: number) =>
    run(
      view(massKg, {
        site: {
          wind: { basicSpeedMS: 51.41, terrain: 'B', roofHeightM: 4, exposed: false },
          snow: {},
          elevationM: 1600,
        },
        // −1.5 · 1 · 0.8 and −3.0 · 1.5 · 0.8, entered net
        wind: { netUplift: { interior: net, edge: net, corner: net } },
        rules: { pack: 'us', variant: 'us', editions: {} },
      }),
      gable(12, 5, 26.6),
      array,
    );
  expect(at(1.2).pressurePa).toBeCloseTo(796.8, 0);
  expect(at(1.2).level).toBe('allowable');
  // to a newton: 115 mph is 51.4096 m/s
  expect(at(1.2).feet[3]?.upliftN).toBeCloseTo(535.9, 0);
  expect(Math.abs((at(3.6).feet[3]?.upliftN ?? 0) - 1740)).toBeLessThan(1);
});

test('nine in portrait, feet every 1.20 m, 844 N/m at the clamps: 202 N·m over the last foot, 5.9 mm at the tip', () => {
  // end clamps 0.423 m beyond the last feet: 844 · 1.134 / 2 · 0.423 = 202 N·m; uniform load would say 844 · 0.463²/2 = 90
  // feet and tip worked apart from this code: 400 fine beam elements, E·I 4830 N·m²
  // 844 N/m is 837.0 · 1.3 − 0.9 · 9.81 · cos 22.5° · m = 980.3 Pa on half of 1.722 m: m = 13.22 kg/m²
  const feet = Array.from({ length: 9 }, (_, k) => 2.4 - 0.08 + 0.463 + 1.2 * k);
  const netPa = 844 / 0.861;
  const kgPerM2 = (1.3 * 837.0 - netPa) / (0.9 * 9.81 * Math.cos(Math.PI / 8));
  expect(kgPerM2).toBeCloseTo(13.2, 1);
  const row: Row = {
    widthM: 1.134,
    heightM: 1.722,
    count: 9,
    fromU: 2.4,
    bottomV: 2.2,
    gapM: 0.02,
    endClampM: 0.04,
    pastM: 0.08,
    kgPerM2,
    feet,
  };
  const coefficients = { netUplift: { interior: 1.3, edge: 1.3, corner: 1.3 } };
  const { array, massKg } = placeRow(row);
  const plan = run(view(massKg, { wind: coefficients }), gable(30, 20, 22.5), array);
  const [rail] = plan.rails;
  expect(rail?.momentNm).toBeCloseTo(202, 0);
  expect(rail?.stressMPa).toBeCloseTo(202.4 / 3.3, 1);
  expect(rail?.longestOverhangM).toBeCloseTo(0.463, 9);
  expect(rail?.longestSpanM).toBeCloseTo(1.2, 9);
  expect(rail?.deflectionMm).toBeCloseTo(5.912, 2);
  const loads = plan.feet.filter(({ railId }) => railId === 'r-lower').map(({ upliftN }) => upliftN ?? 0);
  const half = [898.6, 900.1, 1020.9, 987.9];
  [...half, 998.9, ...half.toReversed()].forEach((newtons, k) => {
    expect(loads[k]).toBeCloseTo(newtons, 0);
  });
});

test('without coefficients nothing is judged from habit: no uplift, and they are named as missing', () => {
  const { array, massKg } = placeRow(interiorRow);
  const plan = run(view(massKg, { wind: {} }), gable(12, 5, 22.5), array);
  expect(plan.missing).toEqual(['choices.wind.netUplift']);
  expect(plan.worst).toBeUndefined();
  expect(plan.feet.every(({ upliftN }) => upliftN === undefined)).toBe(true);
  expect(plan.pressurePa).toBeCloseTo(837, 1);
});

test.each([
  ['on a hill', { region: 'A', terrain: '3', roofHeightM: 5, exposed: true }, 'exposed'],
  ['nobody looked for a hill', { region: 'A', terrain: '3', roofHeightM: 5 }, 'exposed'],
  ['terrain 4', { region: 'A', terrain: '4', roofHeightM: 5, exposed: false }, 'terrain'],
  ['a region of New Zealand, no speed', { region: 'NZ2', terrain: '2', roofHeightM: 5, exposed: false }, 'region'],
  ['above the table', { region: 'A', terrain: '2', roofHeightM: 12, exposed: false }, 'roofHeightM'],
])('%s: no pressure, and the fact is named', (_, wind, fact) => {
  const { array, massKg } = placeRow(interiorRow);
  const plan = run(view(massKg, { site: { wind, snow: {} } }), gable(12, 5, 22.5), array);
  expect(plan.pressurePa).toBeUndefined();
  expect(plan.missing).toEqual([`facts.site.wind.${fact}`]);
});

test('a basic speed of 45 m/s in New Zealand gives what region A gives: 837.0 Pa', () => {
  const { array, massKg } = placeRow(interiorRow);
  const wind = { region: 'NZ1', basicSpeedMS: 45, terrain: '3', roofHeightM: 5, exposed: false };
  expect(run(view(massKg, { site: { wind, snow: {} } }), gable(12, 5, 22.5), array).pressurePa).toBeCloseTo(837, 1);
});

test('a fixing without a stated resistance, or without its level, is asked for', () => {
  const { array, massKg } = placeRow(interiorRow);
  const of = view(massKg);
  const bare = (upliftN?: number) => ({
    ...of,
    equipment: { ...of.equipment, hook: fixingSheetSchema.parse({ ...fixing, ...(upliftN ? { upliftN } : {}) }) },
  });
  expect(run(bare(), gable(12, 5, 22.5), array).missing).toEqual(['choices.equipment.hook.upliftN']);
  const noLevel = run(bare(2400), gable(12, 5, 22.5), array);
  expect(noLevel.missing).toEqual(['choices.equipment.hook.upliftLevel']);
  expect(noLevel.capacity).toBeUndefined();
});
