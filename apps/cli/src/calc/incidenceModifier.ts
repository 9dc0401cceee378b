import { type IncidenceModel, incidenceAverages, incidenceModifier } from '@eaveline/physics';
import { z } from 'zod';
import { defineCalc } from './calc.ts';
import { fig, num, numOrNull, optionalNum } from './fields.ts';

const aoiDeg = num('°', 'angle of incidence');
const tiltDeg = num('°', 'tilt of the plane, 0 horizontal');
const aR = num('1', 'angular loss coefficient, 0.16 for clean glass');
const glass = {
  n: optionalNum('1', 'refractive index of the glass; default 1.526'),
  KPerM: optionalNum('1/m', 'extinction in the glass; default 4'),
  LM: optionalNum('m', 'thickness of the glass; default 0.002'),
  nAr: optionalNum('1', 'index of an anti-reflective layer; none if left out'),
};
const input = z.discriminatedUnion('model', [
  z.object({ model: z.literal('physical'), aoiDeg, ...glass }),
  z.object({ model: z.literal('ashrae'), aoiDeg, b: num('1', 'usually 0.05') }),
  z.object({ model: z.literal('martin_ruiz'), aoiDeg, aR }),
  z.object({ model: z.literal('physical_diffuse'), tiltDeg, ...glass }),
  z.object({ model: z.literal('martin_ruiz_diffuse'), tiltDeg, aR }),
]);
const output = z.union([
  z.object({ iam: num('1', 'share of the light that passes, against normal incidence') }),
  z.object({
    iamSky: num('1', 'the same averaged over a uniform sky'),
    iamGround: numOrNull('1', 'averaged over the ground; null where the plane sees none'),
  }),
]);
type Row = z.output<typeof input>;

function modelOf(row: Row): IncidenceModel {
  switch (row.model) {
    case 'ashrae':
      return { model: 'ashrae', b: row.b };
    case 'martin_ruiz':
    case 'martin_ruiz_diffuse':
      return { model: 'martin-ruiz', aR: row.aR };
    default:
      return {
        model: 'physical',
        n: row.n ?? 1.526,
        extinctionPerM: row.KPerM ?? 4,
        thicknessM: row.LM ?? 0.002,
        nCoating: row.nAr,
      };
  }
}

const FORMULA: Readonly<Record<Row['model'], string>> = {
  physical: 'Snell and Fresnel at each surface, exp(−K·L/cos θ2) in the glass, over the same at normal incidence',
  ashrae: '1 − b (1/cos aoi − 1), not below 0',
  martin_ruiz: '(1 − exp(−cos aoi/a_r))/(1 − exp(−1/a_r))',
  physical_diffuse: 'the physical curve averaged over sky and ground, weighted by cos aoi',
  martin_ruiz_diffuse: '1 − exp(−(c1·s + c2·s²)/a_r), c1 = 4/(3π), c2 = 0.5 a_r − 0.154',
};

export const incidenceModifierCalc = defineCalc({
  name: 'incidence-modifier',
  line: 'what the glass lets through at an angle, or on average of sky and ground; five models',
  source:
    'De Soto, Klein and Beckman 2006; ASHRAE 93 (Souka and Safwat 1966); Martin and Ruiz 2001 and 2005; averages after Marion 2017',
  input,
  output,
  example: { model: 'physical', aoiDeg: 60 },
  names: { extinctionPerM: 'KPerM', thicknessM: 'LM', nCoating: 'nAr' },
  run(row) {
    if ('aoiDeg' in row) return { iam: incidenceModifier(modelOf(row), row.aoiDeg) };
    const { sky, ground } = incidenceAverages(modelOf(row), row.tiltDeg);
    return { iamSky: sky, iamGround: ground ?? null };
  },
  working: (row, r) => [
    FORMULA[row.model],
    'iam' in r
      ? `at ${fig('aoiDeg' in row ? row.aoiDeg : 0)}°: ${fig(r.iam)}`
      : `at a tilt of ${fig('tiltDeg' in row ? row.tiltDeg : 0)}°: sky ${fig(r.iamSky)}, ground ${r.iamGround === null ? 'none' : fig(r.iamGround)}`,
  ],
});
