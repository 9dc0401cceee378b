import type { CableSheet } from '../schema/sheets.ts';

/** Protective conductor laid up with a line of this size, mm². Invented, and not below what IEC 60364-5-54 asks by table. */
const EARTH_MM2: Record<number, number> = { 2.5: 2.5, 4: 4, 6: 6, 10: 10, 16: 16, 25: 16, 35: 16, 50: 25 };
const EARTH_AWG: Record<string, string> = {
  '12': '12',
  '10': '10',
  '8': '10',
  '6': '10',
  '4': '8',
  '2': '8',
  '3/0': '6',
};

function metric(areaMm2: number, cores: number, outsideMm: number): CableSheet {
  return {
    kind: 'cable',
    invented: true,
    name: `${areaMm2} mm² ${cores === 3 ? 'line, neutral, earth' : 'three lines, neutral, earth'}`,
    conductor: { material: 'copper', areaMm2, strandClass: 2 },
    earthMm2: EARTH_MM2[areaMm2] ?? areaMm2,
    cores,
    insulation: 'XLPE',
    insulationC: 90,
    sunlight: true,
    outsideMm,
  };
}

function american(awg: string, outsideMm: number): CableSheet {
  return {
    kind: 'cable',
    invented: true,
    name: `${awg} AWG in raceway, two lines, neutral, ground`,
    conductor: { material: 'copper', awg, strandClass: 2 },
    earthAwg: EARTH_AWG[awg] ?? awg,
    cores: 4,
    insulation: 'PVC',
    insulationC: 90,
    sunlight: true,
    outsideMm,
  };
}

/** Invented cables for home runs, batteries and sub-mains, by sheet id: size, then cores where it is three-phase. */
export const cableSheets = {
  'cable-2-5': metric(2.5, 3, 11),
  'cable-4': metric(4, 3, 12),
  'cable-6': metric(6, 3, 14),
  'cable-10': metric(10, 3, 17),
  'cable-16': metric(16, 3, 20),
  'cable-4x5': metric(4, 5, 15),
  'cable-6x5': metric(6, 5, 17),
  'cable-10x5': metric(10, 5, 21),
  'cable-16x5': metric(16, 5, 25),
  'cable-25x5': metric(25, 5, 30),
  'cable-35x5': metric(35, 5, 34),
  'cable-50x5': metric(50, 5, 39),
  'cable-12awg': american('12', 21),
  'cable-10awg': american('10', 21),
  'cable-8awg': american('8', 27),
  'cable-6awg': american('6', 27),
  'cable-4awg': american('4', 35),
} as const satisfies Record<string, CableSheet>;
