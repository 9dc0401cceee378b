import {
  distributedRise,
  fourWireChange,
  longestRoute,
  millivoltChange,
  oneSourceTerminalV,
  threePhaseChange,
  twoWireChange,
} from '@eaveline/physics';
import { z } from 'zod';
import { defineCalc } from './calc.ts';
import { fig, list, num, numOrNull, optionalNum } from './fields.ts';

const cable = {
  powerFactor: optionalNum('1', 'cos φ; default 1'),
  leading: z.boolean().exactOptional().meta({ description: 'current ahead of the voltage; default false' }),
  lengthM: num('m', 'one way'),
  rOhmPerKm: num('Ω/km', 'one conductor, warm'),
  xOhmPerKm: optionalNum('Ω/km', 'one conductor; default 0'),
};
const nominalV = num('V', 'nominal voltage');
const counts = z.union([z.number(), z.array(z.number())]);

const input = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('two-wire'), currentA: num('A', 'in the line'), ...cable, nominalV }),
  z.object({
    kind: z.literal('three-phase'),
    lineCurrentA: num('A', 'in each line'),
    ...cable,
    nominalLineV: num('V', 'line to line'),
  }),
  z.object({
    kind: z.literal('distributed'),
    moduleInverters: counts.meta({ description: 'units on the arm, or on each arm of a trunk fed between its ends' }),
    powerEachW: num('W', 'of one unit'),
    nominalV,
    homeRunM: num('m', 'board to joint'),
    homeRunROhmPerKm: num('Ω/km', 'one conductor, warm'),
    firstDropM: num('m', 'joint to the first drop'),
    pitchM: num('m', 'drop to drop'),
    trunkROhmPerKm: num('Ω/km', 'one conductor, warm'),
  }),
  z.object({
    kind: z.literal('four-wire'),
    phaseCurrentA: list('A', 'A, B, C; positive to a load, negative is export'),
    currentAngleToOwnPhaseVoltageDeg: list('°', 'of each current; default 0').exactOptional(),
    lengthM: num('m', 'one way'),
    rOhmPerKm: num('Ω/km', 'line conductor'),
    xOhmPerKm: optionalNum('Ω/km', 'default 0'),
    neutralROhmPerKm: num('Ω/km', 'neutral'),
    neutralXOhmPerKm: optionalNum('Ω/km', 'default 0'),
    sourcePhaseV: num('V', 'line to neutral at the source'),
  }),
  z.object({
    kind: z.literal('millivolt'),
    mvPerAM: num('mV/(A·m)', 'from the cable table'),
    currentA: num('A', 'in the line'),
    lengthM: num('m', 'one way'),
    nominalV: optionalNum('V', 'for the per cent'),
  }),
  z.object({
    kind: z.literal('longest-route'),
    ratedVa: num('VA', 'of the source'),
    nominalV,
    rOhmPerKm: num('Ω/km', 'one conductor, warm'),
    limitPercent: num('%', 'largest rise'),
  }),
  z.object({
    kind: z.literal('one-source'),
    sourceV: num('V', 'at the stiff end'),
    pW: num('W', 'put in'),
    qVar: optionalNum('var', 'put in; default 0'),
    loopROhm: num('Ω', 'out and back'),
    loopXOhm: optionalNum('Ω', 'out and back; default 0'),
  }),
]);

const phase = z.object({ loadEndPhaseToNeutralV: num('V', 'at the end'), dropV: num('V', 'negative is a rise') });
const output = z.union([
  z.object({ voltsLineToLine: num('V', 'line to line'), percent: num('%', 'of nominal') }),
  z.object({
    currentEachA: num('A', 'of one unit'),
    homeRunV: num('V', 'over the home run'),
    trunkV: num('V', 'over the longest arm'),
    totalRiseV: num('V', 'to the last unit'),
    totalRisePercent: num('%', 'of nominal'),
    profileAlongLongestArmV: list('V', 'rise at each drop, board outward'),
  }),
  z.object({
    neutralCurrentA: num('A', 'in the neutral'),
    neutralEndVoltageV: num('V', 'of the far neutral above the near one'),
    phases: z.object({ A: phase, B: phase, C: phase }),
  }),
  z.object({
    currentA: num('A', 'at rated power'),
    mvPerAM: num('mV/(A·m)', 'loop'),
    limitV: num('V', 'largest rise'),
    longestRouteM: num('m', 'one way'),
  }),
  z.object({ terminalV: num('V', 'at the source end'), rise: num('V', 'above the stiff end') }),
  z.object({ volts: num('V', 'drop or rise'), percent: numOrNull('%', 'of nominal; null without one') }),
]);

type Row = z.output<typeof input>;
type Result = z.input<typeof output>;

function run(row: Row): Result {
  switch (row.kind) {
    case 'two-wire':
      return twoWireChange(row);
    case 'three-phase':
      return threePhaseChange(row);
    case 'distributed': {
      const rise = distributedRise(row);
      return { ...rise, profileAlongLongestArmV: [...rise.profileAlongLongestArmV] };
    }
    case 'four-wire':
      return fourWireChange(row);
    case 'millivolt': {
      const { volts, percent = null } = millivoltChange(row);
      return { volts, percent };
    }
    case 'longest-route':
      return longestRoute(row);
    case 'one-source': {
      const terminalV = oneSourceTerminalV(row);
      return { terminalV, rise: terminalV - row.sourceV };
    }
  }
}

const FORMULA: Readonly<Record<Row['kind'], string>> = {
  'two-wire': 'ΔV = 2·I·L·(R cos φ + X sin φ)/1000',
  'three-phase': 'ΔV = √3·I·L·(R cos φ + X sin φ)/1000, line to line',
  distributed:
    'home run: N·I·z·L; arm of n drops: z·I·(n·first + pitch·n(n−1)/2); I = P/Vnominal, z the loop per metre',
  'four-wire': 'In = Ia + Ib + Ic (phasors); V′ = V − Z·I − Zn·In for each line',
  millivolt: 'ΔV = mV/(A·m) · I · L/1000',
  'longest-route': 'I = S/V; L = limit/(2·r·I)',
  'one-source': '|V|² = h + √(h² − |S|²|Z|²), h = V0²/2 + P·R + Q·X',
};

/** Every single figure of a result, as `name = value`. */
const figures = (result: object) =>
  Object.entries(result)
    .filter((entry): entry is [string, number] => typeof entry[1] === 'number')
    .map(([name, value]) => `${name} = ${fig(value)}`)
    .join(', ');

export const voltageChangeCalc = defineCalc({
  name: 'voltage-change',
  line: 'drop or rise over a run; `kind` says which of seven',
  source: 'IEC 60364-5-52:2009 Annex G (from memory); phasor sums by hand',
  input,
  output,
  example: { kind: 'two-wire', currentA: 20, lengthM: 25, rOhmPerKm: 8.86606, nominalV: 230 },
  run,
  working: (row, r) => [FORMULA[row.kind], figures(r)],
});
