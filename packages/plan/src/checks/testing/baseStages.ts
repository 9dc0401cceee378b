import type { PlacedModule, Rail } from '../../array/types.ts';
import type { RoofPlane, UV } from '../../roof/types.ts';
import type { RulePack } from '../../rules/pack.ts';
import type { TrunkPlan } from '../../trunks/types.ts';
import type { Working } from '../../working.ts';
import { sheetsOf } from './baseView.ts';
import type { Draft, Parts } from './draft.ts';

const figure = (value: number, unit: string): Draft<Working> => ({ name: 'by hand', value, unit, source: 'the case' });
const none = { workings: [], leavesOut: [] };

/**
 * Earlier stages of the case, by hand.
 *
 * 230 V: four units of 400 VA, 1.7391 A each, 6.9565 A on L1; the battery's 4600 VA are 20 A. 120/240 V: four units of
 * 300 VA line to line, 1.25 A each, 5 A on both lines; the battery's 4600 VA are 19.167 A.
 */
export function baseStages(variant: RulePack['variant']): Parts['stages'] {
  const us = variant === 'us';
  const solarA = us ? 5 : 1600 / 230;
  const batteryA = us ? 4600 / 240 : 20;
  const lineV = us ? 120 : 230;
  const both = (value: number) => ({ L1: value, L2: us ? value : 0, L3: 0 });
  const lines = us ? (['L1', 'L2'] as const) : (['L1'] as const);
  const sheets = sheetsOf(variant);
  const circuit = { lines, capacity: { tableA: 60, factors: [], capacityA: 40, working: figure(40, 'A') } };
  const cold = {
    conductorsColdOhm: figure(0.1, 'Ω'),
    beyondColdOhm: figure(0.1, 'Ω'),
    earthColdOhm: figure(0.05, 'Ω'),
  };
  const loop = { ohm: 0.55, coldOhm: 0.5, limitOhm: 1.2, working: figure(0.55, 'Ω') };
  const stages = {
    site: { missing: [], ...none },
    roof: { planes: [plane()], ...none },
    array: {
      modules: [0, 1, 2, 3].map(module),
      rows: [],
      rails: [rail('lower', 1.4306, [344.4, 516.6]), rail('upper', 2.2914, [1205.4, 1377.6])],
      stcW: 1720,
      massKg: 86,
      ...none,
    },
    trunks: { trunks: [trunk(us)], lineA: both(solarA), lineVA: both(solarA * lineV), nominalV: lineV, ...none },
    board: {
      name: 'board',
      circuits: [
        {
          id: 'trunk:a',
          kind: 'trunk',
          of: 'a',
          name: 'Trunk A',
          ...circuit,
          ...cold,
          designA: solarA,
          designWorking: figure(solarA, 'A'),
          breakerSheetId: sheets.breaker,
          breakerA: 20,
          cableSheetId: sheets.cable,
          lengthM: 20,
          sizes: [
            { cableSheetId: sheets.cable, capacityA: 40, meets: true, why: '' },
            { cableSheetId: sheets.largerCable, capacityA: 55, meets: true, why: '' },
          ],
          ...(us ? {} : { loop }),
          breakingKA: us ? 10 : 6,
        },
        {
          id: 'battery:store',
          kind: 'battery',
          of: 'store',
          name: 'Heath 9',
          ...circuit,
          ...cold,
          designA: batteryA,
          designWorking: figure(batteryA, 'A'),
          breakerSheetId: sheets.batteryBreaker,
          breakerA: us ? 30 : 25,
          cableSheetId: sheets.cable,
          lengthM: 8,
          sizes: [{ cableSheetId: sheets.cable, capacityA: 40, meets: true, why: '' }],
          ...(us ? {} : { loop }),
          breakingKA: us ? 10 : 6,
        },
      ],
      lineA: both(solarA + batteryA),
      lineVA: both((solarA + batteryA) * lineV),
      thereA: both(0),
      thereApartA: both(0),
      largestDifferenceVA: 0,
      bus: {
        busA: 100,
        mainA: 63,
        sourceA: solarA + batteryA,
        comparedA: us ? 63 + 1.25 * (solarA + batteryA) : 63 + solarA + batteryA,
        limitA: us ? 120 : 100,
        rule: 'by hand',
      },
      waysNeeded: us ? 4 : 2,
      waysFree: 6,
      standingLeakageMA: us ? 1.2 : 1.4,
      prospectiveA: 1500,
      ...none,
    },
    backup: {
      present: true,
      lines,
      circuits: [
        {
          id: 'fridge',
          name: 'Fridge',
          lines: ['L1'],
          standsOn: ['L1'],
          runW: 150,
          nightW: 70,
          moved: true,
          shed: false,
          fed: true,
        },
      ],
      byLine: [{ line: 'L1', runningVA: 150, ratedVA: 4600, limitVA: 4140, working: figure(150, 'VA') }],
      starts: [
        {
          circuitId: 'fridge',
          name: 'Fridge',
          lines: ['L1'],
          startVA: 1380,
          withRestVA: 1380,
          withRestWorking: figure(1380, 'VA'),
          availableVA: 7000,
          availableWorking: figure(7000, 'VA'),
          leftVA: 7000,
          k: 5,
          verdict: 'starts',
          working: figure(1380, 'VA'),
          mends: [],
        },
      ],
      usableKwh: 9.2,
      reserve: 0.2,
      leftDark: [],
      solarOnBackupVA: us ? 1200 : 1600,
      solarShare: (us ? 1200 : 1600) / 4600,
      islandTrips: [],
      changeoverA: us ? 200 : 63,
      changeoverNeedA: 27,
      ...none,
    },
    structure: {
      method: 'by hand',
      level: 'design',
      pressurePa: 900,
      feet: [],
      // 2400 N ÷ 1200 N = 2.00
      worst: {
        footId: 'row-lower-1',
        where: 'lower rail, foot 1',
        upliftN: 1200,
        capacityN: 2400,
        working: figure(1200, 'N'),
      },
      capacity: { upliftN: 2400, level: 'design', basis: 'sheet' },
      rails: [{ railId: 'row-lower', stressMPa: 60, longestSpanM: 1.2, longestOverhangM: 0.3 }],
      massPerM2: 12,
      missing: [],
      ...none,
    },
  };
  // the cases leave out what no rule reads
  return stages as unknown as Parts['stages'];
}

