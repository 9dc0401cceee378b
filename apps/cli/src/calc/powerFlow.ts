import { powerFlow } from '@eaveline/physics';
import { z } from 'zod';
import { defineCalc } from './calc.ts';
import { choice, complex, fig, num, optionalNum, text } from './fields.ts';

const conductor = z.enum(['A', 'B', 'C', 'N']);
const segment = z.object({
  id: text('name of the segment'),
  from: text('node'),
  to: text('node'),
  conductors: z.array(conductor).meta({ description: 'which run in it' }),
  lengthM: optionalNum('m', 'with ohms per kilometre'),
  rOhmPerKm: optionalNum('Ω/km', 'line conductor'),
  xOhmPerKm: optionalNum('Ω/km', 'line conductor'),
  neutralROhmPerKm: optionalNum('Ω/km', 'neutral'),
  neutralXOhmPerKm: optionalNum('Ω/km', 'neutral'),
  zPhaseOhm: complex('Ω', 'of each line, in place of length and ohms per kilometre').exactOptional(),
  zNeutralOhm: complex('Ω', 'of the neutral').exactOptional(),
});
const injection = z.object({
  node: text('where'),
  between: z.tuple([conductor, conductor]).meta({ description: 'the two conductors' }),
  kind: text('`module-inverter` counts for the highest rise').exactOptional(),
  pW: num('W', 'put in; negative is a load'),
  qVar: optionalNum('var', 'put in; negative absorbs'),
});
const input = z.object({
  system: choice(['single-phase', 'three-phase-4w', 'split-phase'], 'kind of supply'),
  nominalV: num('V', 'line to neutral'),
  sourceV: optionalNum('V', 'line to neutral at the source; default nominalV'),
  segments: z.array(segment),
  injections: z.array(injection),
  sourceNode: text('default SRC').exactOptional(),
  pointOfSupply: text('default POS').exactOptional(),
});

const byConductor = <T extends z.ZodType>(value: T) => z.partialRecord(conductor, value);
const byName = <T extends z.ZodType>(value: T, unit: string, what: string) =>
  z.record(z.string(), value).meta({ unit, description: what });
const terminal = {
  injection: num('1', 'position in the list, from 0'),
  terminalV: num('V', 'at its terminals'),
  risePercentOfSourceV: num('%', 'against the source voltage of the same pair'),
};
const output = z.object({
  nodeVoltageV: byName(byConductor(complex('V', '')), 'V', 'of each conductor at each node; real and imaginary part'),
  phaseToNeutralV: byName(byConductor(num('V', '')), 'V', 'line to neutral at each node'),
  neutralShiftV: byName(num('V', ''), 'V', 'of the neutral at each node'),
  segmentCurrentA: byName(
    byConductor(complex('A', '')),
    'A',
    'in each segment, positive from `from` to `to`; real and imaginary part',
  ),
  lossesW: num('W', 'in all segments'),
  reactiveLossesVar: num('var', 'in all segments'),
  sourcePW: num('W', 'delivered by the source; negative is export'),
  sourceQVar: num('var', 'delivered by the source'),
  terminals: z.array(z.object(terminal)),
  highestModuleInverter: z.object({ ...terminal, node: text('where') }).exactOptional(),
  highestRiseFromPointOfSupply: z
    .object({
      injection: terminal.injection,
      node: text('where'),
      percentOfNominal: num('%', 'against the same pair at the point of supply'),
    })
    .exactOptional(),
  rounds: num('1', 'sweeps it took'),
});

export const powerFlowCalc = defineCalc({
  name: 'power-flow',
  line: 'voltages and currents of a radial network with stated powers',
  source: 'backward and forward sweep at constant power; conductors without mutual coupling, neutral as a conductor',
  input,
  output,
  example: {
    system: 'single-phase',
    nominalV: 230,
    segments: [
      {
        id: 'S01',
        from: 'SRC',
        to: 'INV',
        lengthM: 0.5,
        conductors: ['A', 'N'],
        rOhmPerKm: 12.1,
        neutralROhmPerKm: 12.1,
      },
    ],
    injections: [{ node: 'INV', between: ['A', 'N'], kind: 'module-inverter', pW: 250 }],
  },
  run: (row) => structuredClone(powerFlow(row)) as z.input<typeof output>,
  working: (_, r) => [
    'i = conj(S/v) at each terminal; currents summed inward; v = v − z·i outward; again until the volts stand',
    `${r.rounds} sweeps; losses ${fig(r.lossesW)} W; the source gives ${fig(r.sourcePW)} W and ${fig(r.sourceQVar)} var`,
    ...(r.highestModuleInverter
      ? [`highest unit: ${fig(r.highestModuleInverter.terminalV)} V at ${r.highestModuleInverter.node}`]
      : []),
    ...(r.highestRiseFromPointOfSupply
      ? [
          `rise from the point of supply: ${fig(r.highestRiseFromPointOfSupply.percentOfNominal)} % at ${r.highestRiseFromPointOfSupply.node}`,
        ]
      : []),
  ],
});
