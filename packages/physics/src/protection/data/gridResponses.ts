/** A response curve: straight between its points, flat beyond them. */
export interface ResponsePoints {
  readonly at: readonly number[];
  readonly percent: readonly number[];
}

export interface GridResponse {
  /** Volts, or per unit of nominal, on the axis of both curves. */
  readonly axis: 'V' | 'pu';
  /** % of rated VA; positive supplies reactive power, negative absorbs. */
  readonly voltVar: ResponsePoints;
  /** Largest active power, % of rated. Left out: no such curve by default. */
  readonly voltWatt?: ResponsePoints;
}

/**
 * Default volt-var and volt-watt responses.
 * AS/NZS 4777.2:2020: all four read in a public text. IEEE 1547-2018: volt-var and volt-watt points read in a
 * public text; volt-watt is off by default there.
 */
export const GRID_RESPONSES = {
  'Australia A': {
    axis: 'V',
    voltVar: { at: [207, 220, 240, 258], percent: [44, 0, 0, -60] },
    voltWatt: { at: [253, 260], percent: [100, 20] },
  },
  'Australia B': {
    axis: 'V',
    voltVar: { at: [205, 220, 235, 255], percent: [30, 0, 0, -40] },
    voltWatt: { at: [250, 260], percent: [100, 20] },
  },
  'Australia C': {
    axis: 'V',
    voltVar: { at: [215, 230, 240, 255], percent: [44, 0, 0, -60] },
    voltWatt: { at: [253, 260], percent: [100, 20] },
  },
  'New Zealand': {
    axis: 'V',
    voltVar: { at: [207, 220, 235, 244], percent: [60, 0, 0, -60] },
    voltWatt: { at: [242, 250], percent: [100, 20] },
  },
  'IEEE 1547 A': {
    axis: 'pu',
    voltVar: { at: [0.9, 1.0, 1.0, 1.1], percent: [25, 0, 0, -25] },
    voltWatt: { at: [1.06, 1.1], percent: [100, 20] },
  },
  'IEEE 1547 B': {
    axis: 'pu',
    voltVar: { at: [0.92, 0.98, 1.02, 1.08], percent: [44, 0, 0, -44] },
    voltWatt: { at: [1.06, 1.1], percent: [100, 20] },
  },
} as const satisfies Record<string, GridResponse>;

export type GridRegion = keyof typeof GRID_RESPONSES;

/**
 * Fall of power with rising frequency: from where, Hz, and % of rated lost per Hz.
 * AU/NZ falls to nothing at 52 Hz; the EU figure is VDE-AR-N 4105; GB is 10 % droop, US 5 % droop. From memory.
 */
export const FREQUENCY_RESPONSES = {
  'AU/NZ': { fromHz: 50.25, percentPerHz: 100 / 1.75 },
  EU: { fromHz: 50.2, percentPerHz: 40 },
  GB: { fromHz: 50.4, percentPerHz: 100 / (50 * 0.1) },
  US: { fromHz: 60.036, percentPerHz: 100 / (60 * 0.05) },
} as const;
