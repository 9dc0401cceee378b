import type { z } from 'zod';
import type { choicesSchema, RowChoice } from '../schema/choices.ts';
import type { factsSchema, LineName, PlaneFacts } from '../schema/facts.ts';
import { type Job, jobSchema } from '../schema/job.ts';
import { takeSheets } from '../sheets/index.ts';
import { moduleSheets } from '../sheets/modules.ts';
import { crew, firm } from './firm.ts';
import { layTrunk, type PlaceName, places } from './layTrunk.ts';

const LINES = ['L1', 'L2', 'L3'] as const;
const BUILDINGS = ['consulting', 'ward', 'store', 'plant'] as const;
type Building = (typeof BUILDINGS)[number];

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

const planes: Record<Building, PlaneFacts> = {
  consulting: northPlane('Consulting rooms', 15.6, 30),
  ward: northPlane('Ward', 35.6, 30),
  store: northPlane('Cold store', 15.6, 8.8),
  plant: northPlane('Plant shed', 35.6, 8.8),
};

const surveyed = (at: string, instrument: string) => ({ by: 'Ode', at, with: instrument });
const threeLines = { lines: [...LINES] };

const facts = {
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
    planes,
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
    inlet: { kind: 'generator inlet', name: 'generator inlet', ratedA: 32, ...threeLines },
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

/** Two rows of twelve on each roof: 12 × 1134 + 11 × 20 = 13 828 of 15 600. */
const rows: Record<string, RowChoice> = Object.fromEntries(
  BUILDINGS.flatMap((planeId) =>
    [1, 2].map((row) => [
      `${planeId}-${row}`,
      {
        planeId,
        row,
        orientation: 'portrait' as const,
        uM: 0.886,
        vM: row === 1 ? 0.4 : 2.142,
        gapMm: 20,
        moduleSheet: 'pellucid-430',
      },
    ]),
  ),
);

const common = { planes, rows, module: moduleSheets['pellucid-430'], dropPitchM: 1.2 };
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

const choices: z.input<typeof choicesSchema> = {
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
    a: trunk('Trunk A', 13, 24, laid.a.jumpers),
    b: trunk('Trunk B', 13, 31, laid.b.jumpers),
    c: trunk('Trunk C', 3, 18, laid.c.jumpers),
    d: trunk('Trunk D', 3, 12, laid.d.jumpers),
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

/** Ironbark Clinic: four roofs, 96 modules, two sorts of unit, three batteries on three lines, a long feeder. */
export const ironbarkClinic: Job = jobSchema.parse({
  format: 'eaveline-job',
  version: 1,
  id: 'ironbark-clinic',
  name: 'Ironbark Clinic',
  invented: true,
  firm,
  customer: { name: 'Garrow Plain Health' },
  about: '96 modules on four roofs, three Heath 13, cold store and lights kept alive',
  state: 'booked',
  facts,
  choices,
});
