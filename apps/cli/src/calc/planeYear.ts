import { z } from 'zod';
import { defineCalc } from './calc.ts';
import { fig, list, num, numOrNull, optionalNum, siteFields, siteNames, text } from './fields.ts';
import { fiveParameters, modelOf } from './fiveParameters.ts';
import { yearNamed } from './weatherNamed.ts';
import { byMonth, columnsOf, hoursOf, type SumName } from './yearOnPlane.ts';

const { altitudeM, pressurePa, temperatureC } = siteFields;
const input = z.object({
  weatherFile: text('path of the weather: EPW, TMY3, PVGIS, or the hourly CSV with sun_time_utc'),
  tiltDeg: num('°', '0 horizontal, 90 vertical'),
  surfaceAzimuthDeg: num('°', 'direction the plane faces, clockwise from true north'),
  lat: optionalNum('°', 'latitude, north positive; default the file’s'),
  lon: optionalNum('°', 'longitude, east positive; default the file’s'),
  altitudeM,
  pressurePa,
  temperatureC,
  deltaTS: optionalNum('s', 'TT − UT1; default 67'),
  albedo: optionalNum('1', 'default 0.2'),
  faimanU0: optionalNum('W/m²K', 'default 25'),
  faimanU1: optionalNum('W/m²K per m/s', 'default 6.84'),
  gammaPerK: num('1/K', 'power against temperature'),
  moduleStcW: num('W', 'rated power of the module below'),
  alphaIscAPerK: num('A/K', 'absolute'),
  fiveParameters,
});

const sums = {
  poaPerezKwhM2: ['kWh/m²', 'on the plane, sky by Perez'],
  poaHaydaviesKwhM2: ['kWh/m²', 'on the plane, sky by Hay and Davies'],
  poaIsotropicKwhM2: ['kWh/m²', 'on the plane, uniform sky'],
  poaBeamKwhM2: ['kWh/m²', 'beam'],
  skyPerezKwhM2: ['kWh/m²', 'sky diffuse by Perez'],
  groundKwhM2: ['kWh/m²', 'from the ground'],
  dcLinearKwhPerKwp: ['kWh/kWp', 'direct current by the linear power model'],
  dcDesotoKwhPerKwp: ['kWh/kWp', 'direct current by the five-parameter model'],
  effectiveIamKwhM2: ['kWh/m²', 'after reflection at the glass (n 1.526, K 4 /m, L 0.002 m)'],
  dcLinearIamKwhPerKwp: ['kWh/kWp', 'the linear model with that reflection'],
} as const satisfies Record<SumName, readonly [string, string]>;
const SUM_NAMES = Object.keys(sums) as SumName[];
const each = <T>(make: (unit: string, what: string) => T) =>
  Object.fromEntries(Object.entries(sums).map(([key, [unit, what]]) => [key, make(unit, what)])) as Record<SumName, T>;

const warmth = 'cell temperature weighted by irradiance; null without light';
const output = z.object({
  annual: z.object({ ...each(num), cellCWeightedByPoa: numOrNull('°C', warmth) }),
  monthly: z
    .object({
      ...each(list),
      cellCWeightedByPoa: z.array(z.number().nullable()).meta({ unit: '°C', description: warmth }),
    })
    .meta({ description: 'January to December, by the month each hour is booked to' }),
  hours: num('h', 'hours in the file'),
  hoursWithoutRadiation: num('h', 'of those, hours taken as dark because a radiation is missing'),
});

const at = (values: ArrayLike<number>, i: number) => values[i] as number;
const total = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);

export const planeYearCalc = defineCalc({
  name: 'plane-year',
  line: 'a year of weather on one plane: irradiation, cell temperature, direct current; a group `parameters` is opened',
  source:
    'sun Reda and Andreas 2004; sky Perez et al. 1990, Hay and Davies 1980; Faiman 2008; linear power after Dobos 2014; De Soto et al. 2006',
  input,
  output,
  example: {
    weatherFile: 'greensboro.tmy3.csv',
    tiltDeg: 35,
    surfaceAzimuthDeg: 180,
    gammaPerK: -0.0035,
    moduleStcW: 374.96,
    alphaIscAPerK: 0.0058,
    fiveParameters: { ILRefA: 11.6132, IORefA: 1.08784e-11, RSOhm: 0.186661, RShRefOhm: 164.05, aRefV: 1.485117 },
  },
  names: { ...siteNames, azimuthDeg: 'surfaceAzimuthDeg', u0: 'faimanU0', u1: 'faimanU1' },
  flatten: ['parameters'],
  files: ({ weatherFile }) => (typeof weatherFile === 'string' ? [weatherFile] : []),
  run(row, files) {
    const weather = yearNamed(row.weatherFile, files);
    const hours = hoursOf(row, weather);
    const columns = columnsOf(hours, row, modelOf(row.fiveParameters, row.alphaIscAPerK));
    const monthly = Object.fromEntries(SUM_NAMES.map((name) => [name, byMonth(weather.month, columns[name])]));
    const annual = Object.fromEntries(SUM_NAMES.map((name) => [name, total(monthly[name] as number[])]));
    const light = byMonth(weather.month, (i) => at(hours.poa, i));
    const heat = byMonth(weather.month, (i) => at(hours.poa, i) * at(hours.cellC, i));
    const mean = (heatSum: number, lightSum: number) => (lightSum > 0 ? heatSum / lightSum : null);
    const { dni, dhi, ghi } = weather.has;
    return {
      annual: { ...(annual as Record<SumName, number>), cellCWeightedByPoa: mean(total(heat), total(light)) },
      monthly: {
        ...(monthly as Record<SumName, number[]>),
        cellCWeightedByPoa: heat.map((h, m) => mean(h, at(light, m))),
      },
      hours: weather.month.length,
      hoursWithoutRadiation: ghi.reduce((n, has, i) => n + (has && dni[i] && dhi[i] ? 0 : 1), 0),
    };
  },
  working: (row, { annual }) => [
    'each hour: sun at its instant; nothing where its apparent zenith is 90° or more',
    `plane = beam ${fig(annual.poaBeamKwhM2)} + sky ${fig(annual.skyPerezKwhM2)} + ground ${fig(annual.groundKwhM2)} = ${fig(annual.poaPerezKwhM2)} kWh/m²`,
    `cell = air + poa/(${fig(row.faimanU0 ?? 25)} + ${fig(row.faimanU1 ?? 6.84)}·wind); weighted mean ${annual.cellCWeightedByPoa === null ? '–' : fig(annual.cellCWeightedByPoa)} °C`,
    `linear: Σ poa/1000 (1 + γ (cell − 25)) = ${fig(annual.dcLinearKwhPerKwp)} kWh/kWp; five parameters: ${fig(annual.dcDesotoKwhPerKwp)} kWh/kWp`,
    `behind the glass ${fig(annual.effectiveIamKwhM2)} kWh/m², linear ${fig(annual.dcLinearIamKwhPerKwp)} kWh/kWp`,
  ],
});
