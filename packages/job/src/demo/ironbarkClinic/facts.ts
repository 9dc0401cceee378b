import type { z } from 'zod';
import type { factsSchema, LineName, PlaneFacts } from '../../schema/facts.ts';

export const LINES = ['L1', 'L2', 'L3'] as const;
export const BUILDINGS = ['consulting', 'ward', 'store', 'plant'] as const;
export type Building = (typeof BUILDINGS)[number];

/** Four sheds of the same span, ridge east to west, sheet metal at 15°; 4.4 m ÷ cos 15° = 4.555 m up the slope. */
function northPlane(name: string, eastM: number, northM: number): PlaneFacts {
  return {
    name,
    facingDeg: 0,
    pitchDeg: 15,
    eaveLengthM: 15.6,
    slopeLengthM: 4.555,
    planWidthM: 4.4,
    ridgeFromM: 0,
    ridgeToM: 15.6,
    eaveLeft: { eastM, northM, heightM: 3 },
    edges: { eave: 'eave', ridge: 'ridge', left: 'verge', right: 'verge' },
    covering: 'metal-sheet',
    fragile: false,
    asbestos: 'no',
    rafters: { firstMm: 300, spacingMm: 900, widthMm: 45, depthMm: 140 },
    battenMm: 900,
    atticC: 60,
  };
}

export const ironbarkPlanes: Record<Building, PlaneFacts> = {
  consulting: northPlane('Consulting rooms', 15.6, 30),
  ward: northPlane('Ward', 35.6, 30),
  store: northPlane('Cold store', 15.6, 8.8),
  plant: northPlane('Plant shed', 35.6, 8.8),
};

const surveyed = (at: string, instrument: string) => ({ by: 'Ode', at, with: instrument });
const threeLines = { lines: [...LINES] };

