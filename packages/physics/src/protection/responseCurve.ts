import { Refusal, within } from '../refusal.ts';
import {
  FREQUENCY_RESPONSES,
  GRID_RESPONSES,
  type GridRegion,
  type GridResponse,
  type ResponsePoints,
} from './data/gridResponses.ts';

/** Straight between the points, flat beyond them. */
export function onCurve({ at, percent }: ResponsePoints, x: number): number {
  const last = at.length - 1;
  if (x <= at[0]) return percent[0];
  for (let i = 1; i <= last; i++) {
    if (x <= at[i]) {
      const share = (x - at[i - 1]) / (at[i] - at[i - 1]);
      return percent[i - 1] + share * (percent[i] - percent[i - 1]);
    }
  }
  return percent[last];
}

/** The default response of a region. */
export function gridResponse(region: GridRegion): GridResponse {
  const found = (GRID_RESPONSES as Record<string, GridResponse>)[region];
  if (!found) {
    throw new Refusal({
      code: 'unknown-name',
      at: 'region',
      got: region,
      want: Object.keys(GRID_RESPONSES).join(', '),
      mend: 'Take the region named in the network letter.',
    });
  }
  return found;
}

export interface ResponseAt {
  /** Positive supplies, negative absorbs. */
  readonly reactivePercentOfRatedVa: number;
  readonly maxPowerPercentOfRated: number;
}

/**
 * What an inverter does at a terminal voltage by its region's volt-var and volt-watt curves.
 *
 * @param terminal  V for AS/NZS 4777.2, per unit of nominal for IEEE 1547.
 *
 * Both at once may ask for more than the rated VA; which yields is the region's priority (reactive first in
 * AS/NZS 4777.2:2020, from memory) and is not decided here. IEEE 1547 volt-watt is off unless the network asks.
 *
 * Source: AS/NZS 4777.2:2020; IEEE 1547-2018.
 */
export function responseAt(region: GridRegion, terminal: number): ResponseAt {
  const { axis, voltVar, voltWatt } = gridResponse(region);
  const most = axis === 'pu' ? 2 : 1000;
  within(terminal, 0, most, 'terminal', axis === 'pu' ? 'Give volts per unit of nominal.' : 'Give volts.');
  return {
    reactivePercentOfRatedVa: onCurve(voltVar, terminal),
    maxPowerPercentOfRated: voltWatt ? onCurve(voltWatt, terminal) : 100,
  };
}

/** Largest power at a frequency above normal, % of rated; how an island tells the units to hold back. */
export function powerAtFrequencyPercent(region: keyof typeof FREQUENCY_RESPONSES, hz: number): number {
  within(hz, 40, 70, 'hz', 'Give the frequency in Hz.');
  const { fromHz, percentPerHz } = FREQUENCY_RESPONSES[region];
  return Math.min(100, Math.max(0, 100 - percentPerHz * (hz - fromHz)));
}
