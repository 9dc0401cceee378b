import type { PartSheet } from '../schema/sheets.ts';

const part = { kind: 'part', invented: true } as const;

/** Invented small parts the kit counts, by sheet id. */
export const partSheets = {
  'feed-joint': { ...part, name: 'Bramble feed joint', use: 'feed-joint' },
  'drop-cap': { ...part, name: 'Bramble drop cap', use: 'drop-cap' },
  'end-cap': { ...part, name: 'Bramble end cap', use: 'end-cap' },
  'drop-release-tool': { ...part, name: 'Bramble drop-release tool', use: 'drop-release-tool' },
  'rail-splice': { ...part, name: 'Tern splice', use: 'splice', lengthMm: 200, torqueNm: 10 },
  'bonding-jumper': { ...part, name: 'Tern bonding jumper', use: 'bonding-jumper', lengthMm: 200, torqueNm: 8 },
  'earth-lug': { ...part, name: 'Tern earth lug', use: 'earth-lug', torqueNm: 7 },
  'roof-box': { ...part, name: 'roof junction box', use: 'roof-box' },
  isolator: { ...part, name: 'a.c. isolator, 32 A', use: 'isolator', torqueNm: 2 },
  'surge-device': { ...part, name: 'surge device, type 2', use: 'surge-device', torqueNm: 3 },
  meter: { ...part, name: 'solar meter', use: 'meter' },
  gateway: { ...part, name: 'Alder gateway', use: 'gateway' },
  'current-transformer': { ...part, name: 'current transformer, 100 A', use: 'current-transformer' },
  'cable-clip': { ...part, name: 'stainless cable clip', use: 'cable-clip' },
  'tie-wire': { ...part, name: 'coated tie wire, 1 m', use: 'tie-wire', lengthMm: 1000 },
} as const satisfies Record<string, PartSheet>;
