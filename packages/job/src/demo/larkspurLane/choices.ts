import type { z } from 'zod';
import type { choicesSchema, RowChoice } from '../../schema/choices.ts';
import type { LineName } from '../../schema/facts.ts';
import { takeSheets } from '../../sheets/index.ts';
import { moduleSheets } from '../../sheets/modules.ts';
import { crew } from '../firm.ts';
import { layTrunk, type PlaceName, places } from '../layTrunk.ts';
import { larkspurPlanes } from './facts.ts';

const BOTH: LineName[] = ['L1', 'L2'];

const row = { planeId: 'south', orientation: 'portrait', gapMm: 20, moduleSheet: 'pellucid-395', uM: 1.2 } as const;
const rows = {
  'south-1': { ...row, row: 1, vM: 0.7 },
  'south-2': { ...row, row: 2, vM: 2.442 },
} as const satisfies Record<string, RowChoice>;

const lay = (trunkId: string, along: readonly PlaceName[]) =>
  layTrunk({
    trunkId,
    along,
    unitSheet: 'alder-300-240',
    dropPitchM: 1.2,
    planes: larkspurPlanes,
    rows,
    module: moduleSheets['pellucid-395'],
  });
const a = lay('a', places('south-1', 1, 9));
const b = lay('b', places('south-2', 1, 9));

const inAttic = { method: 'raceway', ambientC: 40, circuitsTogether: 2, insulationMm: 0 } as const;
const trunk = {
  cableSheet: 'bramble-120-2',
  lines: BOTH,
  feedDrop: 5,
  spareDrops: 0,
  breakerSheet: 'breaker-us-20',
} as const;
const battery = {
  sheet: 'heath-13',
  lines: BOTH,
  cableSheet: 'cable-8awg',
  lengthM: 7,
  route: { method: 'raceway', ambientC: 35, circuitsTogether: 1, insulationMm: 0 },
  breakerSheet: 'breaker-us-40',
  landsOn: 'changeover',
  barrier: true,
  bollard: true,
} as const;
const kept = { moved: true, shed: false } as const;
const shed = { moved: true, shed: true } as const;

export const larkspurChoices = {
  rules: {
    pack: 'us',
    variant: 'us',
    editions: { NEC: '2023', 'IRC R324': '2021', 'ASCE 7': '2016', 'NFPA 855 and IRC R328': '2023' },
  },
  equipment: takeSheets(
    'pellucid-395',
    'alder-300-240',
    'bramble-120-2',
    'heath-13',
    'sluice-200',
    'tern-40',
    'mid-clamp',
    'end-clamp',
    'shingle-foot',
    'cable-10awg',
    'cable-8awg',
    'breaker-us-20',
    'breaker-us-40',
  ),
  rows,
  modules: { ...a.modules, ...b.modules },
  units: { ...a.units, ...b.units },
  trunks: {
    a: { ...trunk, name: 'A', jumpers: a.jumpers, homeRun: homeRun(21) },
    b: { ...trunk, name: 'B', jumpers: b.jumpers, homeRun: homeRun(23) },
  },
  batteries: {
    one: { ...battery, place: { wallId: 'garage-wall', leftMm: 300, bottomMm: 250 } },
    // 920 mm from the first, 36 in asked
    two: { ...battery, place: { wallId: 'garage-wall', leftMm: 1900, bottomMm: 250 } },
  },
  backup: {
    changeoverSheet: 'sluice-200',
    scope: 'whole',
    lines: BOTH,
    circuits: {
      'heat-pump': kept,
      'well-pump': kept,
      kitchen: kept,
      lights: kept,
      outlets: kept,
      furnace: kept,
      range: shed,
      dryer: shed,
      'water-heater': shed,
    },
    reserve: 0.3,
    trunks: { a: true, b: true },
  },
  mounting: {
    railSheet: 'tern-40',
    midClampSheet: 'mid-clamp',
    endClampSheet: 'end-clamp',
    fixingSheet: 'shingle-foot',
    spliceSheet: 'rail-splice',
    railPastMm: 50,
    footSpacingMm: 1220,
    gapUnderMm: 120,
  },
  wind: {
    netUplift: { interior: 1.1, edge: 1.5, corner: 1.8 },
    netDown: 0.7,
    source: 'invented for this demo: enter the figures of the edition in force',
  },
  // 18 in at the ridge, a path of 36 in at each side
  setbacks: { eaveM: 0.3, ridgeM: 0.4572, sideM: 0.9144 },
  crew,
  day: { date: '2026-05-18', startsAt: '07:30', hoursPerDay: 8.5, doneBefore: {} },
  spares: { modules: 0, units: 1 },
} as const satisfies z.input<typeof choicesSchema>;

function homeRun(lengthM: number) {
  return { cableSheet: 'cable-10awg', lengthM, route: inAttic } as const;
}
