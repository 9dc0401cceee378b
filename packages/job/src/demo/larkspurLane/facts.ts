import type { z } from 'zod';
import type { factsSchema, PlaneFacts } from '../../schema/facts.ts';

/** Gable of 12.8 × 9.2 m, ridge east to west; 4.6 m ÷ cos 26.6° = 5.145 m up the slope. 26.6° is 6 in 12. */
const gable = {
  pitchDeg: 26.6,
  eaveLengthM: 12.8,
  slopeLengthM: 5.145,
  planWidthM: 4.6,
  ridgeFromM: 0,
  ridgeToM: 12.8,
  edges: { eave: 'eave', ridge: 'ridge', left: 'verge', right: 'verge' },
  covering: 'asphalt-shingle',
  fragile: false,
  asbestos: 'no',
  rafters: { firstMm: 305, spacingMm: 610, widthMm: 38, depthMm: 89 },
  atticC: 40,
} as const;

export const larkspurPlanes = {
  south: { ...gable, name: 'South', facingDeg: 180, eaveLeft: { eastM: 0, northM: 0, heightM: 3 } },
  north: { ...gable, name: 'North', facingDeg: 0, eaveLeft: { eastM: 12.8, northM: 9.2, heightM: 3 } },
} as const satisfies Record<string, PlaneFacts>;

const surveyed = (at: string, instrument: string) => ({ by: 'Ode', at, with: instrument });

export const larkspurFacts = {
  site: {
    address: '412 Larkspur Lane, Tarn Mesa',
    latitudeDeg: 39.8,
    longitudeDeg: -105.2,
    elevationM: 1720,
    zone: 'America/Denver',
    recordLowC: -31,
    recordHighC: 41,
    recordSource: 'invented for this demo',
    horizon: [
      { azimuthDeg: 0, elevationDeg: 2 },
      { azimuthDeg: 180, elevationDeg: 3 },
      { azimuthDeg: 270, elevationDeg: 8 },
      { azimuthDeg: 360, elevationDeg: 2 },
    ],
    objects: {
      spruce: { kind: 'tree', name: 'spruce', eastM: -7, northM: -6, heightM: 8, widthM: 3.5, transmission: 0.1 },
    },
    // 115 mph
    wind: { basicSpeedMS: 51.4, terrain: 'C', roofHeightM: 4.2, exposed: false },
    // 30 psf
    snow: { groundKPa: 1.44 },
    yearBuilt: 1996,
  },
  network: {
    name: 'Front Fork Electric',
    approvalNumber: 'FF-20117',
    approvalDate: '2026-04-20',
    approvedVA: 17400,
    profile: 'FF default, 2025',
    meterNumber: '20 448 117',
  },
  supply: {
    system: 'split-phase',
    nominalV: 120,
    earthing: 'US-grounded',
    serviceA: 100,
    loopOhm: 0.022,
    prospectiveA: 5400,
    measuredV: { L1: 121.3, L2: 120.8 },
    mains: { lengthM: 9, conductor: { material: 'aluminium', awg: '2', strandClass: 2 } },
  },
  board: {
    name: 'service panel',
    busA: 125,
    mainSwitchA: 100,
    breakingKA: 10,
    freeWays: 4,
    breakerSumA: 245,
    wiring: 'us-120-240',
    backing: 'metal',
    ambientC: 35,
    surgeDevice: false,
    electrode: true,
  },
  roof: {
    planes: larkspurPlanes,
    obstructions: {
      'vent-stack': {
        planeId: 'south',
        kind: 'vent',
        name: 'plumbing vent',
        uM: 6.4,
        vM: 4.45,
        widthM: 0.1,
        depthM: 0.1,
        heightM: 0.35,
        clearM: 0.15,
      },
    },
    storeys: 1,
  },
  loads: {
    annualKwh: 10800,
    dayShape: [
      0.032, 0.03, 0.029, 0.029, 0.03, 0.034, 0.042, 0.046, 0.042, 0.037, 0.035, 0.035, 0.036, 0.037, 0.039, 0.043,
      0.05, 0.058, 0.063, 0.062, 0.058, 0.052, 0.044, 0.037,
    ],
    circuits: {
      'heat-pump': {
        name: 'Heat pump',
        lines: ['L1', 'L2'],
        lineToLine: true,
        runW: 3200,
        nightW: 900,
        breakerA: 40,
        wanted: 'must stay on',
        motor: { kind: 'compressor', voltage: 240, lockedRotorA: 58, fullLoadA: 14, startS: 0.3 },
      },
      'well-pump': {
        name: 'Well pump, ½ hp',
        lines: ['L1', 'L2'],
        lineToLine: true,
        runW: 1000,
        nightW: 20,
        breakerA: 20,
        wanted: 'must stay on',
        motor: { kind: 'pump', voltage: 240, horsepower: 0.5, codeLetter: 'J', fullLoadA: 4.9, startS: 1 },
      },
      kitchen: { name: 'Kitchen, fridge', lines: ['L1'], runW: 450, nightW: 90, breakerA: 20, wanted: 'must stay on' },
      lights: { name: 'Lights', lines: ['L2'], runW: 280, nightW: 80, breakerA: 15, wanted: 'must stay on' },
      outlets: { name: 'Outlets', lines: ['L2'], runW: 600, nightW: 70, breakerA: 20, wanted: 'would be good' },
      furnace: {
        name: 'Air handler fan',
        lines: ['L1'],
        runW: 450,
        nightW: 120,
        breakerA: 15,
        wanted: 'must stay on',
        motor: { kind: 'fan', voltage: 120, horsepower: 0.33, codeLetter: 'H', fullLoadA: 5.5, startS: 0.5 },
      },
      range: { name: 'Range', lines: ['L1', 'L2'], lineToLine: true, runW: 7000, breakerA: 50, wanted: 'no' },
      dryer: { name: 'Dryer', lines: ['L1', 'L2'], lineToLine: true, runW: 5000, breakerA: 30, wanted: 'no' },
      'water-heater': {
        name: 'Water heater',
        lines: ['L1', 'L2'],
        lineToLine: true,
        runW: 4500,
        breakerA: 30,
        wanted: 'would be good',
      },
    },
  },
  walls: {
    'garage-wall': {
      name: 'Garage, north wall',
      lengthMm: 6000,
      heightMm: 2700,
      place: 'garage',
      habitableBehind: true,
      combustible: true,
      vehicles: true,
      sun: false,
      items: {
        'house-door': {
          kind: 'door',
          name: 'door to the house',
          leftMm: 4800,
          bottomMm: 0,
          widthMm: 910,
          heightMm: 2040,
          habitable: true,
        },
      },
    },
  },
  access: { scaffoldNeeded: false, carryM: 15, note: 'Attic hatch in the hall; trusses, not rafters.' },
  provenance: {
    'supply.measuredV': surveyed('2026-04-14T16:10:00Z', 'voltmeter 2'),
    'supply.prospectiveA': surveyed('2026-04-14T16:20:00Z', 'utility letter'),
    'board.busA': surveyed('2026-04-14T16:05:00Z', 'panel label, photo 3'),
    'roof.planes.south.rafters.spacingMm': surveyed('2026-04-14T17:00:00Z', 'tape, in the attic'),
    'loads.circuits.heat-pump.motor.lockedRotorA': surveyed('2026-04-14T16:40:00Z', 'read off its plate'),
    'site.snow.groundKPa': { by: 'Ode', at: '2026-04-14T20:00:00Z', note: 'invented for this demo: ask the county' },
  },
} as const satisfies z.input<typeof factsSchema>;
