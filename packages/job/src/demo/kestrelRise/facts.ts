import type { z } from 'zod';
import type { factsSchema, PlaneFacts } from '../../schema/facts.ts';

const PITCH_DEG = 22.5;
const LONG_M = 16.8;
const SHORT_M = 10.8;
const EAVE_UP_M = 2.7;
/** Hips stand at 45° in plan, so every plane is half the short side wide in plan. */
const PLAN_WIDTH_M = SHORT_M / 2;
/** 5.4 m ÷ cos 22.5° = 5.845 m. */
const SLOPE_M = Math.round((PLAN_WIDTH_M / Math.cos((PITCH_DEG * Math.PI) / 180)) * 1000) / 1000;

const hipped = {
  pitchDeg: PITCH_DEG,
  slopeLengthM: SLOPE_M,
  planWidthM: PLAN_WIDTH_M,
  covering: 'concrete-tile',
  fragile: false,
  asbestos: 'no',
  battenMm: 330,
  atticC: 55,
  edges: { eave: 'eave', ridge: 'ridge', left: 'hip', right: 'hip' },
} as const;
const rafters = { firstMm: 300, spacingMm: 600, widthMm: 45, depthMm: 120 };
const long = { eaveLengthM: LONG_M, ridgeFromM: PLAN_WIDTH_M, ridgeToM: LONG_M - PLAN_WIDTH_M };
const short = { eaveLengthM: SHORT_M, ridgeFromM: PLAN_WIDTH_M, ridgeToM: PLAN_WIDTH_M };

/** Hip roof of 16.8 × 10.8 m in plan; origin at its south-west eave corner. */
export const kestrelPlanes = {
  north: {
    ...hipped,
    ...long,
    name: 'North',
    facingDeg: 0,
    eaveLeft: { eastM: LONG_M, northM: SHORT_M, heightM: EAVE_UP_M },
    rafters,
  },
  east: {
    ...hipped,
    ...short,
    name: 'East',
    facingDeg: 90,
    eaveLeft: { eastM: LONG_M, northM: 0, heightM: EAVE_UP_M },
    rafters,
  },
  south: {
    ...hipped,
    ...long,
    name: 'South',
    facingDeg: 180,
    eaveLeft: { eastM: 0, northM: 0, heightM: EAVE_UP_M },
    rafters,
  },
  west: {
    ...hipped,
    ...short,
    name: 'West',
    facingDeg: 270,
    eaveLeft: { eastM: 0, northM: SHORT_M, heightM: EAVE_UP_M },
    // the spacing was not taken: the hatch opens on the other side of a water tank
    rafters: { firstMm: 300, widthMm: 45, depthMm: 120 },
  },
} as const satisfies Record<string, PlaneFacts>;

const surveyed = (at: string, instrument: string) => ({ by: 'Nia', at, with: instrument });

