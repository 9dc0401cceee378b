import type { z } from 'zod';
import type { choicesSchema, RowChoice } from '../schema/choices.ts';
import type { factsSchema, LineName, PlaneFacts } from '../schema/facts.ts';
import { type Job, jobSchema } from '../schema/job.ts';
import { takeSheets } from '../sheets/index.ts';
import { moduleSheets } from '../sheets/modules.ts';
import { crew, firm } from './firm.ts';
import { layTrunk, type PlaceName, places } from './layTrunk.ts';

/** Mid-terrace, 6.6 m of frontage and 7.8 m deep; 3.9 m ÷ cos 35° = 4.761 m up the slope. */
const slate = {
  pitchDeg: 35,
  eaveLengthM: 6.6,
  slopeLengthM: 4.761,
  planWidthM: 3.9,
  ridgeFromM: 0,
  ridgeToM: 6.6,
  edges: { eave: 'eave', ridge: 'ridge', left: 'verge', right: 'verge' },
  covering: 'slate',
  fragile: true,
  asbestos: 'no',
  rafters: { firstMm: 200, spacingMm: 400, widthMm: 50, depthMm: 100 },
  atticC: 45,
} as const;

const planes = {
  east: { ...slate, name: 'East', facingDeg: 90, eaveLeft: { eastM: 7.8, northM: 0, heightM: 5.2 } },
  west: { ...slate, name: 'West', facingDeg: 270, eaveLeft: { eastM: 0, northM: 6.6, heightM: 5.2 } },
} as const satisfies Record<string, PlaneFacts>;

const surveyed = (at: string, instrument: string) => ({ by: 'Nia', at, with: instrument });

