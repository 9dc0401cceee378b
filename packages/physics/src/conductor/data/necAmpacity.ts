import type { TableSource } from '../tableSource.ts';
import type { AwgSize } from './necChapter9.ts';

/** NEC 310.16, copper, ambient 30 °C, up to three current-carrying conductors, A: size, 60, 75, 90 °C columns. */
export const NEC_310_16: readonly (readonly [AwgSize, number, number, number])[] = [
  ['14', 15, 20, 25],
  ['12', 20, 25, 30],
  ['10', 30, 35, 40],
  ['8', 40, 50, 55],
  ['6', 55, 65, 75],
  ['4', 70, 85, 95],
  ['3', 85, 100, 115],
  ['2', 95, 115, 130],
  ['1', 110, 130, 145],
  ['1/0', 125, 150, 170],
  ['2/0', 145, 175, 195],
  ['3/0', 165, 200, 225],
  ['4/0', 195, 230, 260],
  ['250 kcmil', 215, 255, 290],
];

/** NEC 310.15(B)(1)(1): top of the ambient band, °C; factors for 60, 75, 90 °C insulation. */
export const NEC_AMBIENT_FACTOR: readonly (readonly [number, number | undefined, number | undefined, number])[] = [
  [10, 1.29, 1.2, 1.15],
  [15, 1.22, 1.15, 1.12],
  [20, 1.15, 1.11, 1.08],
  [25, 1.08, 1.05, 1.04],
  [30, 1.0, 1.0, 1.0],
  [35, 0.91, 0.94, 0.96],
  [40, 0.82, 0.88, 0.91],
  [45, 0.71, 0.82, 0.87],
  [50, 0.58, 0.75, 0.82],
  [55, 0.41, 0.67, 0.76],
  [60, undefined, 0.58, 0.71],
  [65, undefined, 0.47, 0.65],
  [70, undefined, 0.33, 0.58],
  [75, undefined, undefined, 0.5],
  [80, undefined, undefined, 0.41],
  [85, undefined, undefined, 0.29],
];

/** NEC 310.15(C)(1): most current-carrying conductors of the band, and factor. */
export const NEC_CONDUCTOR_COUNT_FACTOR = [
  [3, 1],
  [6, 0.8],
  [9, 0.7],
  [20, 0.5],
  [30, 0.45],
  [40, 0.4],
  [Number.POSITIVE_INFINITY, 0.35],
] as const;

/** NEC 240.4(D): largest overcurrent device of the small copper sizes, A. From memory. */
export const NEC_SMALL_CONDUCTOR_MAX_A: Partial<Record<AwgSize, number>> = { '14': 15, '12': 20, '10': 30 };

export const NEC_AMPACITY_SOURCE: TableSource = {
  text: 'NFPA 70 (NEC) 2023: Table 310.16, Table 310.15(B)(1)(1), Table 310.15(C)(1), 310.15(B)(2), 110.14(C)(1)',
  seen: 'public text',
};
