import { conductorResistance } from '@eaveline/physics';
import { z } from 'zod';
import { defineCalc } from './calc.ts';
import { choice, fig, num, optionalNum, text } from './fields.ts';

const run = {
  conductorTemperatureC: num('°C', 'of the metal'),
  routeLengthM: num('m', 'one way'),
  conductorsInSeries: optionalNum('1', '2 for out and back; default 1'),
};
const material = choice(['copper', 'aluminium'], 'metal');
const input = z.discriminatedUnion('standard', [
  z.object({
    standard: z.literal('IEC 60228'),
    class: z.union([z.literal(1), z.literal(2), z.literal(5)]).meta({ description: '1 solid, 2 stranded, 5 flexible' }),
    material,
    coated: z.boolean().exactOptional().meta({ description: 'tinned strands; default false' }),
    sizeMm2: num('mm²', 'a standard size'),
    ...run,
  }),
  z.object({
    standard: z.literal('NEC'),
    material,
    awg: text('14 to 1, 1/0 to 4/0 or 250 kcmil'),
    stranding: choice(['solid', 'stranded'], 'default stranded').exactOptional(),
    conduit: choice(['none', 'pvc', 'aluminium', 'steel'], 'none: Table 8, d.c.; else Table 9, 60 Hz').exactOptional(),
    ...run,
  }),
]);
const output = z.object({
  ohmPerKmAtTemperature: num('Ω/km', 'one conductor at its temperature'),
  resistanceOhm: num('Ω', 'over the route and its conductors in series'),
});

export const conductorResistanceCalc = defineCalc({
  name: 'conductor-resistance',
  line: 'resistance of a standard conductor, warm, over a route',
  source:
    'IEC 60228:2004 Tables 1 to 3; NEC 2023 Chapter 9 Tables 8 and 9; coefficients 0.00393 copper, 0.00403 aluminium',
  input,
  output,
  example: {
    standard: 'IEC 60228',
    class: 2,
    material: 'copper',
    sizeMm2: 2.5,
    conductorTemperatureC: 70,
    routeLengthM: 25,
    conductorsInSeries: 2,
  },
  run: (row) => conductorResistance(row),
  working(row, r) {
    const at = row.standard === 'NEC' ? `R(T) = R75 (1 + a (T − 75))` : `R(T) = R20 (1 + α (T − 20))`;
    return [
      `${at} at ${fig(row.conductorTemperatureC)} °C: ${fig(r.ohmPerKmAtTemperature)} Ω/km`,
      `R = ${fig(r.ohmPerKmAtTemperature)} · ${fig(row.routeLengthM)}/1000 · ${row.conductorsInSeries ?? 1} = ${fig(r.resistanceOhm)} Ω`,
    ];
  },
});
