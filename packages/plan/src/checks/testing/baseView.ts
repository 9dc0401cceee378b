import { choicesSchema, demoSheets, factsSchema, type Sheet } from '@eaveline/job';
import type { RulePack } from '../../rules/pack.ts';
import type { CheckView } from '../context.ts';
import type { Draft } from './draft.ts';

/** Sheets the case uses in one region, by their use. */
export interface CaseSheets {
  readonly unit: string;
  readonly trunkCable: string;
  readonly cable: string;
  readonly largerCable: string;
  readonly breaker: string;
  readonly batteryBreaker: string;
  readonly changeover: string;
}

const metric: CaseSheets = {
  unit: 'alder-400',
  trunkCable: 'bramble-120-1',
  cable: 'cable-6',
  largerCable: 'cable-10',
  breaker: 'breaker-c20',
  batteryBreaker: 'breaker-c25',
  changeover: 'sluice-63-one',
};
const american: CaseSheets = {
  unit: 'alder-300-240',
  trunkCable: 'bramble-120-2',
  cable: 'cable-10awg',
  largerCable: 'cable-8awg',
  breaker: 'breaker-us-20',
  batteryBreaker: 'breaker-us-30',
  changeover: 'sluice-200',
};

/** Sheets of a region's case. Where the grid's neutral stays, the changeover has no bond relay. */
export function sheetsOf(variant: RulePack['variant']): CaseSheets {
  if (variant === 'us') return american;
  return variant === 'au' || variant === 'nz' ? { ...metric, changeover: 'plain-63' } : metric;
}

/** A changeover that leaves the neutral alone, for one line. */
const plain63: Sheet = {
  kind: 'changeover',
  name: 'Plain 63',
  ratedA: 63,
  supply: 'single-phase',
  backupLines: 1,
  transferS: 0.1,
  bondRelay: false,
  widthMm: 380,
  heightMm: 520,
};

/** The job's part of a small sound design: four modules on one trunk, a battery on a wall, one circuit kept alive. */
export function baseView(variant: RulePack['variant']): Draft<CheckView> {
  const sheets = sheetsOf(variant);
  const us = variant === 'us';
  const facts = factsSchema.parse(factsDraft(variant));
  const choices = choicesSchema.parse({
    rules: { pack: us ? 'us' : variant === 'au' || variant === 'nz' ? 'au-nz' : 'iec-eu', variant },
    equipment: { ...demoSheets, 'plain-63': plain63 },
    rows: {
      row: { planeId: 'north', row: 1, orientation: 'portrait', uM: 2, vM: 1, gapMm: 20, moduleSheet: 'pellucid-430' },
    },
    modules: Object.fromEntries([1, 2, 3, 4].map((n) => [`m${n}`, { rowId: 'row', place: n, unitId: `u${n}` }])),
    units: Object.fromEntries([1, 2, 3, 4].map((n) => [`u${n}`, { sheet: sheets.unit, trunkId: 'a', drop: n }])),
    trunks: {
      a: {
        name: 'A',
        cableSheet: sheets.trunkCable,
        lines: us ? ['L1', 'L2'] : ['L1'],
        feedDrop: 1,
        homeRun: { cableSheet: sheets.cable, lengthM: 20, route: { method: us ? 'raceway' : 'C', ambientC: 40 } },
        breakerSheet: sheets.breaker,
      },
    },
    batteries: {
      store: {
        sheet: 'heath-9',
        lines: us ? ['L1', 'L2'] : ['L1'],
        cableSheet: sheets.cable,
        lengthM: 8,
        route: { method: us ? 'raceway' : 'C', ambientC: 30 },
        breakerSheet: sheets.batteryBreaker,
        place: { wallId: 'wall', leftMm: 3000, bottomMm: 300 },
      },
    },
    backup: {
      changeoverSheet: sheets.changeover,
      scope: 'part',
      lines: us ? ['L1', 'L2'] : ['L1'],
      circuits: { fridge: { moved: true } },
      trunks: { a: true },
    },
    mounting: {
      railSheet: 'tern-40',
      midClampSheet: 'mid-clamp',
      endClampSheet: 'end-clamp',
      fixingSheet: 'tile-hook',
      footSpacingMm: 1200,
      gapUnderMm: 100,
    },
    exportLimitSetVA: 1500,
  });
  const { site, network, supply, board, roof, walls, loads } = facts;
  return {
    state: 'design',
    facts: { site, network, supply, board, roof, walls, loads: { circuits: loads.circuits } },
    choices,
    signed: [],
  } as Draft<CheckView>;
}

function factsDraft(variant: RulePack['variant']): unknown {
  const us = variant === 'us';
  return {
    site: {
      address: '1 Try Lane',
      latitudeDeg: 0,
      longitudeDeg: 0,
      zone: 'UTC',
      recordLowC: -10,
      recordHighC: 45,
      wind: { exposed: false },
      yearBuilt: 2010,
    },
    network: {
      exportLimitVAPerLine: 5000,
      approvalNumber: 'N-1',
      approvalDate: '2026-01-10',
      approvedVA: 10_000,
    },
    supply: {
      system: us ? 'split-phase' : 'single-phase',
      nominalV: us ? 120 : 230,
      earthing: us ? 'US-grounded' : 'TN-C-S',
      serviceA: 63,
      loopOhm: 0.3,
      prospectiveA: 1500,
      measuredV: us ? { L1: 121, L2: 120 } : { L1: 232 },
      mains: { lengthM: 15, conductor: us ? { material: 'copper', awg: '4' } : { material: 'copper', areaMm2: 16 } },
    },
    board: {
      name: 'board',
      busA: 100,
      mainSwitchA: 63,
      breakingKA: 6,
      freeWays: 6,
      wiring: us ? 'us-120-240' : 'iec',
      backing: 'metal',
      ambientC: 30,
      surgeDevice: true,
      electrode: true,
    },
    roof: {
      planes: {
        north: {
          name: 'North',
          facingDeg: 0,
          // 60° makes the slope twice its plan: 6 m of slope over 3 m
          pitchDeg: 60,
          eaveLengthM: 10,
          slopeLengthM: 6,
          planWidthM: 3,
          ridgeFromM: 0,
          ridgeToM: 10,
          eaveLeft: { eastM: 0, northM: 0, heightM: 3 },
          edges: { left: 'verge', right: 'verge' },
          covering: 'concrete-tile',
          asbestos: 'no',
          rafters: { firstMm: 300, spacingMm: 600, widthMm: 45, depthMm: 120 },
        },
      },
      obstructions: {
        flue: {
          planeId: 'north',
          kind: 'flue',
          name: 'flue',
          uM: 5,
          vM: 4,
          widthM: 0.2,
          depthM: 0.2,
          heightM: 1,
          clearM: 0.5,
        },
      },
    },
    loads: {
      circuits: {
        fridge: {
          name: 'Fridge',
          lines: ['L1'],
          runW: 150,
          breakerA: 16,
          wanted: 'must stay on',
          residualDevice: true,
          neutralTraced: true,
          motor: { kind: 'compressor', voltage: us ? 120 : 230, lockedRotorA: 6 },
        },
      },
    },
    walls: {
      wall: {
        name: 'Yard wall',
        lengthMm: 6000,
        heightMm: 2500,
        place: 'outside',
        habitableBehind: false,
        combustible: false,
        vehicles: false,
        items: {
          window: {
            kind: 'window',
            name: 'kitchen window',
            leftMm: 500,
            bottomMm: 1000,
            widthMm: 1000,
            heightMm: 1000,
          },
        },
      },
    },
  };
}