export const ironbarkFacts = {
  site: {
    address: '3 Ironbark Road, Garrow Plain',
    latitudeDeg: -33.2,
    longitudeDeg: 148.7,
    elevationM: 310,
    zone: 'Australia/Sydney',
    recordLowC: -6,
    recordHighC: 46,
    recordSource: 'invented for this demo',
    horizon: [{ azimuthDeg: 0, elevationDeg: 1 }],
    objects: {
      tank: { kind: 'building', name: 'water tank', eastM: 40, northM: 14, heightM: 6, widthM: 4, transmission: 0 },
    },
    wind: { region: 'A', basicSpeedMS: 45, terrain: '2', roofHeightM: 3.6, exposed: false },
    yearBuilt: 2004,
  },
  network: {
    name: 'Western Slopes Lines',
    exportLimitVATotal: 30000,
    approvalNumber: 'WSL-7741',
    approvalDate: '2026-03-30',
    approvedVA: 60000,
    profile: 'Region A',
    meterNumber: '4102 7718 06',
  },
  supply: {
    system: 'three-phase',
    nominalV: 230,
    earthing: 'MEN',
    serviceA: 100,
    loopOhm: 0.31,
    prospectiveA: 1480,
    measuredV: { L1: 241.8, L2: 242.4, L3: 240.9 },
    // pole to board: the long feeder
    mains: { lengthM: 64, conductor: { material: 'copper', areaMm2: 35, strandClass: 2 } },
    rotation: 'L1-L2-L3',
  },
  board: {
    name: 'main switchboard',
    busA: 250,
    mainSwitchA: 100,
    breakingKA: 6,
    freeWays: 24,
    breakerSumA: 420,
    wiring: 'iec',
    backing: 'metal',
    ambientC: 40,
    surgeDevice: true,
    residualType: 'A',
    electrode: true,
  },
  roof: {
    planes: ironbarkPlanes,
    obstructions: {
      hatch: {
        planeId: 'ward',
        kind: 'hatch',
        name: 'roof hatch',
        uM: 7.8,
        vM: 4.25,
        widthM: 0.3,
        depthM: 0.3,
        heightM: 0.2,
        clearM: 0.05,
      },
    },
    storeys: 1,
  },
  loads: {
    annualKwh: 68000,
    dayShape: [
      0.025, 0.024, 0.024, 0.024, 0.025, 0.027, 0.033, 0.043, 0.056, 0.063, 0.066, 0.067, 0.066, 0.066, 0.065, 0.062,
      0.056, 0.046, 0.036, 0.031, 0.028, 0.025, 0.022, 0.02,
    ],
    circuits: {
      'cold-store': {
        name: 'Cold store',
        ...threeLines,
        runW: 2400,
        nightW: 1100,
        breakerA: 20,
        wanted: 'must stay on',
        residualDevice: true,
        motor: { kind: 'compressor', voltage: 400, lockedRotorA: 27, fullLoadA: 5.1, startS: 0.4 },
      },
      'lights-l1': lights('Lights, consulting', 'L1', 900, 120),
      'lights-l2': lights('Lights, ward', 'L2', 1100, 380),
      'lights-l3': lights('Lights, outside and store', 'L3', 500, 260),
      'vaccine-fridge': {
        name: 'Vaccine fridges',
        lines: ['L2'],
        runW: 350,
        nightW: 160,
        breakerA: 16,
        wanted: 'must stay on',
        residualDevice: true,
        motor: { kind: 'compressor', voltage: 230, lockedRotorA: 8, fullLoadA: 1.4, startS: 0.3 },
      },
      records: {
        name: 'Records and data',
        lines: ['L1'],
        runW: 600,
        nightW: 240,
        breakerA: 16,
        wanted: 'must stay on',
        residualDevice: true,
      },
      cooling: {
        name: 'Air-conditioning',
        ...threeLines,
        runW: 9000,
        nightW: 700,
        breakerA: 32,
        wanted: 'no',
        motor: { kind: 'inverter-driven', voltage: 400, fullLoadA: 15 },
      },
      sterilizer: { name: 'Sterilizer', ...threeLines, runW: 6000, nightW: 0, breakerA: 20, wanted: 'no' },
      sockets: { name: 'Sockets', lines: ['L3'], runW: 1500, nightW: 150, breakerA: 20, wanted: 'would be good' },
    },
  },
  walls: {
    'plant-wall': {
      name: 'Plant shed, south wall inside',
      lengthMm: 9000,
      heightMm: 3000,
      place: 'shed',
      habitableBehind: false,
      combustible: false,
      vehicles: false,
      sun: false,
      items: {
        'shed-door': {
          kind: 'door',
          name: 'shed door',
          leftMm: 7600,
          bottomMm: 0,
          widthMm: 1000,
          heightMm: 2100,
          habitable: false,
        },
      },
    },
  },
  existing: {
    inlet: { kind: 'generator inlet', name: 'generator inlet', ratedA: 32, ...threeLines, changeover: true },
  },
  access: {
    scaffoldNeeded: false,
    carryM: 30,
    note: 'Patients until 14:00 on the ward side; the cold store may not stop.',
  },
  provenance: {
    'supply.loopOhm': surveyed('2026-03-11T23:30:00Z', 'loop tester 3'),
    'supply.prospectiveA': surveyed('2026-03-11T23:32:00Z', 'loop tester 3'),
    'supply.mains.lengthM': surveyed('2026-03-12T00:10:00Z', 'wheel, pole to board'),
    'roof.planes.ward.rafters.spacingMm': surveyed('2026-03-12T01:00:00Z', 'tape'),
    'loads.circuits.cold-store.motor.lockedRotorA': surveyed('2026-03-12T01:20:00Z', 'read off its plate'),
  },
} satisfies z.input<typeof factsSchema>;

function lights(name: string, line: LineName, runW: number, nightW: number) {
  return {
    name,
    lines: [line],
    runW,
    nightW,
    breakerA: 10,
    wanted: 'must stay on' as const,
    residualDevice: true,
  };
}
