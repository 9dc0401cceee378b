import type { z } from 'zod';
import type { choicesSchema, RowChoice } from '../../schema/choices.ts';
import { takeSheets } from '../../sheets/index.ts';
import { moduleSheets } from '../../sheets/modules.ts';
import { crew } from '../firm.ts';
import { layTrunk, type PlaceName, places } from '../layTrunk.ts';
import { kestrelPlanes } from './facts.ts';

const row = { orientation: 'portrait', gapMm: 20, moduleSheet: 'pellucid-430' } as const;
/** Lower edge of the first row, and of the second: 0.35 + 1.722 + 0.02. */
const FIRST_V = 0.35;
const SECOND_V = 2.092;

/** Twelve on the north, seven each on east and west. Lower edges in metres up the slope, 20 mm between rows. */
const rows = {
  'north-1': { ...row, planeId: 'north', row: 1, uM: 6.322, vM: FIRST_V },
  // ends 35 mm short of the ring kept clear round the flue
  'north-2': { ...row, planeId: 'north', row: 2, uM: 7.155, vM: SECOND_V },
  'east-1': { ...row, planeId: 'east', row: 1, uM: 2.525, vM: FIRST_V },
  'east-2': { ...row, planeId: 'east', row: 2, uM: 4.16, vM: SECOND_V },
  'west-1': { ...row, planeId: 'west', row: 1, uM: 2.525, vM: FIRST_V },
  'west-2': { ...row, planeId: 'west', row: 2, uM: 4.16, vM: SECOND_V },
} as const satisfies Record<string, RowChoice>;

const lay = (trunkId: string, along: readonly PlaceName[]) =>
  layTrunk({
    trunkId,
    along,
    unitSheet: 'alder-400',
    dropPitchM: 1.2,
    planes: kestrelPlanes,
    rows,
    module: moduleSheets['pellucid-430'],
  });

// places run from the left end as seen from the eaves: on the north plane from the east, on the east plane from the south
const a = lay('a', [...places('north-2', 1, 5), ...places('north-1', 6, 3)]);
const b = lay('b', [...places('north-1', 2, 1), ...places('east-1', 5, 1), ...places('east-2', 1, 2)]);
const c = lay('c', [...places('north-1', 7, 7), ...places('west-1', 1, 5), ...places('west-2', 2, 1)]);

const trunk = { cableSheet: 'bramble-120-1', spareDrops: 0, breakerSheet: 'breaker-c20' } as const;
const inRoof = { method: 'C', ambientC: 50, circuitsTogether: 1, insulationMm: 0 } as const;
const homeRun = (lengthM: number) => ({ cableSheet: 'cable-6', lengthM, route: inRoof });

const moved = { moved: true, residualDevice: true, shed: false } as const;

/** As first drawn: three things in it do not hold (trunk A, the battery's place, the air-conditioner's start). */
export const kestrelChoices = {
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
    'bramble-120-1',
    'heath-13',
    'sluice-63-three-one',
    'tern-40',
    'mid-clamp',
    'end-clamp',
    'tile-hook',
    'cable-6',
    'cable-10',
    'breaker-c20',
    'breaker-c32',
  ),
  rows,
  modules: { ...a.modules, ...b.modules, ...c.modules },
  units: { ...a.units, ...b.units, ...c.units },
  trunks: {
    a: { ...trunk, name: 'A', lines: ['L1'], feedDrop: 1, jumpers: a.jumpers, homeRun: homeRun(31) },
    b: { ...trunk, name: 'B', lines: ['L2'], feedDrop: 3, jumpers: b.jumpers, homeRun: homeRun(22) },
    c: { ...trunk, name: 'C', lines: ['L3'], feedDrop: 4, jumpers: c.jumpers, homeRun: homeRun(26) },
  },
  batteries: {
    battery: {
      sheet: 'heath-13',
      lines: ['L1'],
      cableSheet: 'cable-10',
      lengthM: 9,
      route: { method: 'C', ambientC: 40, circuitsTogether: 1, insulationMm: 0 },
      breakerSheet: 'breaker-c32',
      // the laundry window ends at 2000 mm: 480 mm away
      place: { wallId: 'east-wall', leftMm: 2480, bottomMm: 300 },
      barrier: true,
    },
  },
  backup: {
    changeoverSheet: 'sluice-63-three-one',
    scope: 'part',
    lines: ['L1'],
    circuits: { fridge: moved, lights: moved, data: moved, pump: moved, cooling: moved },
    reserve: 0.2,
    trunks: { a: true },
  },
  mounting: {
    railSheet: 'tern-40',
    midClampSheet: 'mid-clamp',
    endClampSheet: 'end-clamp',
    fixingSheet: 'tile-hook',
    spliceSheet: 'rail-splice',
    railPastMm: 50,
    footSpacingMm: 1200,
    gapUnderMm: 110,
  },
  wind: {
    netUplift: { interior: 1.3, edge: 1.9, corner: 1.9 },
    netDown: 1,
    source: 'invented for this demo: enter the figures of the edition in force',
  },
  setbacks: { eaveM: 0.3, ridgeM: 0.3, sideM: 0.25 },
  exportLimitSetVA: 5000,
  crew,
  day: { date: '2026-05-12', startsAt: '07:00', hoursPerDay: 8.5, doneBefore: {} },
  spares: { modules: 1, units: 1 },
} as const satisfies z.input<typeof choicesSchema>;