const WIDTH_M = 1.134;
const HEIGHT_M = 1.722;

/** Modules from u = 2.0 m with 20 mm between: 2.0, 3.154, 4.308, 5.462; the last ends at 6.596. Up the slope 1.0 to 2.722. */
function module(k: number): Draft<PlacedModule> {
  const u = 2 + k * (WIDTH_M + 0.02);
  return {
    id: `m${k + 1}`,
    name: `N1·${k + 1}`,
    rowId: 'row',
    planeId: 'north',
    row: 1,
    place: k + 1,
    unitId: `u${k + 1}`,
    input: 1,
    sheetId: 'pellucid-430',
    at: [u, 1],
    widthM: WIDTH_M,
    heightM: HEIGHT_M,
    corners: [
      [u, 1],
      [u + WIDTH_M, 1],
      [u + WIDTH_M, 1 + HEIGHT_M],
      [u, 1 + HEIGHT_M],
    ],
    centre: [u + WIDTH_M / 2, 1 + HEIGHT_M / 2],
    centre3d: [0, 0, 0],
    pmpW: 430,
    clear: { eave: 1, ridge: 6 - 1 - HEIGHT_M, side: Math.min(u, 10 - u - WIDTH_M) },
    // the ring of the flue begins at v = 4 − 0.1 − 0.5 = 3.4; the module ends at 2.722
    ...(k === 2 ? { obstruction: { id: 'flue', name: 'flue', roomM: 3.4 - 2.722 } } : {}),
  };
}

