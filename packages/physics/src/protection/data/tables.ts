import type { TableSource } from '../../conductor/tableSource.ts';

/** Preferred ratings of breakers to IEC 60898, A. From memory. */
export const IEC_60898_RATINGS_A: readonly number[] = [6, 8, 10, 13, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125];

/** NEC 240.6(A) standard ratings, A. 10 A is new in the 2023 edition. */
export const NEC_240_6_RATINGS_A: readonly number[] = [
  10, 15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500,
  600, 700, 800, 1000, 1200, 1600, 2000, 2500, 3000, 4000, 5000, 6000,
];

/** Standard conductor sizes for protective conductors, mm². */
export const STANDARD_MM2: readonly number[] = [1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120, 150, 185];

type LoopTable = Readonly<Record<'B' | 'C' | 'D', readonly (readonly [ratingA: number, ohm: number])[]>>;

/** Largest earth-fault loop impedance for 0.4 s at 230 V, Ω, as the tables print it. */
export const MAX_LOOP_OHM: Readonly<Record<'BS 7671' | 'AS/NZS 3000', LoopTable>> = {
  'BS 7671': {
    B: [
      [6, 7.28],
      [10, 4.37],
      [16, 2.73],
      [20, 2.19],
      [25, 1.75],
      [32, 1.37],
      [40, 1.09],
      [50, 0.87],
      [63, 0.69],
      [80, 0.55],
      [100, 0.44],
      [125, 0.35],
    ],
    C: [
      [6, 3.64],
      [10, 2.19],
      [16, 1.37],
      [20, 1.09],
      [25, 0.87],
      [32, 0.68],
      [40, 0.55],
      [50, 0.44],
      [63, 0.35],
      [80, 0.27],
      [100, 0.22],
      [125, 0.17],
    ],
    D: [
      [6, 1.82],
      [10, 1.09],
      [16, 0.68],
      [20, 0.55],
      [25, 0.44],
      [32, 0.34],
      [40, 0.27],
      [50, 0.22],
      [63, 0.17],
      [80, 0.14],
      [100, 0.11],
      [125, 0.09],
    ],
  },
  'AS/NZS 3000': {
    B: [
      [6, 9.58],
      [10, 5.75],
      [16, 3.59],
      [20, 2.88],
      [25, 2.3],
      [32, 1.8],
      [40, 1.44],
      [50, 1.15],
      [63, 0.91],
      [80, 0.72],
      [100, 0.58],
    ],
    C: [
      [6, 5.11],
      [10, 3.07],
      [16, 1.92],
      [20, 1.53],
      [25, 1.23],
      [32, 0.96],
      [40, 0.77],
      [50, 0.61],
      [63, 0.49],
      [80, 0.38],
      [100, 0.31],
    ],
    D: [
      [6, 3.07],
      [10, 1.84],
      [16, 1.15],
      [20, 0.92],
      [25, 0.74],
      [32, 0.58],
      [40, 0.46],
      [50, 0.37],
      [63, 0.29],
      [80, 0.23],
      [100, 0.18],
    ],
  },
};

export const MAX_LOOP_SOURCE: Readonly<Record<'BS 7671' | 'AS/NZS 3000', TableSource>> = {
  'BS 7671': { text: 'BS 7671:2018 Table 41.3, Uo 230 V, Cmin 0.95, 0.4 s', seen: 'public text' },
  'AS/NZS 3000': {
    text: 'AS/NZS 3000:2018 Table 8.1, 230 V over the mean tripping current 4, 7.5, 12.5 × In',
    seen: 'from memory',
  },
};

/** Adiabatic factor k: metal, case, from °C, to °C, k. IEC 60364-5-54 Tables A.54.2 to A.54.6; each recomputed. */
export const ADIABATIC_K: readonly (readonly ['copper' | 'aluminium', string, number, number, number])[] = [
  ['copper', 'PVC 70 in cable', 70, 160, 115],
  ['copper', 'PVC 70 over 300 mm2', 70, 140, 103],
  ['copper', 'PVC 70 separate', 30, 160, 143],
  ['copper', 'XLPE 90 in cable', 90, 250, 143],
  ['copper', 'XLPE 90 separate', 30, 250, 176],
  ['copper', 'V-75 PVC', 75, 160, 111],
  ['copper', 'bare', 30, 200, 159],
  ['aluminium', 'PVC 70 in cable', 70, 160, 76],
  ['aluminium', 'PVC 70 separate', 30, 160, 95],
  ['aluminium', 'XLPE 90 in cable', 90, 250, 94],
  ['aluminium', 'XLPE 90 separate', 30, 250, 116],
];

/** NEC 690.7(A): coldest temperature of the band, °C, and factor on Voc. */
export const NEC_690_7_FACTOR: readonly (readonly [fromC: number, factor: number])[] = [
  [20, 1.02],
  [15, 1.04],
  [10, 1.06],
  [5, 1.08],
  [0, 1.1],
  [-5, 1.12],
  [-10, 1.14],
  [-15, 1.16],
  [-20, 1.18],
  [-25, 1.2],
  [-30, 1.21],
  [-35, 1.23],
  [-40, 1.25],
];

/** NEC 250.122: rating of the device up to, A, and copper equipment grounding conductor. */
export const NEC_250_122_COPPER: readonly (readonly [upToA: number, awg: string])[] = [
  [15, '14'],
  [20, '12'],
  [60, '10'],
  [100, '8'],
  [200, '6'],
  [300, '4'],
  [400, '3'],
];
