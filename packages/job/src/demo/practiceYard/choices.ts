import type { z } from 'zod';
import type { choicesSchema, RowChoice } from '../../schema/choices.ts';
import type { UnitSheet } from '../../schema/sheets.ts';
import { takeSheets } from '../../sheets/index.ts';
import { moduleSheets } from '../../sheets/modules.ts';
import { unitSheets } from '../../sheets/units.ts';
import { crew } from '../firm.ts';
import { layTrunk, type PlaceName, places } from '../layTrunk.ts';
import { practicePlanes } from './facts.ts';

/** Old stock from the back of the van: made for smaller modules. */
const alder250: UnitSheet = {
  ...unitSheets['alder-300'],
  name: 'Alder 250, old stock',
  ratedVA: 250,
  trackingLowV: 16,
  trackingHighV: 36,
  startV: 18,
  maxDcV: 42,
  maxIscA: 13,
  efficiency: 0.95,
};

const rows = {
  'north-1': {
    planeId: 'north',
    row: 1,
    orientation: 'portrait',
    uM: 0.1,
    vM: 0.35,
    gapMm: 20,
    moduleSheet: 'pellucid-430',
    railsMm: [200, 1522],
  },
  'north-2': {
    planeId: 'north',
    row: 2,
    orientation: 'landscape',
    uM: 1,
    vM: 2.2,
    gapMm: 20,
    moduleSheet: 'pellucid-430',
  },
} satisfies Record<string, RowChoice>;

const lay = (trunkId: string, unitSheet: string, along: readonly PlaceName[]) =>
  layTrunk({
    trunkId,
    along,
    unitSheet,
    dropPitchM: 1.2,
    planes: practicePlanes,
    rows,
    module: moduleSheets['pellucid-430'],
  });
const a = lay('a', 'alder-400', places('north-1', 1, 12));
const b = lay('b', 'alder-250', places('north-2', 1, 4));

const moved = { moved: true, residualDevice: true, shed: false };

/** Wrong on purpose: `faults.ts` says where and how. */
export const practiceChoices: z.input<typeof choicesSchema> = {
  rules: {
    pack: 'au-nz',
    variant: 'au',
    editions: { 'AS/NZS 3000': '2018', 'AS/NZS 4777.1': '2024', 'AS/NZS 5033': '2021', 'AS/NZS 5139': '2019' },
  },
  equipment: {
    ...takeSheets(
      'pellucid-430',
      'alder-400',
      'bramble-120-1',
      'heath-9',
      'heath-13',
      'sluice-63-three-one',
      'tern-40',
      'mid-clamp',
      'end-clamp',
      'tile-hook',
      'cable-2-5',
      'cable-4',
      'cable-10',
      'breaker-c20',
      'breaker-c32',
      'residual-b16-one-way',
    ),
    'alder-250': alder250,
  },
  rows,
  modules: { ...a.modules, ...b.modules },
  units: { ...a.units, ...b.units },
  trunks: {
    a: {
      name: 'A',
      cableSheet: 'bramble-120-1',
      lines: ['L1'],
      feedDrop: 1,
      homeRun: {
        cableSheet: 'cable-2-5',
        lengthM: 44,
        route: { method: 'A2', ambientC: 60, circuitsTogether: 2, insulationMm: 200 },
      },
      breakerSheet: 'breaker-c20',
    },
    b: {
      name: 'B',
      cableSheet: 'bramble-120-1',
      lines: ['L1'],
      feedDrop: 1,
      // the row lies in landscape, 1.742 m a module, and the drops are 1.20 m apart: no jumpers were laid
      jumpers: {},
      homeRun: {
        cableSheet: 'cable-4',
        lengthM: 12,
        route: { method: 'C', ambientC: 50, circuitsTogether: 1, insulationMm: 0 },
      },
      breakerSheet: 'residual-b16-one-way',
    },
  },
  batteries: {
    outside: {
      sheet: 'heath-9',
      lines: ['L1'],
      cableSheet: 'cable-10',
      lengthM: 8,
      route: { method: 'C', ambientC: 40, circuitsTogether: 1, insulationMm: 0 },
      breakerSheet: 'breaker-c32',
      place: { wallId: 'yard', leftMm: 2400, bottomMm: 200 },
      barrier: false,
      bollard: false,
    },
    inside: {
      sheet: 'heath-13',
      lines: ['L2'],
      cableSheet: 'cable-10',
      lengthM: 11,
      route: { method: 'C', ambientC: 30, circuitsTogether: 1, insulationMm: 0 },
      breakerSheet: 'breaker-c32',
      place: { wallId: 'bunk', leftMm: 500, bottomMm: 200 },
      barrier: true,
    },
  },
  backup: {
    changeoverSheet: 'sluice-63-three-one',
    scope: 'part',
    lines: ['L1'],
    circuits: {
      lights: moved,
      sockets: { moved: true, residualDevice: false, shed: false },
      heater: moved,
      cooling: moved,
      lathe: moved,
    },
    reserve: 0.1,
    trunks: { a: true, b: true },
  },
  mounting: {
    railSheet: 'tern-40',
    midClampSheet: 'mid-clamp',
    endClampSheet: 'end-clamp',
    fixingSheet: 'tile-hook',
    spliceSheet: 'rail-splice',
    railPastMm: 50,
    footSpacingMm: 2700,
    gapUnderMm: 100,
  },
  wind: {
    netUplift: { interior: 1.3, edge: 1.9, corner: 1.9 },
    netDown: 1,
    source: 'invented for this demo: enter the figures of the edition in force',
  },
  setbacks: { eaveM: 0.3, ridgeM: 0.3, sideM: 0.3 },
  exportLimitSetVA: 9000,
  crew,
  day: { startsAt: '07:00', hoursPerDay: 8.5, doneBefore: {} },
};
