import { etrNormalSpencer1971, skySplitErbs1982 } from '@eaveline/physics';
import { z } from 'zod';
import { defineCalc } from './calc.ts';
import { fig, num, numOrNull, optionalNum } from './fields.ts';

const input = z.object({
  ghi: num('W/m²', 'global horizontal'),
  zenithDeg: num('°', 'sun from overhead'),
  dayOfYear: num('d', '1 to 366'),
  dniExtra: optionalNum('W/m²', 'extraterrestrial normal; default 1366.1 × Spencer 1971 for the day'),
});
const output = z.object({
  kt: num('1', 'clearness, 0 to 1'),
  diffuseFraction: numOrNull('1', 'dhi/ghi; null in the dark'),
  dni: num('W/m²', 'beam normal'),
  dhi: num('W/m²', 'diffuse horizontal'),
});

export const skySplitCalc = defineCalc({
  name: 'sky-split',
  line: 'beam and diffuse out of global horizontal irradiance',
  source: 'Erbs, Klein and Duffie 1982, Solar Energy 28(4), 293',
  input,
  output,
  example: { ghi: 430, zenithDeg: 48.5, dayOfYear: 98 },
  run: (row) => {
    const split = skySplitErbs1982(row);
    return { ...split, diffuseFraction: split.diffuseFraction ?? null };
  },
  working(row, r) {
    const extra = row.dniExtra ?? etrNormalSpencer1971(row.dayOfYear);
    const cos = Math.cos((row.zenithDeg * Math.PI) / 180);
    return [
      `kt = ghi/(dniExtra · max(cos z, 0.065)) = ${fig(row.ghi)}/(${fig(extra)} · ${fig(Math.max(cos, 0.065))}) = ${fig(r.kt)}, held in 0…1`,
      row.zenithDeg > 87
        ? 'sun more than 87° from overhead: everything counts as diffuse'
        : `diffuse fraction = f(kt) = ${r.diffuseFraction === null ? 'none, it is dark' : fig(r.diffuseFraction)}`,
      `dhi = ghi · fraction = ${fig(r.dhi)} W/m²; dni = (ghi − dhi)/cos z = ${fig(r.dni)} W/m²`,
    ];
  },
});
