import type { ModuleSheet } from '../schema/sheets.ts';

/** What the two invented modules share: one frame, one cell count, one behaviour with temperature. */
const pellucid = {
  kind: 'module',
  invented: true,
  lengthMm: 1722,
  widthMm: 1134,
  thicknessMm: 30,
  massKg: 21.5,
  // 108 half cells: two parallel halves of 54 in series
  cellsInSeries: 54,
  vocPctPerK: -0.25,
  iscPctPerK: 0.046,
  pmpPctPerK: -0.3,
  noctC: 44,
  clampZoneFrom: 0.2,
  clampZoneTo: 0.3,
  leadMm: 1100,
  // tested 2400 Pa up and 5400 Pa down, the factor of 1.5 taken off
  upliftPa: 1600,
  downPa: 3600,
} as const;

/** Invented modules, by sheet id. */
export const moduleSheets = {
  'pellucid-430': {
    ...pellucid,
    name: 'Pellucid 430',
    pmpW: 430,
    vocV: 38.9,
    iscA: 13.9,
    vmpV: 32.6,
    impA: 13.2,
  },
  'pellucid-395': {
    ...pellucid,
    name: 'Pellucid 395',
    note: 'black frame and back',
    pmpW: 395,
    vocV: 36.9,
    iscA: 13.6,
    vmpV: 30.8,
    impA: 12.83,
  },
} as const satisfies Record<string, ModuleSheet>;