const facts = {
  site: {
    address: '27 Quayside Terrace, Millhaven',
    latitudeDeg: 53.4,
    longitudeDeg: -2.3,
    elevationM: 28,
    zone: 'Europe/London',
    recordLowC: -14,
    recordHighC: 37,
    recordSource: 'invented for this demo',
    horizon: [
      { azimuthDeg: 0, elevationDeg: 6 },
      { azimuthDeg: 90, elevationDeg: 12 },
      { azimuthDeg: 180, elevationDeg: 6 },
      { azimuthDeg: 270, elevationDeg: 9 },
      { azimuthDeg: 360, elevationDeg: 6 },
    ],
    objects: {
      stack: {
        kind: 'building',
        name: "neighbour's chimney",
        eastM: 3.9,
        northM: 6.9,
        baseM: 7.5,
        heightM: 1.6,
        widthM: 0.9,
        transmission: 0,
      },
    },
    wind: { basicSpeedMS: 22.5, terrain: 'IV', roofHeightM: 6.6, exposed: false },
    snow: { groundKPa: 0.5 },
    yearBuilt: 1904,
  },
  network: { name: 'Pennine Edge Networks', meterNumber: 'S 17 2094 118' },
  supply: {
    system: 'single-phase',
    nominalV: 230,
    earthing: 'TN-C-S',
    serviceA: 80,
    loopOhm: 0.24,
    declaredLoopOhm: 0.35,
    prospectiveA: 1150,
    measuredV: { L1: 243.2 },
    mains: { lengthM: 3, conductor: { material: 'copper', areaMm2: 25, strandClass: 2 } },
  },
  board: {
    name: 'consumer unit',
    busA: 100,
    mainSwitchA: 100,
    breakingKA: 6,
    freeWays: 4,
    breakerSumA: 160,
    wiring: 'iec',
    backing: 'timber',
    ambientC: 30,
    surgeDevice: true,
    residualType: 'A',
    electrode: false,
  },
  roof: {
    planes,
    obstructions: {
      skylight: {
        planeId: 'west',
        kind: 'skylight',
        name: 'loft window',
        uM: 5.3,
        vM: 2.2,
        widthM: 0.78,
        depthM: 0.98,
        heightM: 0.1,
        clearM: 0.15,
      },
      'boiler-flue': {
        planeId: 'east',
        kind: 'flue',
        name: 'boiler flue',
        uM: 5.9,
        vM: 3.6,
        widthM: 0.12,
        depthM: 0.12,
        heightM: 0.7,
        clearM: 0.6,
      },
    },
    storeys: 2,
  },
  loads: {
    annualKwh: 2900,
    dayShape: [
      0.024, 0.021, 0.02, 0.02, 0.021, 0.025, 0.037, 0.05, 0.048, 0.04, 0.036, 0.037, 0.04, 0.039, 0.037, 0.041, 0.053,
      0.071, 0.079, 0.075, 0.065, 0.053, 0.041, 0.027,
    ],
    circuits: {
      fridge: {
        name: 'Fridge and freezer',
        lines: ['L1'],
        runW: 140,
        nightW: 55,
        breakerA: 16,
        wanted: 'must stay on',
        residualDevice: true,
        motor: { kind: 'compressor', voltage: 230, lockedRotorA: 5, fullLoadA: 0.8, startS: 0.3 },
      },
      lights: {
        name: 'Lights',
        lines: ['L1'],
        runW: 180,
        nightW: 45,
        breakerA: 6,
        wanted: 'must stay on',
        residualDevice: true,
      },
      boiler: {
        name: 'Boiler and its pump',
        lines: ['L1'],
        runW: 120,
        nightW: 40,
        breakerA: 6,
        wanted: 'must stay on',
        residualDevice: true,
      },
      broadband: {
        name: 'Broadband and desk',
        lines: ['L1'],
        runW: 150,
        nightW: 15,
        breakerA: 6,
        wanted: 'must stay on',
        residualDevice: false,
      },
      ring: {
        name: 'Sockets, ring',
        lines: ['L1'],
        runW: 1500,
        nightW: 40,
        breakerA: 32,
        wanted: 'would be good',
        residualDevice: true,
      },
      cooker: { name: 'Cooker', lines: ['L1'], runW: 4000, breakerA: 32, wanted: 'no', residualDevice: true },
      shower: { name: 'Shower', lines: ['L1'], runW: 8500, breakerA: 40, wanted: 'no', residualDevice: true },
    },
  },
  walls: {
    yard: {
      name: 'Yard, rear wall',
      lengthMm: 5200,
      heightMm: 2600,
      place: 'outside',
      habitableBehind: true,
      combustible: false,
      vehicles: false,
      sun: true,
      items: {
        'back-door': {
          kind: 'door',
          name: 'back door',
          leftMm: 200,
          bottomMm: 0,
          widthMm: 900,
          heightMm: 2050,
          habitable: true,
        },
        'kitchen-window': {
          kind: 'window',
          name: 'kitchen window',
          leftMm: 4300,
          bottomMm: 1050,
          widthMm: 800,
          heightMm: 1000,
          habitable: true,
        },
      },
    },
  },
  access: { scaffoldNeeded: true, carryM: 40, note: 'Scaffold front and back; permit for the street side.' },
  provenance: {
    'supply.loopOhm': surveyed('2026-03-19T10:10:00Z', 'loop tester 3'),
    'supply.prospectiveA': surveyed('2026-03-19T10:12:00Z', 'loop tester 3'),
    'supply.measuredV': surveyed('2026-03-19T10:05:00Z', 'voltmeter 2'),
    'roof.planes.east.rafters.spacingMm': surveyed('2026-03-19T11:00:00Z', 'tape, in the loft'),
    'roof.planes.west.rafters.spacingMm': surveyed('2026-03-19T11:05:00Z', 'tape, in the loft'),
    'walls.yard': surveyed('2026-03-19T11:30:00Z', 'tape'),
  },
} as const satisfies z.input<typeof factsSchema>;

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
    planes,
    rows,
    module: moduleSheets['pellucid-395'],
  });
const a = lay('a', [...places('east-1', 3, 1), ...places('east-2', 1, 2)]);
const b = lay('b', [...places('west-1', 3, 1), ...places('west-2', 1, 2)]);

const trunk = { cableSheet: 'bramble-185-1', lines: ONE, spareDrops: 0, breakerSheet: 'breaker-b16' } as const;
const inLoft = { method: 'C', ambientC: 45, circuitsTogether: 2, insulationMm: 0 } as const;
const kept = { moved: true, residualDevice: true, shed: false } as const;

const choices = {
  rules: {
    pack: 'iec-eu',
    variant: 'gb',
    editions: { 'BS 7671': '2018+A2', 'EREC G98': '1-7', 'EREC G99': '1-9', 'EREC G100': '2', 'PAS 63100': '2024' },
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
      name: 'Trunk A',
      feedDrop: 1,
      jumpers: a.jumpers,
      homeRun: { cableSheet: 'cable-4', lengthM: 13, route: inLoft },
    },
    b: {
      ...trunk,
      name: 'Trunk B',
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

/** Quayside Terrace: one phase, slate east and west, ten modules in landscape, on both sides of the network's 16 A. */
export const quaysideTerrace: Job = jobSchema.parse({
  format: 'eaveline-job',
  version: 1,
  id: 'quayside-terrace',
  name: 'Quayside Terrace',
  invented: true,
  firm,
  customer: { name: 'M. and T. Hale' },
  about: '10 modules on slate, east and west, Heath 9, essential circuits only',
  state: 'letter',
  facts,
  choices,
});
