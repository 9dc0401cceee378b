import type { TableSource } from '../tableSource.ts';

/** American sizes held here, small to large. Metric areas from NEC Chapter 9 Table 8 (from memory). */
export const AWG_SIZES = [
  '14',
  '12',
  '10',
  '8',
  '6',
  '4',
  '3',
  '2',
  '1',
  '1/0',
  '2/0',
  '3/0',
  '4/0',
  '250 kcmil',
] as const;
export type AwgSize = (typeof AWG_SIZES)[number];

/** NEC Chapter 9 Table 8, uncoated conductors at 75 °C, d.c., Ω per 1000 ft: size, stranding, copper, aluminium. */
export const NEC_TABLE_8: readonly (readonly [AwgSize, 'solid' | 'stranded', number, number])[] = [
  ['14', 'solid', 3.07, 5.06],
  ['14', 'stranded', 3.14, 5.17],
  ['12', 'solid', 1.93, 3.18],
  ['12', 'stranded', 1.98, 3.25],
  ['10', 'solid', 1.21, 1.99],
  ['10', 'stranded', 1.24, 2.04],
  ['8', 'stranded', 0.778, 1.28],
  ['6', 'stranded', 0.491, 0.808],
  ['4', 'stranded', 0.308, 0.508],
  ['3', 'stranded', 0.245, 0.403],
  ['2', 'stranded', 0.194, 0.319],
  ['1', 'stranded', 0.154, 0.253],
  ['1/0', 'stranded', 0.122, 0.201],
  ['2/0', 'stranded', 0.0967, 0.159],
  ['3/0', 'stranded', 0.0766, 0.126],
  ['4/0', 'stranded', 0.0608, 0.1],
  ['250 kcmil', 'stranded', 0.0515, 0.0847],
];

export const NEC_TABLE_8_SOURCE: TableSource = {
  text: 'NFPA 70 (NEC) 2023, Chapter 9 Table 8, d.c. resistance at 75 °C, uncoated',
  seen: 'public text',
};

/** Note 2 of Table 8: R2 = R1·(1 + a·(T2 − 75)). From memory. */
export const NEC_ALPHA_75_PER_K = { copper: 0.00323, aluminium: 0.0033 } as const;

export interface NecTable9Row {
  readonly awg: AwgSize;
  /** Ω to neutral per 1000 ft, and per km as the table prints it (not known for the larger sizes). */
  readonly kft: {
    readonly xPvcOrAl: number;
    readonly xSteel: number;
    readonly rPvc: number;
    readonly rAl: number;
    readonly rSteel: number;
  };
  readonly km?: {
    readonly xPvcOrAl: number;
    readonly xSteel: number;
    readonly rPvc: number;
    readonly rAl: number;
    readonly rSteel: number;
  };
}

/** NEC Chapter 9 Table 9: copper, three single conductors in conduit, 600 V, 60 Hz, 75 °C. */
export const NEC_TABLE_9: readonly NecTable9Row[] = [
  {
    awg: '14',
    kft: { xPvcOrAl: 0.058, xSteel: 0.073, rPvc: 3.1, rAl: 3.1, rSteel: 3.1 },
    km: { xPvcOrAl: 0.19, xSteel: 0.24, rPvc: 10.2, rAl: 10.2, rSteel: 10.2 },
  },
  {
    awg: '12',
    kft: { xPvcOrAl: 0.054, xSteel: 0.068, rPvc: 2.0, rAl: 2.0, rSteel: 2.0 },
    km: { xPvcOrAl: 0.177, xSteel: 0.223, rPvc: 6.6, rAl: 6.6, rSteel: 6.6 },
  },
  {
    awg: '10',
    kft: { xPvcOrAl: 0.05, xSteel: 0.063, rPvc: 1.2, rAl: 1.2, rSteel: 1.2 },
    km: { xPvcOrAl: 0.164, xSteel: 0.207, rPvc: 3.9, rAl: 3.9, rSteel: 3.9 },
  },
  {
    awg: '8',
    kft: { xPvcOrAl: 0.052, xSteel: 0.065, rPvc: 0.78, rAl: 0.78, rSteel: 0.78 },
    km: { xPvcOrAl: 0.171, xSteel: 0.213, rPvc: 2.56, rAl: 2.56, rSteel: 2.56 },
  },
  {
    awg: '6',
    kft: { xPvcOrAl: 0.051, xSteel: 0.064, rPvc: 0.49, rAl: 0.49, rSteel: 0.49 },
    km: { xPvcOrAl: 0.167, xSteel: 0.21, rPvc: 1.61, rAl: 1.61, rSteel: 1.61 },
  },
  {
    awg: '4',
    kft: { xPvcOrAl: 0.048, xSteel: 0.06, rPvc: 0.31, rAl: 0.31, rSteel: 0.31 },
    km: { xPvcOrAl: 0.157, xSteel: 0.197, rPvc: 1.02, rAl: 1.02, rSteel: 1.02 },
  },
  {
    awg: '3',
    kft: { xPvcOrAl: 0.047, xSteel: 0.059, rPvc: 0.25, rAl: 0.25, rSteel: 0.25 },
    km: { xPvcOrAl: 0.154, xSteel: 0.194, rPvc: 0.82, rAl: 0.82, rSteel: 0.82 },
  },
  {
    awg: '2',
    kft: { xPvcOrAl: 0.045, xSteel: 0.057, rPvc: 0.19, rAl: 0.2, rSteel: 0.2 },
    km: { xPvcOrAl: 0.148, xSteel: 0.187, rPvc: 0.62, rAl: 0.66, rSteel: 0.66 },
  },
  {
    awg: '1',
    kft: { xPvcOrAl: 0.046, xSteel: 0.057, rPvc: 0.15, rAl: 0.16, rSteel: 0.16 },
    km: { xPvcOrAl: 0.151, xSteel: 0.187, rPvc: 0.49, rAl: 0.52, rSteel: 0.52 },
  },
  {
    awg: '1/0',
    kft: { xPvcOrAl: 0.044, xSteel: 0.055, rPvc: 0.12, rAl: 0.13, rSteel: 0.12 },
    km: { xPvcOrAl: 0.144, xSteel: 0.18, rPvc: 0.39, rAl: 0.43, rSteel: 0.39 },
  },
  { awg: '2/0', kft: { xPvcOrAl: 0.043, xSteel: 0.054, rPvc: 0.1, rAl: 0.1, rSteel: 0.1 } },
  { awg: '3/0', kft: { xPvcOrAl: 0.042, xSteel: 0.052, rPvc: 0.077, rAl: 0.082, rSteel: 0.079 } },
  { awg: '4/0', kft: { xPvcOrAl: 0.041, xSteel: 0.051, rPvc: 0.062, rAl: 0.067, rSteel: 0.063 } },
];

export const NEC_TABLE_9_SOURCE: TableSource = {
  text: 'NFPA 70 (NEC), Chapter 9 Table 9, three single copper conductors in conduit, 60 Hz, 75 °C, ohms to neutral',
  seen: 'public text',
};
