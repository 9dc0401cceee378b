import { planeIrradiance } from '@eaveline/physics';
import { z } from 'zod';
import { defineCalc } from './calc.ts';
import { fig, num, numOrNull, optionalNum } from './fields.ts';

const input = z.object({
  sunZenithDeg: num('°', 'apparent zenith of the sun'),
  sunAzimuthDeg: num('°', 'clockwise from true north'),
  dni: num('W/m²', 'beam normal'),
  dhi: num('W/m²', 'diffuse horizontal'),
  ghi: num('W/m²', 'global horizontal; used for the ground only'),
  dniExtra: num('W/m²', 'extraterrestrial normal'),
  airmassRelative: optionalNum('1', 'default Kasten and Young 1989 of the zenith'),
  tiltDeg: num('°', '0 horizontal, 90 vertical'),
  surfaceAzimuthDeg: num('°', 'direction the plane faces, clockwise from true north'),
  albedo: optionalNum('1', 'reflectance of the ground; default 0.2'),
});
const output = z.object({
  aoiDeg: num('°', 'between the sun and the normal of the plane'),
  poaBeam: num('W/m²', 'beam on the plane'),
  skyIsotropic: num('W/m²', 'sky diffuse, uniform sky'),
  skyHaydavies: num('W/m²', 'sky diffuse, Hay and Davies 1980'),
  skyPerez: num('W/m²', 'sky diffuse, Perez et al. 1990'),
  groundDiffuse: num('W/m²', 'from the ground'),
  perezPartIsotropic: num('W/m²', 'Perez: the uniform part'),
  perezPartCircumsolar: num('W/m²', 'Perez: about the sun'),
  perezPartHorizon: num('W/m²', 'Perez: the horizon band'),
  perezEpsilon: numOrNull('1', 'clearness'),
  perezDelta: numOrNull('1', 'brightness'),
  perezBin: numOrNull('1', '1 overcast to 8 clear'),
});

export const planeIrradianceCalc = defineCalc({
  name: 'plane-irradiance',
  line: 'irradiance on a tilted plane at one instant, by three models of the sky at once',
  source: 'isotropic; Hay and Davies 1980; Perez et al. 1990, all-sites composite coefficients',
  input,
  output,
  example: {
    sunZenithDeg: 34.403,
    sunAzimuthDeg: 350.344,
    dni: 42.4,
    dhi: 311.5,
    ghi: 346.5,
    dniExtra: 1396.457,
    tiltDeg: 18,
    surfaceAzimuthDeg: 45,
  },
  run(row) {
    const r = planeIrradiance(row);
    const { perezEpsilon = null, perezDelta = null, perezBin = null } = r;
    return { ...r, perezEpsilon, perezDelta, perezBin };
  },
  working: (row, r) => [
    `cos aoi = cos z cos β + sin z sin β cos(γs − γ): aoi = ${r.aoiDeg.toFixed(4)}°`,
    `beam = dni · max(cos aoi, 0) = ${fig(r.poaBeam)} W/m²`,
    `uniform sky: dhi (1 + cos β)/2 = ${fig(r.skyIsotropic)} W/m²`,
    `Hay and Davies: A = dni/dniExtra = ${fig(row.dni / row.dniExtra)}; sky = ${fig(r.skyHaydavies)} W/m²`,
    `Perez: ε = ${r.perezEpsilon === null ? '–' : fig(r.perezEpsilon)}, Δ = ${r.perezDelta === null ? '–' : fig(r.perezDelta)}, bin ${r.perezBin ?? '–'}; ${fig(r.perezPartIsotropic)} + ${fig(r.perezPartCircumsolar)} + ${fig(r.perezPartHorizon)} = ${fig(r.skyPerez)} W/m²`,
    `ground = ghi · albedo (1 − cos β)/2 = ${fig(r.groundDiffuse)} W/m²`,
  ],
});
