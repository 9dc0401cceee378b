import { labelsUs } from './labelsUs.ts';
import { limit, PRACTICE } from './limit.ts';
import type { PackFigures, RulePack } from './pack.ts';
import { lacksUs, rulesUs, unsettledUs } from './rulesUs.ts';

const NEC = 'NEC';
const NFPA = 'NFPA 855 and IRC R328';

const figures: PackFigures = {
  id: 'us',
  variant: 'us',
  words: {
    board: 'service panel',
    earth: 'ground',
    line: 'hot',
    breaker: 'breaker',
    residualDevice: 'GFPE',
    network: 'utility',
    supply: 'service point',
    homeRun: 'home run',
    changeover: 'transfer switch',
    isolator: 'disconnect',
  },
  wiring: 'us-120-240',
  editions: {
    NEC: '2023',
    'IRC R324': '2021',
    'NFPA 855 and IRC R328': '2023',
    'ASCE 7': '2016',
    'IEEE 1547': '2018',
    'ANSI C84.1': '2020',
    'OSHA 1926.1101': 'current',
    'utility tariff': 'the letter of this site',
  },

  riseShare: limit(0.02, PRACTICE, 'no rule in the code; makers and careful firms ask for 1.5 to 2 %', 'practice'),
  continuousFactor: limit(1.25, NEC, 'NEC 705.60, 125 % rule', 'public text'),
  breakerContinuousShare: limit(0.8, NEC, 'NEC 210.20(A), 215.3', 'memory'),
  cableMethod: 'nec',
  bus: {
    kind: '120 percent',
    limit: limit(
      1.2,
      NEC,
      'NEC 705.12(B)',
      'public text',
      'Source breaker at the far end. Other options need their own sums.',
    ),
  },
  tellOnlyVA: limit(0, 'utility tariff', 'every interconnection is applied for', 'public text'),
  supplyBand: limit([-0.05, 0.05] as const, 'ANSI C84.1', 'ANSI C84.1 range A, 114 to 126 V a leg', 'memory'),

  setbacks: {
    eaveM: limit(0.2, PRACTICE, 'edge kept clear, run-off into the gutter', 'practice'),
    ridgeM: limit(0.457, 'IRC R324', 'IRC R324.6.2, 18 in each side up to 33 % of the roof', 'public text'),
    sideM: limit(0.2, PRACTICE, 'edge kept clear', 'practice'),
  },
  ridgeAboveShare: limit(
    { roofShare: 0.33, ridgeM: 0.914 },
    'IRC R324',
    'IRC R324.6.2, 36 in above 33 % of the roof',
    'public text',
  ),
  gapUnderMm: limit([50, 254] as const, 'ASCE 7', 'ASCE 7 29.4.4, at most 10 in above the roof', 'public text'),
  coldVoltage: limit('module coefficient at the record low', NEC, 'NEC 690.7(A)', 'memory'),

  wind: {
    method: 'ASCE 7',
    limit: limit('0.6 D + 0.6 W', 'ASCE 7', 'ASCE 7 2.4.1', 'memory'),
    footMargin: limit(1.25, PRACTICE, 'resistance over load on the worst foot', 'practice'),
  },

  batteryPlace: {
    sideMm: limit(914, NFPA, 'IRC R328, 3 ft from doors, windows and other units', 'public text'),
    aboveMm: limit(914, NFPA, 'IRC R328, 3 ft from openings', 'public text'),
    frontMm: limit(914, NEC, 'NEC 110.26, 36 in working space', 'public text'),
    forbidden: limit(['habitable room', 'bedroom', 'loft', 'under stairs'], NFPA, 'IRC R328.4', 'public text'),
  },
  batteryKwhMost: limit(80, NFPA, 'IRC R328.5, garage or outside wall; 40 kWh in a utility closet', 'public text'),
  backup: {
    runningShare: limit(0.9, PRACTICE, 'utility worksheet, running at most 90 % of the rating', 'public text'),
    startShare: limit(1, 'equipment sheet', 'short-time rating of the battery', 'equipment sheet'),
    solarShare: limit(1.5, PRACTICE, 'solar on the backed-up side over the battery', 'practice'),
    neutral: limit('bond stays at the service', NEC, 'NEC 250.30, 702', 'memory'),
  },

  tests: {
    insulationMOhm: limit(1, PRACTICE, 'acceptance by practice; the code sets none', 'practice'),
    insulationTestV: limit(500, PRACTICE, 'acceptance by practice', 'practice'),
    mainEarthOhm: limit(0.5, PRACTICE, 'ground path by practice', 'practice'),
    railBondOhm: limit(1, PRACTICE, 'rail to the ground bar', 'practice'),
    residualMs: limit(300, PRACTICE, 'device standard by practice', 'practice'),
    coldLoopShare: limit(1, PRACTICE, 'no loop table in the code', 'practice'),
    lossOfMainsS: limit(2, 'IEEE 1547', 'IEEE 1547 8.1', 'memory'),
    reconnectS: limit(300, 'IEEE 1547', 'IEEE 1547 4.10, enter service', 'memory'),
  },
  labels: labelsUs,
  documents: [
    {
      id: 'permit',
      name: 'Permit with plan set',
      who: 'contractor',
      clause: 'local building department',
      seen: 'public text',
      first: 'permission',
    },
    {
      id: 'interconnection',
      name: 'Interconnection application and permission to operate',
      who: 'utility',
      clause: 'utility tariff',
      seen: 'public text',
      first: 'network',
    },
    {
      id: 'inspection',
      name: 'Signed inspection',
      who: 'inspector',
      clause: 'local building department',
      seen: 'public text',
    },
  ],
};

/** United States. The edition of every code is the place's own; the official there decides. */
export const usPack: RulePack = { ...figures, rules: rulesUs(figures), lacks: lacksUs, unsettled: unsettledUs };
