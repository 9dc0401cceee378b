import {
  cellTemperatureFaiman2008,
  cellTemperatureNoct,
  cellTemperatureNoctBalance,
  cellTemperatureRoss1980,
  cellTemperatureSandia2004,
} from '@eaveline/physics';
import { z } from 'zod';
import { defineCalc } from './calc.ts';
import { fig, num, optionalNum } from './fields.ts';

const light = { poa: num('W/m²', 'irradiance on the plane'), airC: num('°C', 'air temperature') };
const windMS = num('m/s', 'wind as the model wants it');
const noctC = num('°C', 'nominal operating cell temperature of the sheet');
const input = z.discriminatedUnion('model', [
  z.object({
    model: z.literal('faiman'),
    ...light,
    windMS,
    u0: optionalNum('W/m²K', 'loss without wind; default 25'),
    u1: optionalNum('W/m²K per m/s', 'loss by wind; default 6.84'),
  }),
  z.object({ model: z.literal('noct_linear'), ...light, noctC }),
  z.object({ model: z.literal('ross_k'), ...light, kKM2PerW: num('K·m²/W', 'rise per light') }),
  z.object({
    model: z.literal('noct_energy_balance'),
    ...light,
    windMS,
    noctC,
    moduleEfficiency: num('1', 'share of the light that leaves as electricity'),
    tauAlpha: optionalNum('1', 'transmittance × absorptance; default 0.9'),
  }),
  z.object({
    model: z.literal('sandia'),
    ...light,
    windMS,
    a: num('1', 'of the mounting'),
    b: num('s/m', 'of the mounting'),
    deltaTC: num('K', 'cell above back at 1000 W/m²'),
  }),
]);
const tempC = num('°C', 'cell temperature (faiman: module)');
const output = z.union([z.object({ tempC, moduleBackC: num('°C', 'back of the module') }), z.object({ tempC })]);
type Row = z.output<typeof input>;

function sum(row: Row): string {
  const [air, poa] = [fig(row.airC), fig(row.poa)];
  switch (row.model) {
    case 'faiman':
      return `air + poa/(u0 + u1·wind) = ${air} + ${poa}/(${fig(row.u0 ?? 25)} + ${fig(row.u1 ?? 6.84)}·${fig(row.windMS)})`;
    case 'noct_linear':
      return `air + (noct − 20)/800 · poa = ${air} + (${fig(row.noctC)} − 20)/800 · ${poa}`;
    case 'ross_k':
      return `air + k·poa = ${air} + ${fig(row.kKM2PerW)}·${poa}`;
    case 'noct_energy_balance':
      return `air + poa/800 · (noct − 20)(1 − η/τα) · 9.5/(5.7 + 3.8·wind) = ${air} + ${poa}/800 · (${fig(row.noctC)} − 20)(1 − ${fig(row.moduleEfficiency)}/${fig(row.tauAlpha ?? 0.9)}) · 9.5/(5.7 + 3.8·${fig(row.windMS)})`;
    case 'sandia':
      return `back = air + poa·exp(a + b·wind) = ${air} + ${poa}·exp(${fig(row.a)} + ${fig(row.b)}·${fig(row.windMS)}); cell = back + poa/1000 · ${fig(row.deltaTC)}`;
  }
}

export const cellTemperatureCalc = defineCalc({
  name: 'cell-temperature',
  line: 'how warm a cell gets; five models',
  source:
    'Faiman 2008; NOCT rule after Ross 1980; Ross 1980; Duffie and Beckman; King, Boyson and Kratochvil 2004 (SAND2004-3535)',
  input,
  output,
  example: { model: 'faiman', poa: 800, airC: 20, windMS: 1 },
  run(row) {
    switch (row.model) {
      case 'faiman':
        return { tempC: cellTemperatureFaiman2008(row) };
      case 'noct_linear':
        return { tempC: cellTemperatureNoct(row) };
      case 'ross_k':
        return { tempC: cellTemperatureRoss1980(row) };
      case 'noct_energy_balance':
        return { tempC: cellTemperatureNoctBalance(row) };
      case 'sandia': {
        const { cellC, moduleBackC } = cellTemperatureSandia2004(row);
        return { tempC: cellC, moduleBackC };
      }
    }
  },
  working: (row, r) => [sum(row), `cell = ${fig(r.tempC)} °C`],
});