/** What the survey of 2 May found. Left open: west rafter spacing, what backs the switchboard, the network's letter. */
export const kestrelFacts = {
  site: {
    address: '9 Kestrel Rise, Larramere',
    latitudeDeg: -37.6,
    longitudeDeg: 143.9,
    elevationM: 430,
    zone: 'Australia/Melbourne',
    recordLowC: -4,
    recordHighC: 46,
    recordSource: 'invented for this demo',
    horizon: [
      { azimuthDeg: 0, elevationDeg: 2 },
      { azimuthDeg: 60, elevationDeg: 3 },
      { azimuthDeg: 90, elevationDeg: 5 },
      { azimuthDeg: 150, elevationDeg: 3 },
      { azimuthDeg: 270, elevationDeg: 4 },
      { azimuthDeg: 330, elevationDeg: 2 },
      { azimuthDeg: 360, elevationDeg: 2 },
    ],
    objects: {
      gum: { kind: 'tree', name: 'gum', eastM: 21, northM: 15, heightM: 9, widthM: 5, transmission: 0.25 },
    },
    wind: { region: 'A', basicSpeedMS: 45, terrain: '3', roofHeightM: 4.9, exposed: false },
    yearBuilt: 1978,
  },
  network: { name: 'Upland Lines', exportLimitVAPerLine: 5000, profile: 'Region A', meterNumber: '6100 2231 48' },
  supply: {
    system: 'three-phase',
    nominalV: 230,
    earthing: 'MEN',
    serviceA: 63,
    loopOhm: 0.28,
    prospectiveA: 1650,
    measuredV: { L1: 238.4, L2: 239.1, L3: 237.6 },
    mains: { lengthM: 18, conductor: { material: 'copper', areaMm2: 16, strandClass: 2 } },
    rotation: 'L1-L2-L3',
  },
  board: {
    name: 'main switchboard',
    busA: 125,
    mainSwitchA: 63,
    breakingKA: 6,
    freeWays: 8,
    breakerSumA: 184,
    wiring: 'iec',
    backing: 'unknown',
    ambientC: 40,
    surgeDevice: false,
    residualType: 'A',
    electrode: true,
  },
  roof: {
    planes: kestrelPlanes,
    obstructions: {
      'vent-north': {
        planeId: 'north',
        kind: 'vent',
        name: 'bathroom vent',
        uM: 13.46,
        vM: 3.12,
        widthM: 0.1,
        depthM: 0.1,
        heightM: 0.3,
        clearM: 0.15,
      },
      flue: {
        planeId: 'north',
        kind: 'flue',
        name: 'flue',
        uM: 6.36,
        vM: 2.97,
        widthM: 0.15,
        depthM: 0.15,
        heightM: 0.9,
        clearM: 0.6,
      },
      'vent-south': {
        planeId: 'south',
        kind: 'vent',
        name: 'laundry vent',
        uM: 12.6,
        vM: 2.7,
        widthM: 0.1,
        depthM: 0.1,
        heightM: 0.3,
        clearM: 0.15,
      },
    },
    storeys: 1,
  },
  loads: {
    annualKwh: 6400,
    // per hour of the local clock, from midnight: a house with two at work and a meal at seven
    dayShape: [
      0.026, 0.023, 0.022, 0.022, 0.023, 0.027, 0.039, 0.051, 0.047, 0.036, 0.033, 0.033, 0.034, 0.034, 0.035, 0.039,
      0.047, 0.063, 0.079, 0.081, 0.071, 0.058, 0.045, 0.032,
    ],
    circuits: {
      fridge: {
        name: 'Fridge and freezer',
        lines: ['L1'],
        runW: 150,
        nightW: 70,
        breakerA: 16,
        wanted: 'must stay on',
        residualDevice: true,
        neutralTraced: true,
        motor: { kind: 'compressor', voltage: 230, lockedRotorA: 6, fullLoadA: 0.9, startS: 0.3 },
      },
      lights: {
        name: 'Lights',
        lines: ['L2'],
        runW: 320,
        nightW: 110,
        breakerA: 10,
        wanted: 'must stay on',
        residualDevice: true,
        neutralTraced: true,
      },
      data: {
        name: 'Data, alarm',
        lines: ['L1'],
        runW: 40,
        nightW: 40,
        breakerA: 10,
        wanted: 'must stay on',
        residualDevice: true,
        neutralTraced: true,
      },
      pump: {
        name: 'Water pump, 0.75 kW',
        lines: ['L1'],
        runW: 1100,
        nightW: 30,
        breakerA: 16,
        wanted: 'must stay on',
        residualDevice: true,
        neutralTraced: true,
        motor: { kind: 'pump', voltage: 230, lockedRotorA: 28.6, fullLoadA: 4.9, startS: 0.8 },
      },
      cooling: {
        name: 'Air-conditioner',
        lines: ['L3'],
        runW: 2050,
        nightW: 0,
        breakerA: 20,
        wanted: 'would be good',
        residualDevice: true,
        neutralTraced: true,
        motor: { kind: 'compressor', voltage: 230, lockedRotorA: 46, fullLoadA: 9.6, startS: 0.4 },
      },
      sockets: { name: 'Sockets, house', lines: ['L2'], runW: 1200, nightW: 60, breakerA: 20, wanted: 'no' },
      oven: { name: 'Oven', lines: ['L3'], runW: 2800, nightW: 0, breakerA: 20, wanted: 'no' },
      'hot-water': { name: 'Hot water', lines: ['L2'], runW: 3600, nightW: 0, breakerA: 20, wanted: 'no' },
      laundry: { name: 'Laundry', lines: ['L1'], runW: 1200, nightW: 0, breakerA: 20, wanted: 'no' },
    },
  },
  walls: {
    'east-wall': {
      name: 'East wall',
      lengthMm: 5400,
      heightMm: 2500,
      place: 'outside',
      habitableBehind: true,
      combustible: false,
      vehicles: false,
      sun: false,
      items: {
        'laundry-window': {
          kind: 'window',
          name: 'laundry window',
          leftMm: 500,
          bottomMm: 1000,
          widthMm: 1500,
          heightMm: 1100,
          habitable: true,
        },
        gas: {
          kind: 'gas meter',
          name: 'gas meter',
          leftMm: 4420,
          bottomMm: 300,
          widthMm: 450,
          heightMm: 500,
          habitable: false,
        },
      },
    },
  },
  access: { scaffoldNeeded: false, carryM: 22, note: 'Drive holds the van; dog goes to the neighbour.' },
  provenance: {
    'site.recordLowC': { by: 'Nia', at: '2026-04-30T02:00:00Z', note: 'invented for this demo' },
    'supply.loopOhm': surveyed('2026-05-02T00:20:00Z', 'loop tester 3'),
    'supply.prospectiveA': surveyed('2026-05-02T00:22:00Z', 'loop tester 3'),
    'supply.measuredV': surveyed('2026-05-02T00:15:00Z', 'voltmeter 2'),
    'supply.mains.lengthM': surveyed('2026-05-02T00:40:00Z', 'wheel'),
    'supply.rotation': surveyed('2026-05-02T00:24:00Z', 'rotation tester 1'),
    'roof.planes.north.pitchDeg': surveyed('2026-05-02T01:10:00Z', 'inclinometer'),
    'roof.planes.north.eaveLengthM': surveyed('2026-05-02T01:05:00Z', 'tape'),
    'roof.planes.north.rafters.spacingMm': surveyed('2026-05-02T01:30:00Z', 'tape, from the hatch'),
    'loads.circuits.cooling.motor.lockedRotorA': surveyed('2026-05-02T00:50:00Z', 'read off its plate'),
    'walls.east-wall': surveyed('2026-05-02T01:50:00Z', 'tape'),
  },
} as const satisfies z.input<typeof factsSchema>;
