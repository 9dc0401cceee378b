import {
  continuityTest,
  earthContinuityTest,
  insulationTest,
  loopTest,
  pvInsulationTest,
  rcdTest,
} from '@eaveline/physics';
import { z } from 'zod';
import { defineCalc } from './calc.ts';
import { choice, fig, num, optionalNum, text } from './fields.ts';

const readingMohm = num('MΩ', 'reading');
const testVoltageV = num('V', 'test voltage');
const readingOhm = num('Ω', 'reading, leads subtracted');
const input = z.discriminatedUnion('test', [
  z.object({
    test: z.literal('insulation'),
    circuit: text('SELV, PELV or the nominal voltage such as 230 V'),
    testVoltageV,
    surgeDevicesDisconnected: z.boolean().exactOptional().meta({ description: 'default true' }),
    readingMohm,
  }),
  z.object({
    test: z.literal('pv-insulation'),
    vocStcV: num('V', 'open circuit of one module at 25 °C'),
    modulesInSeries: num('1', 'of one string'),
    testVoltageV,
    readingMohm,
  }),
  z.object({
    test: z.literal('rcd'),
    rcd: choice(['general', 'selective_S'], 'type'),
    multipleOfRated: num('1', '0.5, 1, 2 or 5 times the rated residual current'),
    tripMs: z.number().nullable().exactOptional().meta({ unit: 'ms', description: 'null: it did not trip' }),
  }),
  z.object({
    test: z.literal('earth-continuity'),
    readingOhm,
    maximumOhm: optionalNum('Ω', 'default 0.5'),
  }),
  z.object({
    test: z.literal('loop'),
    standard: choice(['BS 7671', 'AS/NZS 3000'], 'whose table'),
    breaker: text('curve and rating, such as C20'),
    readingOhm,
    measuredCold: z.boolean().exactOptional().meta({ description: 'default true' }),
  }),
  z.object({
    test: z.literal('continuity'),
    r1PlusR2MohmPerM20c: num('mΩ/m', 'line and protective conductor together at 20 °C'),
    lengthM: num('m', 'one way'),
    readingOhm,
    tolerancePercent: num('%', 'of the calculated value, either way'),
  }),
]);

const judged = choice(['pass', 'fail'], 'verdict');
const insulation = {
  requiredTestVoltageV: num('V', 'lowest test voltage that counts'),
  minimumMohm: num('MΩ', 'lowest reading that passes'),
  verdict: choice(['pass', 'fail', 'invalid test voltage'], 'verdict'),
};
const output = z.union([
  z.object({ systemVoltageV: num('V', '1.25 · Voc · n'), ...insulation }),
  z.object(insulation),
  z.object({
    limitMs: z
      .union([z.literal('no trip'), z.tuple([z.number(), z.number()])])
      .meta({ unit: 'ms', description: 'band the trip has to lie in' }),
    verdict: judged,
  }),
  z.object({ maximumOhm: num('Ω', 'limit'), verdict: judged }),
  z.object({
    tableOhm: num('Ω', 'of the breaker'),
    compareWithOhm: num('Ω', 'limit for this reading'),
    verdict: judged,
  }),
  z.object({ calculatedOhm: num('Ω', 'by length and size'), verdict: judged }),
]);
type Row = z.output<typeof input>;

function run(row: Row): z.input<typeof output> {
  switch (row.test) {
    case 'insulation':
      return insulationTest(row);
    case 'pv-insulation':
      return pvInsulationTest(row);
    case 'rcd': {
      const { limitMs, verdict } = rcdTest(row);
      return { limitMs: limitMs === 'no trip' ? limitMs : [limitMs[0], limitMs[1]], verdict };
    }
    case 'earth-continuity':
      return earthContinuityTest(row);
    case 'loop':
      return loopTest(row);
    case 'continuity':
      return continuityTest(row);
  }
}

function against(row: Row, r: z.input<typeof output>): string {
  if ('minimumMohm' in r && 'readingMohm' in row)
    return `at ${fig(row.testVoltageV)} V (at least ${fig(r.requiredTestVoltageV)} V): ${fig(row.readingMohm)} MΩ against at least ${fig(r.minimumMohm)} MΩ`;
  if ('limitMs' in r && 'tripMs' in row)
    return `${row.tripMs === null || row.tripMs === undefined ? 'no trip' : `${fig(row.tripMs)} ms`} against ${r.limitMs === 'no trip' ? 'no trip' : `${r.limitMs.join(' to ')} ms`}`;
  const limit =
    'maximumOhm' in r
      ? `at most ${fig(r.maximumOhm)} Ω`
      : 'compareWithOhm' in r
        ? `at most ${fig(r.compareWithOhm)} Ω; table ${fig(r.tableOhm)} Ω, hot`
        : 'calculatedOhm' in r
          ? `calculated ${fig(r.calculatedOhm)} Ω`
          : 'no trip';
  return 'readingOhm' in row ? `${fig(row.readingOhm)} Ω against ${limit}` : `no trip recorded against ${limit}`;
}

export const testLimitCalc = defineCalc({
  name: 'test-limit',
  line: 'a reading of a commissioning test against its limit; `test` says which of six',
  source: 'IEC 60364-6:2016, IEC 62446-1, IEC 61008-1, BS 7671, AS/NZS 3000 (parts from memory; see the physics)',
  input,
  output,
  example: { test: 'insulation', circuit: '230 V', testVoltageV: 500, readingMohm: 240 },
  nullMeans: ['tripMs'],
  run,
  working: (row, r) => [`${against(row, r)}: ${r.verdict}`],
});
