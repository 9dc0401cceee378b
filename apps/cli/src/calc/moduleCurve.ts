import { moduleAt, modulePoints } from '@eaveline/physics';
import { z } from 'zod';
import { defineCalc } from './calc.ts';
import { fig, num, optionalNum } from './fields.ts';
import { fiveParameters, modelOf } from './fiveParameters.ts';

const input = z.object({
  irradiance: num('W/m²', 'effective irradiance'),
  cellC: num('°C', 'cell temperature'),
  fiveParameters,
  alphaIscAPerK: num('A/K', 'absolute'),
  cellsInSeries: optionalNum('1', 'already in aRefV; taken for the record'),
});
const output = z.object({
  iSc: num('A', 'short circuit'),
  vOc: num('V', 'open circuit'),
  iMp: num('A', 'at maximum power'),
  vMp: num('V', 'at maximum power'),
  pMp: num('W', 'maximum power'),
  iAtHalfVoc: num('A', 'at half the open-circuit voltage'),
});

export const moduleCurveCalc = defineCalc({
  name: 'module-curve',
  line: 'points of a module curve at an irradiance and a cell temperature',
  source: 'De Soto, Klein and Beckman 2006, Solar Energy 80(1), 78',
  input,
  output,
  example: {
    irradiance: 800,
    cellC: 45,
    fiveParameters: { ILRefA: 11.6132, IORefA: 1.08784e-11, RSOhm: 0.186661, RShRefOhm: 164.05, aRefV: 1.485117 },
    alphaIscAPerK: 0.0058,
    cellsInSeries: 60,
  },
  run: (row) => modulePoints(modelOf(row.fiveParameters, row.alphaIscAPerK), row.irradiance, row.cellC),
  working(row, r) {
    const at = moduleAt(modelOf(row.fiveParameters, row.alphaIscAPerK), row.irradiance, row.cellC);
    return [
      `IL = S/1000 (IL,ref + α (Tc − 25)) = ${fig(at.photoA)} A; I0 moved with T³ and the band gap`,
      `a = a,ref · T/298.15; Rsh = Rsh,ref · 1000/S; Rs as it is`,
      `I = IL − I0 (exp((V + I·Rs)/a) − 1) − (V + I·Rs)/Rsh: Isc ${fig(r.iSc)} A, Voc ${fig(r.vOc)} V`,
      `most power where d(V·I)/dV = 0: ${fig(r.vMp)} V · ${fig(r.iMp)} A = ${fig(r.pMp)} W`,
    ];
  },
});
