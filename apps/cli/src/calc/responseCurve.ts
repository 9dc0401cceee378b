import { gridResponse, responseAt } from '@eaveline/physics';
import { z } from 'zod';
import { defineCalc } from './calc.ts';
import { choice, fig, num } from './fields.ts';

const input = z.union([
  z.object({
    region: choice(['Australia A', 'Australia B', 'Australia C', 'New Zealand'], 'region of AS/NZS 4777.2'),
    terminalV: num('V', 'at the terminals of the inverter'),
  }),
  z.object({
    region: choice(['IEEE 1547 A', 'IEEE 1547 B'], 'category of IEEE 1547'),
    terminalPu: num('1', 'volts per unit of nominal'),
  }),
]);

export const responseCurveCalc = defineCalc({
  name: 'response-curve',
  line: 'what an inverter does at a voltage by its volt-var and volt-watt curves',
  source: 'AS/NZS 4777.2:2020; IEEE 1547-2018 (volt-watt is off there unless the network asks)',
  input,
  output: z.object({
    reactivePercentOfRatedVa: num('%', 'positive supplies, negative absorbs'),
    maxPowerPercentOfRated: num('%', 'largest active power'),
  }),
  example: { region: 'Australia A', terminalV: 256 },
  names: { terminal: 'terminalV' },
  run: (row) => responseAt(row.region, 'terminalV' in row ? row.terminalV : row.terminalPu),
  working(row, r) {
    const { voltVar, voltWatt, axis } = gridResponse(row.region);
    const points = (c: { at: readonly number[]; percent: readonly number[] }) =>
      c.at.map((x, i) => `${x} ${axis} ${c.percent[i]} %`).join(', ');
    return [
      `volt-var: ${points(voltVar)}: ${fig(r.reactivePercentOfRatedVa)} %`,
      voltWatt ? `volt-watt: ${points(voltWatt)}: ${fig(r.maxPowerPercentOfRated)} %` : 'no volt-watt curve by default',
    ];
  },
});
