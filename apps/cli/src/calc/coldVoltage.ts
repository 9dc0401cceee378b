import { coldVoltage } from '@eaveline/physics';
import { z } from 'zod';
import { defineCalc } from './calc.ts';
import { fig, num, optionalNum, yes } from './fields.ts';

export const coldVoltageCalc = defineCalc({
  name: 'cold-voltage',
  line: 'highest direct voltage at an inverter’s input on the coldest morning',
  source: 'NEC Table 690.7(A), or the coefficient of the module’s sheet; AS/NZS 5033:2021 clause 5.4 for 120 V',
  input: z.object({
    vocStcV: num('V', 'open circuit at 25 °C'),
    lowestTemperatureC: num('°C', 'record low of the place'),
    inverterMaxDcV: num('V', 'limit of the input'),
    betaPercentPerK: optionalNum('%/K', 'of Voc, negative; left out: the table'),
    modulesInSeries: optionalNum('1', 'default 1'),
  }),
  output: z.object({
    factor: num('1', 'what Voc is multiplied by'),
    maxVoltageV: num('V', 'highest'),
    withinInverterLimit: yes('highest ≤ limit'),
    marginPercent: num('%', 'of the limit left; negative when over it'),
    above120VDc: yes('above the edge of the simpler case'),
  }),
  example: { vocStcV: 49.8, lowestTemperatureC: -18, inverterMaxDcV: 60 },
  run: (row) => coldVoltage(row),
  working: (row, r) => [
    row.betaPercentPerK === undefined
      ? `factor of the table at ${fig(row.lowestTemperatureC)} °C: ${fig(r.factor)}`
      : `factor = 1 + β (Tmin − 25)/100 = 1 + ${fig(row.betaPercentPerK)} · (${fig(row.lowestTemperatureC)} − 25)/100 = ${fig(r.factor)}`,
    `V = n·Voc·factor = ${row.modulesInSeries ?? 1} · ${fig(row.vocStcV)} · ${fig(r.factor)} = ${fig(r.maxVoltageV)} V of ${fig(row.inverterMaxDcV)} V`,
  ],
});
