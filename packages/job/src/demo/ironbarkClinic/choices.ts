import type { z } from 'zod';
import type { choicesSchema, RowChoice } from '../../schema/choices.ts';
import type { LineName } from '../../schema/facts.ts';
import { takeSheets } from '../../sheets/index.ts';
import { moduleSheets } from '../../sheets/modules.ts';
import { crew } from '../firm.ts';
import { layTrunk, type PlaceName, places } from '../layTrunk.ts';
import { BUILDINGS, type Building, ironbarkPlanes, LINES } from './facts.ts';

/** Two rows of twelve on each roof: 12 × 1134 + 11 × 20 = 13 828 of 15 600. */
const rows: Record<string, RowChoice> = Object.fromEntries(
  BUILDINGS.flatMap((planeId) =>
    [1, 2].map((row) => [
      `${planeId}-${row}`,
      {
        planeId,
        row,
        orientation: 'portrait' as const,
        uM: 0.955,
        vM: row === 1 ? 0.4 : 2.142,
        gapMm: 20,
        moduleSheet: 'pellucid-430',
      },
    ]),
  ),
);

const common = { planes: ironbarkPlanes, rows, module: moduleSheets['pellucid-430'], dropPitchM: 1.2 };
const bothRows = (building: Building): PlaceName[] => [
  ...places(`${building}-1`, 1, 12),
  ...places(`${building}-2`, 12, 1),
];
/** One unit a module, on the three lines in turn. */
const ones = (trunkId: string, building: Building) =>
  layTrunk({
    ...common,
    trunkId,
    unitSheet: 'alder-400',
    along: bothRows(building),
    lineOf: (drop) => LINES[(drop - 1) % 3] as LineName,
  });
/** One three-phase unit for four modules. */
const fours = (trunkId: string, building: Building) =>
  layTrunk({ ...common, trunkId, unitSheet: 'alder-1500t', along: bothRows(building), perUnit: 4 });

const laid = { a: ones('a', 'consulting'), b: ones('b', 'ward'), c: fours('c', 'store'), d: fours('d', 'plant') };

function trunk(name: string, feedDrop: number, lengthM: number, jumpers: (typeof laid)['a']['jumpers']) {
  return {
    name,
    cableSheet: 'bramble-120-3',
    lines: [...LINES],
    feedDrop,
    jumpers,
    spareDrops: 0,
    homeRun: {
      cableSheet: 'cable-10x5',
      lengthM,
      route: { method: 'C' as const, ambientC: 50, circuitsTogether: 2, insulationMm: 0 },
    },
    breakerSheet: 'breaker-c20-3',
  };
}

const battery = (line: LineName, leftMm: number) => ({
  sheet: 'heath-13',
  lines: [line],
  cableSheet: 'cable-10',
  lengthM: 14,
  route: { method: 'C' as const, ambientC: 40, circuitsTogether: 3, insulationMm: 0 },
  breakerSheet: 'breaker-c32',
  place: { wallId: 'plant-wall', leftMm, bottomMm: 250 },
});
const kept = { moved: true, residualDevice: true, shed: false };

export const ironbarkChoices: z.input<typeof choicesSchema> = {
  rules: {
    pack: 'au-nz',
    variant: 'au',
    editions: {
      'AS/NZS 3000': '2018',
      'AS/NZS 4777.1': '2024',
      'AS/NZS 4777.2': '2020',
      'AS/NZS 5033': '2021',
      'AS/NZS 5139': '2019',
      'AS/NZS 1170.2': '2021',
    },
  },
  equipment: takeSheets(
    'pellucid-430',
    'alder-400',
    'alder-1500t',
    'bramble-120-3',
    'heath-13',
    'sluice-63-three-three',
    'tern-40',
    'mid-clamp',
    'end-clamp',
    'tin-foot',
    'cable-10',
    'cable-6x5',
    'cable-10x5',
    'cable-16x5',
    'breaker-c20-3',
    'breaker-c32',
  ),
  rows,
  modules: { ...laid.a.modules, ...laid.b.modules, ...laid.c.modules, ...laid.d.modules },
  units: { ...laid.a.units, ...laid.b.units, ...laid.c.units, ...laid.d.units },
  trunks: {
    a: trunk('A', 13, 24, laid.a.jumpers),
    b: trunk('B', 13, 31, laid.b.jumpers),
    c: trunk('C', 3, 18, laid.c.jumpers),
    d: trunk('D', 3, 12, laid.d.jumpers),
  },
  batteries: { one: battery('L1', 400), two: battery('L2', 1800), three: battery('L3', 3200) },
  backup: {
    changeoverSheet: 'sluice-63-three-three',
    scope: 'part',
    lines: [...LINES],
    circuits: {
      'cold-store': kept,
      'lights-l1': kept,
      'lights-l2': kept,
      'lights-l3': kept,
      'vaccine-fridge': kept,
      records: kept,
    },
    reserve: 0.4,
    trunks: { a: true },
  },
  mounting: {
    railSheet: 'tern-40',
    midClampSheet: 'mid-clamp',
    endClampSheet: 'end-clamp',
    fixingSheet: 'tin-foot',
    spliceSheet: 'rail-splice',
    railPastMm: 50,
    footSpacingMm: 1200,
    gapUnderMm: 100,
  },
  wind: {
    netUplift: { interior: 1.1, edge: 1.6, corner: 1.8 },
    netDown: 0.8,
    source: 'invented for this demo: enter the figures of the edition in force',
  },
  setbacks: { eaveM: 0.4, ridgeM: 0.4, sideM: 0.4 },
  exportLimitSetVA: 30000,
  crew,
  day: { date: '2026-05-05', startsAt: '07:00', hoursPerDay: 8.5, doneBefore: {} },
  spares: { modules: 1, units: 2 },
};
