import type { BatterySheet, ChangeoverSheet } from '../schema/sheets.ts';

/** Invented batteries, a.c. coupled, single phase (or line to line in a split-phase house), by sheet id. */
export const batterySheets = {
  'heath-9': {
    kind: 'battery',
    invented: true,
    name: 'Heath 9',
    usableKwh: 9.2,
    continuousVA: 4600,
    peakVA: 7000,
    peakS: 10,
    roundTrip: 0.94,
    massKg: 118,
    widthMm: 680,
    heightMm: 1080,
    depthMm: 230,
    solarShareMax: 1.5,
    chemistry: 'lithium iron phosphate',
    faultA: 40,
  },
  'heath-13': {
    kind: 'battery',
    invented: true,
    name: 'Heath 13',
    usableKwh: 12.8,
    continuousVA: 6000,
    peakVA: 9000,
    peakS: 10,
    roundTrip: 0.93,
    massKg: 156,
    widthMm: 680,
    heightMm: 1300,
    depthMm: 245,
    solarShareMax: 1.5,
    chemistry: 'lithium iron phosphate',
    faultA: 52,
  },
} as const satisfies Record<string, BatterySheet>;

const sluice63 = {
  kind: 'changeover',
  invented: true,
  ratedA: 63,
  transferS: 0.1,
  widthMm: 380,
  heightMm: 520,
} as const;

/** Invented changeover units, by sheet id. */
export const changeoverSheets = {
  'sluice-63-one': {
    ...sluice63,
    name: 'Sluice 63, one line, with bond relay',
    supply: 'single-phase',
    backupLines: 1,
    bondRelay: true,
  },
  'sluice-63-three-one': {
    ...sluice63,
    name: 'Sluice 63, three lines in, one kept',
    supply: 'three-phase',
    backupLines: 1,
    // the region keeps its neutral-earth link at all times, so nothing is switched
    bondRelay: false,
  },
  'sluice-63-three-three': {
    ...sluice63,
    name: 'Sluice 63, three lines in, three kept',
    supply: 'three-phase',
    backupLines: 3,
    bondRelay: false,
  },
  'sluice-200': {
    kind: 'changeover',
    invented: true,
    name: 'Sluice 200',
    ratedA: 200,
    supply: 'split-phase',
    backupLines: 2,
    transferS: 0.1,
    bondRelay: false,
    widthMm: 460,
    heightMm: 680,
  },
} as const satisfies Record<string, ChangeoverSheet>;