/** Rail from 1.95 to 6.646 m on feet at 2.1, 3.3, 4.5, 5.1, 6.3: spans 1.2, 1.2, 0.6, 1.2; overhangs 0.15 and 0.346. */
function rail(name: 'lower' | 'upper', v: number, zoneMm: readonly [number, number]): Draft<Rail> {
  const feet = [2.1, 3.3, 4.5, 5.1, 6.3];
  return {
    id: `row-${name}`,
    name: `N1 ${name}`,
    rowId: 'row',
    planeId: 'north',
    v,
    fromU: 1.95,
    toU: 6.646,
    lengthMm: 4696,
    feet: feet.map((u, k) => ({ id: `row-${name}-${k + 1}`, u, rafter: Math.round((u - 0.3) / 0.6) + 1 })),
    onRafters: true,
    keepsLimits: true,
    clamps: [],
    fromModuleEdgeMm: Math.round(1000 * (v - 1)),
    zoneMm: [...zoneMm],
    zoneKnown: true,
    inZone: true,
  };
}

function trunk(us: boolean): Draft<TrunkPlan> {
  const unitA = us ? 1.25 : 400 / 230;
  // half a percent between the units' terminals: 1.15 V of 230 V, 1.20 V of 240 V
  const totalV = us ? 1.2 : 1.15;
  return {
    id: 'a',
    name: 'A',
    lines: us ? ['L1', 'L2'] : ['L1'],
    cableSheetId: us ? 'bramble-120-2' : 'bramble-120-1',
    drops: [1, 2, 3, 4].map((n) => ({
      name: `A${n}`,
      number: n,
      unitId: `u${n}`,
      moduleNames: [`N1·${n}`],
      line: 'L1',
      fromFeedM: 1.2 * (n - 1),
      aboveBoardV: 0.8,
      aboveSupplyV: 1,
      reach: { needMm: 100, haveMm: 340 },
    })),
    spans: [],
    feedDrop: 1,
    unitCount: 4,
    unitA,
    currentA: 4 * unitA,
    currentWorking: figure(4 * unitA, 'A'),
    ratedVA: us ? 1200 : 1600,
    cableM: 4.8,
    slackM: 0.1,
    caps: { end: 1, drop: 0, feedJoints: 1 },
    homeRun: { cableSheetId: us ? 'cable-10awg' : 'cable-6', lengthM: 20, ohmPerM: 0.0036, riseV: 0.8 },
    rise: { trunkV: 0.15, homeRunV: 0.8, mainsV: totalV - 0.95, totalV, share: 0.005 },
    terminalV: us ? 240 : 230,
    mainsKnown: true,
    farDrop: 4,
    riseWorking: figure(totalV, 'V'),
    feedOptions: [
      { drop: 1, totalV },
      { drop: 2, totalV: totalV - 0.1 },
      { drop: 3, totalV: totalV - 0.1 },
      { drop: 4, totalV },
    ],
    sizeOptions: us
      ? [
          { cableSheetId: 'cable-10awg', totalV },
          { cableSheetId: 'cable-8awg', totalV: totalV - 0.3 },
        ]
      : [
          { cableSheetId: 'cable-6', totalV },
          { cableSheetId: 'cable-10', totalV: totalV - 0.3 },
        ],
  };
}

/** Ten by six metres, eave below, seen from in front. */
function plane(): Draft<RoofPlane> {
  const corners: UV[] = [
    [0, 0],
    [10, 0],
    [10, 6],
    [0, 6],
  ];
  const sides = ['eave', 'right', 'ridge', 'left'] as const;
  const kinds = ['eave', 'verge', 'ridge', 'verge'] as const;
  const edges = sides.map((side, k) => ({
    side,
    kind: kinds[k],
    from: corners[k],
    to: corners[(k + 1) % 4],
    lengthM: k % 2 === 0 ? 10 : 6,
    setbackM: 0.2,
  }));
  return {
    id: 'north',
    name: 'North',
    letter: 'N',
    facingDeg: 0,
    pitchDeg: 60,
    outline: corners,
    edges,
    areaM2: 60,
    obstructions: [
      { id: 'flue', kind: 'flue', name: 'flue', centre: [5, 4], widthM: 0.2, depthM: 0.2, heightM: 1, clearM: 0.5 },
    ],
  } as unknown as Draft<RoofPlane>;
}
