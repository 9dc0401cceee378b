import { adiabatic, faultLoop } from '@eaveline/physics';
import { z } from 'zod';
import { defineCalc } from './calc.ts';
import { choice, fig, num, numOrNull, optionalNum, text, yes } from './fields.ts';

export const faultLoopCalc = defineCalc({
  name: 'fault-loop',
  line: 'earth-fault loop of a circuit, cold and hot, against its breaker',
  source: 'BS 7671:2018 Table 41.3; AS/NZS 3000:2018 Table 8.1 (from memory)',
  input: z.object({
    standard: choice(['BS 7671', 'AS/NZS 3000'], 'whose table'),
    breaker: text('curve and rating, such as C20'),
    zeOhm: num('Ω', 'loop outside the installation'),
    r1PlusR2MohmPerM20c: num('mΩ/m', 'line and protective conductor together at 20 °C'),
    lengthM: num('m', 'one way'),
    temperatureFactor: optionalNum('1', 'cold to hot; default 1.2'),
    u0V: optionalNum('V', 'to earth; default 230'),
  }),
  output: z.object({
    r1PlusR2ColdOhm: num('Ω', 'line and protective conductor, cold'),
    zsColdOhm: num('Ω', 'what a meter should read, cold'),
    zsOhm: num('Ω', 'whole loop, hot'),
    tableMaxOhm: num('Ω', 'largest allowed'),
    pass: yes('zsOhm ≤ tableMaxOhm'),
    faultCurrentA: num('A', 'hot'),
  }),
  example: { standard: 'BS 7671', breaker: 'C20', zeOhm: 0.35, r1PlusR2MohmPerM20c: 19.51, lengthM: 25 },
  run: (row) => faultLoop(row),
  working: (row, r) => [
    `R1 + R2 = ${fig(row.r1PlusR2MohmPerM20c)} · ${fig(row.lengthM)}/1000 = ${fig(r.r1PlusR2ColdOhm)} Ω cold`,
    `Zs = Ze + ${fig(row.temperatureFactor ?? 1.2)} (R1 + R2) = ${fig(row.zeOhm)} + ${fig(r.zsOhm - row.zeOhm)} = ${fig(r.zsOhm)} Ω against ${fig(r.tableMaxOhm)} Ω`,
    `If = U0/Zs = ${fig(row.u0V ?? 230)}/${fig(r.zsOhm)} = ${fig(r.faultCurrentA)} A`,
  ],
});

export const adiabaticCalc = defineCalc({
  name: 'adiabatic',
  line: 'the smallest conductor that survives a fault',
  source: 'IEC 60364-5-54 clause 543.1.2',
  input: z.object({
    faultCurrentA: num('A', 'voltage over loop impedance'),
    timeS: num('s', 'until the device opens, 0.1 to 5'),
    k: num('A·√s/mm²', 'of metal and covering; 115 for copper in PVC'),
  }),
  output: z.object({
    minimumMm2: num('mm²', 'by the formula'),
    nextStandardMm2: numOrNull('mm²', 'next standard size; null above 185'),
  }),
  example: { faultCurrentA: 3000, timeS: 0.4, k: 115 },
  run(row) {
    const { minimumMm2, nextStandardMm2 = null } = adiabatic(row);
    return { minimumMm2, nextStandardMm2 };
  },
  working: (row, r) => [
    `S = √(I²·t)/k = √(${fig(row.faultCurrentA)}² · ${fig(row.timeS)})/${fig(row.k)} = ${fig(r.minimumMm2)} mm²`,
    `next standard size: ${r.nextStandardMm2 ?? 'none'} mm²`,
  ],
});
