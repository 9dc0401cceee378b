import type { TrunkCableSheet } from '../schema/sheets.ts';

/**
 * One Bramble trunk cable: three drop pitches, each for one line, line to line, or three lines.
 * One and three lines are 2.5 mm² tinned copper for 230/400 V; line to line is 12 AWG for 240 V.
 */
function bramble(dropPitchMm: number, lines: 1 | 2 | 3): TrunkCableSheet {
  const way = lines === 1 ? 'one line' : lines === 2 ? 'line to line' : 'three lines';
  return {
    kind: 'trunk-cable',
    invented: true,
    name: `Bramble ${(dropPitchMm / 1000).toFixed(2)} m, ${way}`,
    dropPitchMm,
    lines,
    conductor:
      lines === 2
        ? { material: 'copper', awg: '12', strandClass: 5 }
        : { material: 'copper', areaMm2: 2.5, strandClass: 5 },
    insulationC: 90,
    ratedA: 20,
    ratedV: lines === 3 ? 1000 : 600,
  };
}

/** Invented trunk cables, by sheet id: pitch in centimetres, then lines. */
export const trunkCableSheets = {
  'bramble-120-1': bramble(1200, 1),
  'bramble-120-2': bramble(1200, 2),
  'bramble-120-3': bramble(1200, 3),
  'bramble-135-1': bramble(1350, 1),
  'bramble-135-2': bramble(1350, 2),
  'bramble-135-3': bramble(1350, 3),
  'bramble-185-1': bramble(1850, 1),
  'bramble-185-2': bramble(1850, 2),
  'bramble-185-3': bramble(1850, 3),
} as const satisfies Record<string, TrunkCableSheet>;
