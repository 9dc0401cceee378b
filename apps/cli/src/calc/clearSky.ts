import { clearSkyHaurwitz1945, clearSkyIneichenPerez2002 } from '@eaveline/physics';
import { z } from 'zod';
import { defineCalc } from './calc.ts';
import { fig, num, optionalNum } from './fields.ts';

const apparentZenithDeg = num('°', 'refracted sun from overhead');
const input = z.discriminatedUnion('model', [
  z.object({ model: z.literal('haurwitz'), apparentZenithDeg }),
  z.object({
    model: z.literal('ineichen_perez'),
    apparentZenithDeg,
    linkeTurbidity: num('1', '2 clean, 3 usual, 5 haze'),
    altitudeM: num('m', 'height above sea level'),
    dniExtra: num('W/m²', 'extraterrestrial normal'),
    airmassAbsolute: optionalNum('1', 'Kasten and Young × pressure/101325; default from the zenith and pressurePa'),
    pressurePa: optionalNum('Pa', 'needed only where the air mass is not given; default 101325'),
  }),
]);
const ghi = num('W/m²', 'global horizontal');
const output = z.union([
  z.object({ ghi, dni: num('W/m²', 'beam normal'), dhi: num('W/m²', 'diffuse horizontal') }),
  z.object({ ghi }),
]);

export const clearSkyCalc = defineCalc({
  name: 'clear-sky',
  line: 'irradiance under a cloudless sky, by one of two models',
  source: 'Haurwitz 1945, Journal of Meteorology 2, 154; Ineichen and Perez 2002, Solar Energy 73(3), 151',
  input,
  output,
  example: {
    model: 'ineichen_perez',
    apparentZenithDeg: 63.01,
    linkeTurbidity: 3.92,
    altitudeM: 250,
    dniExtra: 1339.46,
  },
  run: (row) =>
    row.model === 'haurwitz' ? { ghi: clearSkyHaurwitz1945(row.apparentZenithDeg) } : clearSkyIneichenPerez2002(row),
  working(row, r) {
    const cos = Math.cos((row.apparentZenithDeg * Math.PI) / 180);
    if (row.model === 'haurwitz')
      return [`ghi = 1098 cos z · exp(−0.059/cos z), cos z = ${fig(cos)}: ${fig(r.ghi)} W/m²`];
    if (!('dni' in r)) throw new Error('a model with beam gave none');
    return [
      `cos z = ${fig(cos)}, turbidity ${fig(row.linkeTurbidity)}, height ${fig(row.altitudeM)} m`,
      `ghi = cg1 · dniExtra · cos z · exp(−cg2 · m · (fh1 + fh2 (TL − 1))) = ${fig(r.ghi)} W/m²`,
      `dni = the smaller of the two published expressions = ${fig(r.dni)} W/m²`,
      `dhi = ghi − dni cos z = ${fig(r.dhi)} W/m²`,
    ];
  },
});
