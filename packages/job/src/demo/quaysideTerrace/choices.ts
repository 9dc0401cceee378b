import type { z } from 'zod';
import type { choicesSchema, RowChoice } from '../../schema/choices.ts';
import type { LineName } from '../../schema/facts.ts';
import { takeSheets } from '../../sheets/index.ts';
import { moduleSheets } from '../../sheets/modules.ts';
import { crew } from '../firm.ts';
import { layTrunk, type PlaceName, places } from '../layTrunk.ts';
import { quaysidePlanes } from './facts.ts';

const ONE: LineName[] = ['L1'];

const row = { orientation: 'landscape', gapMm: 20, moduleSheet: 'pellucid-395' } as const;
// three and two on each side: 3 × 1722 + 2 × 20 = 5206 of 6600
const rows = {
  'east-1': { ...row, planeId: 'east', row: 1, uM: 0.697, vM: 0.4 },
  'east-2': { ...row, planeId: 'east', row: 2, uM: 0.697, vM: 1.554 },
  'west-1': { ...row, planeId: 'west', row: 1, uM: 0.697, vM: 0.4 },
  'west-2': { ...row, planeId: 'west', row: 2, uM: 0.697, vM: 1.554 },
} as const satisfies Record<string, RowChoice>;

const lay = (trunkId: string, along: readonly PlaceName[]) =>
  layTrunk({
    trunkId,
    along,
    unitSheet: 'alder-400',
    dropPitchM: 1.85,
    planes: quaysidePlanes,
    rows,
    module: moduleSheets['pellucid-395'],
  });
const a = lay('a', [...places('east-1', 3, 1), ...places('east-2', 1, 2)]);
const b = lay('b', [...places('west-1', 3, 1), ...places('west-2', 1, 2)]);

const trunk = { cableSheet: 'bramble-185-1', lines: ONE, spareDrops: 0, breakerSheet: 'breaker-b16' } as const;
const inLoft = { method: 'C', ambientC: 45, circuitsTogether: 2, insulationMm: 0 } as const;
const kept = { moved: true, residualDevice: true, shed: false } as const;

export const quaysideChoices = {
  rules: {
    pack: 'iec-eu',
    variant: 'gb',
    editions: { 'BS 7671': '2018 with A4:2026', 'EREC G98 and G99': '2024 issues', 'PAS 63100': '2024' },
  },
  equipment: takeSheets(
    'pellucid-395',
    'alder-400',
    'bramble-185-1',
    'heath-9',
    'sluice-63-one',
    'tern-40',
    'mid-clamp',
    'end-clamp',
    'slate-hook',
    'cable-4',
    'cable-6',
    'breaker-b16',
    'breaker-b25',
  ),
  rows,
  modules: { ...a.modules, ...b.modules },
  units: { ...a.units, ...b.units },
  trunks: {
    a: {
      ...trunk,
      name: 'A',
      feedDrop: 1,
      jumpers: a.jumpers,
      homeRun: { cableSheet: 'cable-4', lengthM: 13, route: inLoft },
    },
    b: {
      ...trunk,
      name: 'B',
      feedDrop: 1,
      jumpers: b.jumpers,
      homeRun: { cableSheet: 'cable-4', lengthM: 11, route: inLoft },
    },
  },
  batteries: {
    battery: {
      sheet: 'heath-9',
      lines: ONE,
      cableSheet: 'cable-6',
      lengthM: 6,
      route: { method: 'C', ambientC: 30, circuitsTogether: 1, insulationMm: 0 },
      breakerSheet: 'breaker-b25',
      // 1200 mm from the door's edge, 1320 mm from the window's
      place: { wallId: 'yard', leftMm: 2300, bottomMm: 300 },
      barrier: true,
    },
  },
  backup: {
    changeoverSheet: 'sluice-63-one',
    scope: 'part',
    lines: ONE,
    circuits: { fridge: kept, lights: kept, boiler: kept, broadband: kept },
    reserve: 0.2,
    trunks: { a: true },
    electrode: true,
  },
  mounting: {
    railSheet: 'tern-40',
    midClampSheet: 'mid-clamp',
    endClampSheet: 'end-clamp',
    fixingSheet: 'slate-hook',
    spliceSheet: 'rail-splice',
    railPastMm: 50,
    footSpacingMm: 1200,
    gapUnderMm: 100,
  },
  wind: {
    netUplift: { interior: 1, edge: 1.3, corner: 1.5 },
    netDown: 1,
    source: 'invented for this demo: enter the figures of the edition in force',
  },
  setbacks: { eaveM: 0.4, ridgeM: 0.4, sideM: 0.4 },
  crew,
  day: { date: '2026-06-02', startsAt: '08:00', hoursPerDay: 8, doneBefore: {} },
  spares: { modules: 0, units: 1 },
} as const satisfies z.input<typeof choicesSchema>;
