import { moduleFit } from '@eaveline/physics';
import { z } from 'zod';
import { defineCalc } from './calc.ts';
import { choice, fig, num, numOrNull, optionalNum } from './fields.ts';
import { fiveParameters, parametersOf } from './fiveParameters.ts';

const input = z.object({
  vOcV: num('V', 'open circuit'),
  iScA: num('A', 'short circuit'),
  vMpV: num('V', 'at maximum power'),
  iMpA: num('A', 'at maximum power'),
  pMpW: optionalNum('W', 'rated power; held against vMpV · iMpA'),
  alphaIscAPerK: num('A/K', 'absolute: percent/100 × iScA'),
  betaVocVPerK: num('V/K', 'absolute and negative: percent/100 × vOcV'),
  cellsInSeries: num('1', 'cells in series in one string; a half-cut module counts one half'),
});
const output = z.object({
  fiveParameters,
  method: choice(['five-equations', 'no-shunt'], 'no-shunt where the five equations have no sensible root'),
  idealityFactor: num('1', 'n of one cell'),
  fillFactor: num('1', 'Vmp·Imp/(Voc·Isc)'),
  shuntRatio: numOrNull('1', 'Rsh·Isc/Voc; below 10 look at the sheet again'),
  seriesRatio: num('1', 'Rs·Isc/Voc; above 0.15 look at the sheet again'),
  gammaPmpPerK: num('1/K', 'power against temperature as the model has it'),
});

export const moduleFitCalc = defineCalc({
  name: 'module-fit',
  line: 'the five parameters of a module from its data sheet; a group `datasheet` is opened',
  source: 'De Soto, Klein and Beckman 2006, Solar Energy 80(1), 78',
  input,
  output,
  example: {
    vOcV: 41.1,
    iScA: 11.6,
    vMpV: 34.4,
    iMpA: 10.9,
    pMpW: 374.96,
    alphaIscAPerK: 0.0058,
    betaVocVPerK: -0.11097,
    cellsInSeries: 60,
  },
  flatten: ['datasheet'],
  run(row) {
    const { model, betaVocVPerK: _, shuntRatio = null, ...about } = moduleFit(row);
    return { fiveParameters: parametersOf(model), ...about, shuntRatio };
  },
  working: (row, r) => [
    `short circuit ${fig(row.iScA)} A, open circuit ${fig(row.vOcV)} V, maximum power ${fig(row.vMpV)} V · ${fig(row.iMpA)} A with no slope of power there`,
    `open circuit at 27 °C: Voc + 2β = ${fig(row.vOcV + 2 * row.betaVocVPerK)} V`,
    `${r.method}: a = ${fig(r.fiveParameters.aRefV)} V, n = a·q/(Ns·k·T) = ${fig(r.idealityFactor)}`,
    `I = IL − I0 (exp((V + I·Rs)/a) − 1) − (V + I·Rs)/Rsh`,
  ],
});
