import { continuousBreaker, necBranch, unitsPerBranch } from '@eaveline/physics';
import { z } from 'zod';
import { defineCalc } from './calc.ts';
import { choice, fig, num, numOrNull, optionalNum, text, yes } from './fields.ts';

const ratedCurrentEachA = num('A', 'rated output of one unit');

export const breakerCalc = defineCalc({
  name: 'breaker',
  line: 'the next standard device for a branch of units at continuous output',
  source: 'NEC 690.8(B), 690.9(B), 240.6(A); IEC 60898 ratings, the unit’s current taken as continuous',
  input: z.object({
    moduleInverters: num('1', 'units on the branch'),
    ratedCurrentEachA,
    ratingList: choice(['IEC 60898', 'NEC 240.6(A)'], 'list of standard ratings'),
    continuousFactor: optionalNum('1', 'default 1.25 by NEC, 1 by IEC'),
  }),
  output: z.object({
    branchCurrentA: num('A', 'all units together'),
    minimumOcpdA: num('A', 'times the factor'),
    nextStandardA: numOrNull('A', 'next standard rating; null above the list'),
  }),
  example: { moduleInverters: 16, ratedCurrentEachA: 1.21, ratingList: 'NEC 240.6(A)' },
  run(row) {
    const { nextStandardA = null, ...found } = continuousBreaker(row);
    return { ...found, nextStandardA };
  },
  working: (row, r) => [
    `I = n·i = ${fig(row.moduleInverters)} · ${fig(row.ratedCurrentEachA)} = ${fig(r.branchCurrentA)} A`,
    `device ≥ ${fig(r.minimumOcpdA / r.branchCurrentA)} · I = ${fig(r.minimumOcpdA)} A; next of ${row.ratingList}: ${r.nextStandardA ?? 'none'} A`,
  ],
});

export const unitsPerBranchCalc = defineCalc({
  name: 'units-per-branch',
  line: 'most units on a branch: by its device, its trunk and the maker’s sheet',
  source: 'NEC 690.8(B), 690.9(B): device over 1.25 over unit, rounded down',
  input: z.object({
    ocpdA: num('A', 'rating of the device'),
    ratedCurrentEachA,
    continuousFactor: optionalNum('1', 'default 1.25'),
    sheetMaximum: optionalNum('1', 'largest count on the maker’s sheet'),
    trunkRatingA: optionalNum('A', 'of the trunk cable and its connectors'),
  }),
  output: z.object({
    maximumCount: num('1', 'units'),
    boundBy: choice(['device', 'trunk', 'sheet'], 'what sets it'),
    loadShare: num('1', 'their current over the rating of the device'),
  }),
  example: { ocpdA: 20, ratedCurrentEachA: 1.21 },
  run: (row) => unitsPerBranch(row),
  working: (row, r) => [
    `device: ⌊${fig(row.ocpdA)}/${fig(row.continuousFactor ?? 1.25)}/${fig(row.ratedCurrentEachA)}⌋ = ${Math.floor(row.ocpdA / (row.continuousFactor ?? 1.25) / row.ratedCurrentEachA + 1e-9)}`,
    ...(row.trunkRatingA === undefined ? [] : [`trunk: ⌊${fig(row.trunkRatingA)}/${fig(row.ratedCurrentEachA)}⌋`]),
    ...(row.sheetMaximum === undefined ? [] : [`sheet: ${fig(row.sheetMaximum)}`]),
    `the least, ${r.maximumCount}, by the ${r.boundBy}; they load the device to ${fig(100 * r.loadShare)} %`,
  ],
});

const columnC = (what: string) =>
  z.union([z.literal(60), z.literal(75), z.literal(90)]).meta({ unit: '°C', description: what });

export const necBranchCalc = defineCalc({
  name: 'nec-branch',
  line: 'a branch of units by the NEC: device, terminals, conditions of use, small conductors, rise',
  source: 'NEC 2023 240.6(A), 240.4(D), 110.14(C), 310.15, 310.16, 690.8, 690.9; Chapter 9 Table 9',
  input: z.object({
    moduleInverters: num('1', 'units on the branch'),
    ratedCurrentEachA,
    awg: text('copper size'),
    insulationC: columnC('column of the insulation'),
    terminalC: columnC('column of the coolest terminal'),
    ambientC: num('°C', 'air'),
    currentCarryingConductors: num('1', 'in the raceway or cable'),
    roofGapMm: optionalNum('mm', 'gap to a sunlit roof; left out: not on one'),
    oneWayFt: num('ft', 'one way'),
    nominalV: num('V', 'line to line'),
    rOhmPerKft: num('Ω/1000 ft', 'of the conduit’s column in Chapter 9 Table 9'),
  }),
  output: z.object({
    branchCurrentA: num('A', 'all units together'),
    minimumOcpdA: num('A', '1.25 times it'),
    ocpdA: numOrNull('A', 'next standard rating'),
    terminalColumnA: num('A', 'what the terminal allows'),
    terminalOk: yes('terminal column ≥ 1.25 I'),
    correctedAmpacityA: num('A', 'after ambient and count'),
    conditionsOk: yes('corrected ampacity ≥ I'),
    smallConductorOk: yes('device within 240.4(D)'),
    riseV: num('V', 'over the run'),
    risePercent: num('%', 'of nominal'),
  }),
  example: {
    moduleInverters: 13,
    ratedCurrentEachA: 1.21,
    awg: '12',
    insulationC: 90,
    terminalC: 60,
    ambientC: 38,
    currentCarryingConductors: 2,
    oneWayFt: 80,
    nominalV: 240,
    rOhmPerKft: 2,
  },
  run(row) {
    const { ocpdA = null, ...found } = necBranch(row);
    return { ...found, ocpdA };
  },
  working: (row, r) => [
    `I = n·i = ${fig(r.branchCurrentA)} A; 1.25 I = ${fig(r.minimumOcpdA)} A; device ${r.ocpdA ?? 'none'} A`,
    `terminal column ${fig(r.terminalColumnA)} A ≥ 1.25 I: ${r.terminalOk ? 'yes' : 'no'}; corrected ${fig(r.correctedAmpacityA)} A ≥ I: ${r.conditionsOk ? 'yes' : 'no'}`,
    `rise = 2·L·R·I = 2 · ${fig(row.oneWayFt / 1000)} · ${fig(row.rOhmPerKft)} · ${fig(r.branchCurrentA)} = ${fig(r.riseV)} V`,
  ],
});
