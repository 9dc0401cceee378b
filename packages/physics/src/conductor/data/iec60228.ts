import type { TableSource } from '../tableSource.ts';

/** Conductor sizes of the resistance columns below, mm². */
export const IEC_60228_SIZES_MM2 = [0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120, 150, 185] as const;

/** IEC 60228:2004 Tables 1, 2 and 3: largest d.c. resistance at 20 °C, Ω/km, in the order of the sizes. */
export const IEC_60228_OHM_PER_KM_20C = {
  class1CopperPlain: [
    24.5, 18.1, 12.1, 7.41, 4.61, 3.08, 1.83, 1.15, 0.727, 0.524, 0.387, 0.268, 0.193, 0.153, 0.124, 0.101,
  ],
  class2CopperPlain: [
    24.5, 18.1, 12.1, 7.41, 4.61, 3.08, 1.83, 1.15, 0.727, 0.524, 0.387, 0.268, 0.193, 0.153, 0.124, 0.0991,
  ],
  class2CopperCoated: [
    24.8, 18.2, 12.2, 7.56, 4.7, 3.11, 1.84, 1.16, 0.734, 0.529, 0.391, 0.27, 0.195, 0.154, 0.126, 0.1,
  ],
  class5CopperPlain: [
    26.0, 19.5, 13.3, 7.98, 4.95, 3.3, 1.91, 1.21, 0.78, 0.554, 0.386, 0.272, 0.206, 0.161, 0.129, 0.106,
  ],
  class5CopperCoated: [
    26.7, 20.0, 13.7, 8.21, 5.09, 3.39, 1.95, 1.24, 0.795, 0.565, 0.393, 0.277, 0.21, 0.164, 0.132, 0.108,
  ],
  class1And2Aluminium: [
    undefined,
    undefined,
    undefined,
    undefined,
    undefined,
    undefined,
    3.08,
    1.91,
    1.2,
    0.868,
    0.641,
    0.443,
    0.32,
    0.253,
    0.206,
    0.164,
  ],
} as const satisfies Record<string, readonly (number | undefined)[]>;

export const IEC_60228_SOURCE: TableSource = {
  text: 'IEC 60228:2004, Tables 1, 2 and 3: maximum d.c. resistance at 20 °C. No class 5 aluminium in this edition.',
  seen: 'public text',
};

/** Change of resistance with temperature, per K, referred to 20 °C. IEC 60287-1-1, from memory. */
export const ALPHA_20_PER_K = { copper: 0.00393, aluminium: 0.00403 } as const;

/** Conductor limit of the insulation, °C. From memory. */
export const INSULATION_LIMIT_C = { PVC: 70, 'V-75': 75, XLPE: 90 } as const;
