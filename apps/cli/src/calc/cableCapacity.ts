import { iecCableCapacity, necCableCapacity, smallestCable } from '@eaveline/physics';
import { z } from 'zod';
import { defineCalc } from './calc.ts';
import { choice, fig, num, numOrNull, optionalNum, text, yes } from './fields.ts';

const lying = {
  insulation: choice(['PVC', 'XLPE'], '70 or 90 °C'),
  loadedConductors: z.union([z.literal(2), z.literal(3)]).meta({ description: 'conductors that carry current' }),
  method: choice(['A1', 'A2', 'B1', 'B2', 'C', 'D1', 'E'], 'installation method'),
  ambientC: num('°C', 'air round the cable; for D1 the ground'),
  grouping: choice(
    ['bunched_or_enclosed', 'single_layer_wall_floor_or_unperforated_tray', 'single_layer_perforated_tray'],
    'how circuits lie together; default bunched_or_enclosed',
  ).exactOptional(),
  circuits: optionalNum('1', 'circuits together, this one counted; default 1'),
  insulationLengthMm: optionalNum('mm', 'length inside thermal insulation; default 0'),
};
const column = (what: string) =>
  z.union([z.literal(60), z.literal(75), z.literal(90)]).meta({ unit: '°C', description: what });

/** The clauses after the name of a standard are words for the reader. */
const named = (standard: string) =>
  z
    .string()
    .startsWith(standard)
    .meta({ description: `begins with ${standard}` });

const iec = z.object({
  standard: named('IEC 60364-5-52'),
  conductor: z.literal('copper'),
  sizeMm2: num('mm²', 'a standard size'),
  ...lying,
});
const nec = z.object({
  standard: named('NEC'),
  conductor: z.literal('copper'),
  awg: text('14 to 1, 1/0 to 4/0 or 250 kcmil'),
  insulationColumnC: column('column of the insulation'),
  ambientC: num('°C', 'air; the rooftop adder is put on top'),
  currentCarryingConductors: num('1', 'in the raceway or cable'),
  terminalColumnC: column('column of the coolest terminal'),
  roofGapMm: optionalNum('mm', 'gap to a sunlit roof; left out: not on one'),
  roofGapLimitMm: optionalNum('mm', 'gap below which the adder counts; default 19'),
});
const output = z.union([
  z.object({
    tabulatedA: num('A', 'from the table'),
    ambientFactor: num('1', 'for the air'),
    groupingFactor: num('1', 'for circuits together'),
    insulationFactor: num('1', 'for a length inside insulation'),
    capacityA: num('A', 'what the cable carries where it lies'),
  }),
  z.object({
    tableA: num('A', 'column of the insulation'),
    adjustedAmbientC: num('°C', 'with the rooftop adder'),
    ambientFactor: num('1', 'for the air'),
    adjustmentFactor: num('1', 'for more than three conductors'),
    correctedA: num('A', 'after both factors'),
    terminalLimitA: num('A', 'column of the terminal'),
    usableA: num('A', 'the lesser of the two'),
  }),
]);

export const cableCapacityCalc = defineCalc({
  name: 'cable-capacity',
  line: 'current a copper cable carries where it lies',
  source: 'IEC 60364-5-52:2009 Annex B; BS 7671 Table 52.2 (from memory); NEC 2023 310.15, 310.16, 110.14(C)',
  input: z.union([iec, nec]),
  output,
  example: {
    standard: 'IEC 60364-5-52',
    conductor: 'copper',
    insulation: 'PVC',
    loadedConductors: 2,
    method: 'C',
    sizeMm2: 4,
    ambientC: 40,
  },
  run: (row) => ('awg' in row ? necCableCapacity(row) : iecCableCapacity(row)),
  working: (_, r) =>
    'capacityA' in r
      ? [
          'Iz = table · ambient · grouping · insulation',
          `${fig(r.tabulatedA)} · ${fig(r.ambientFactor)} · ${fig(r.groupingFactor)} · ${fig(r.insulationFactor)} = ${fig(r.capacityA)} A`,
        ]
      : [
          `corrected = table · ambient · count = ${fig(r.tableA)} · ${fig(r.ambientFactor)} · ${fig(r.adjustmentFactor)} = ${fig(r.correctedA)} A (air ${fig(r.adjustedAmbientC)} °C)`,
          `usable = min(corrected, terminal ${fig(r.terminalLimitA)} A) = ${fig(r.usableA)} A`,
        ],
});

const choose = z.object({
  currentA: num('A', 'design current'),
  breakerA: num('A', 'rating of the device that protects the cable'),
  routeLengthM: num('m', 'one way'),
  limitPercent: num('%', 'largest drop or rise over this run'),
  ...lying,
  nominalV: num('V', 'line to neutral for one phase, line to line for three'),
  phases: z.union([z.literal(1), z.literal(3)]).meta({ description: 'lines' }),
  conductorTemperatureC: optionalNum('°C', 'for the volts; default the limit of the insulation'),
  class: z
    .union([z.literal(1), z.literal(2), z.literal(5)])
    .exactOptional()
    .meta({ description: 'default 2' }),
  sizesMm2: z.array(z.number()).exactOptional().meta({ unit: 'mm²', description: 'sizes on the van; default all' }),
});
const chosen = z.object({
  candidates: z.array(
    z.object({
      sizeMm2: num('mm²', 'size'),
      izA: num('A', 'capacity'),
      dropOrRiseV: num('V', 'over the run'),
      percent: num('%', 'of nominal'),
      accepted: yes('passes both'),
      failed: z.array(z.enum(['capacity', 'volts'])).meta({ description: 'why not' }),
    }),
  ),
  chooseMm2: numOrNull('mm²', 'the first that passes; null when none does'),
  breakerCoversCurrent: yes('whether the device covers the current at all'),
});

export const smallestCableCalc = defineCalc({
  name: 'smallest-cable',
  line: 'the smallest copper cable that carries a breaker and keeps the volts, and why each smaller one fails',
  source: 'IEC 60364-5-52:2009 Annex B and G; IEC 60228:2004',
  input: choose,
  output: chosen,
  example: {
    currentA: 20,
    breakerA: 20,
    routeLengthM: 25,
    limitPercent: 2,
    insulation: 'PVC',
    loadedConductors: 2,
    method: 'C',
    ambientC: 30,
    nominalV: 230,
    phases: 1,
  },
  run(row) {
    const { candidates, chooseMm2 = null, breakerCoversCurrent } = smallestCable(row);
    return { candidates: candidates.map((c) => ({ ...c, failed: [...c.failed] })), chooseMm2, breakerCoversCurrent };
  },
  working: (row, r) => [
    `wanted: Iz ≥ ${fig(row.breakerA)} A and ${row.phases === 1 ? '2' : '√3'}·I·L·r(T) ≤ ${fig(row.limitPercent)} % of ${fig(row.nominalV)} V`,
    ...r.candidates.map(
      (c) =>
        `${fig(c.sizeMm2)} mm²: ${fig(c.izA)} A, ${fig(c.dropOrRiseV)} V = ${fig(c.percent)} %: ${c.accepted ? 'passes' : `fails in ${c.failed.join(' and ')}`}`,
    ),
  ],
});
