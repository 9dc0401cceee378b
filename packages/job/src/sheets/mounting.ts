import type { ClampSheet, FixingSheet, RailSheet } from '../schema/sheets.ts';

/** Invented rail, by sheet id. */
export const railSheets = {
  'tern-40': {
    kind: 'rail',
    invented: true,
    name: 'Tern 40',
    note: 'aluminium 6005-T5',
    stockMm: 4200,
    massKgPerM: 1.1,
    secondMomentCm4: 6.9,
    sectionModulusCm3: 3.3,
    elasticGPa: 70,
    designStressMPa: 180,
    expansionPerK: 23.1e-6,
    longestRunMm: 12000,
  },
} as const satisfies Record<string, RailSheet>;

const clamp = { kind: 'clamp', invented: true, torqueNm: 14, bonding: true } as const;

/** Invented clamps with bonding washers, by sheet id. */
export const clampSheets = {
  'mid-clamp': { ...clamp, name: 'Tern mid clamp', place: 'mid', gapMm: 20 },
  'end-clamp': { ...clamp, name: 'Tern end clamp', place: 'end', gapMm: 30 },
} as const satisfies Record<string, ClampSheet>;

/** Invented fixings, each with the resistance of one fixing in its own roof, by sheet id. */
export const fixingSheets = {
  'tile-hook': {
    kind: 'fixing',
    invented: true,
    name: 'Tern tile hook',
    suits: ['concrete-tile', 'clay-tile'],
    upliftN: 2400,
    upliftLevel: 'design',
    upliftBasis: 'sheet',
    screws: 2,
    torqueNm: 12,
  },
  'slate-hook': {
    kind: 'fixing',
    invented: true,
    name: 'Tern slate hook',
    suits: ['slate'],
    upliftN: 2100,
    upliftLevel: 'design',
    upliftBasis: 'sheet',
    screws: 2,
    torqueNm: 12,
  },
  'tin-foot': {
    kind: 'fixing',
    invented: true,
    name: 'Tern tin foot',
    suits: ['metal-sheet'],
    upliftN: 2600,
    upliftLevel: 'design',
    upliftBasis: 'sheet',
    screws: 2,
    torqueNm: 10,
  },
  'shingle-foot': {
    kind: 'fixing',
    invented: true,
    name: 'Tern shingle foot',
    suits: ['asphalt-shingle'],
    upliftN: 2000,
    upliftLevel: 'allowable',
    upliftBasis: 'sheet',
    screws: 1,
    torqueNm: 15,
  },
} as const satisfies Record<string, FixingSheet>;
