import { expect, test } from 'vitest';
import { conductorResistance, iecOhmPerKm20c, ohmPerKm, resistanceAtTemperature } from './resistance.ts';

// Expected: IEC 60228:2004 maxima with the copper coefficient 0.00393/K, worked outside this code;
// relative 1e-5, the precision the figures are given to.
test.each([
  // class, metal, mm², °C, route m, conductors → Ω/km at temperature, Ω
  [2, 'copper', 2.5, 70, 25, 2, 8.866065, 0.4433032],
  [5, 'copper', 2.5, 55, 14.3, 2, 9.077649, 0.2596208],
  [2, 'copper', 35, 75, 48, 1, 0.637263, 0.0305886],
  [2, 'aluminium', 25, 70, 40, 2, 1.4418, 0.115344],
  [2, 'copper', 10, 20, 100, 1, 1.83, 0.183],
] as const)('class %i %s %f mm² at %i °C', (cls, material, sizeMm2, tempC, routeLengthM, inSeries, perKm, ohm) => {
  const got = conductorResistance({
    standard: 'IEC 60228',
    class: cls,
    material,
    sizeMm2,
    conductorTemperatureC: tempC,
    routeLengthM,
    conductorsInSeries: inSeries,
  });
  expect(Math.abs(got.ohmPerKmAtTemperature / perKm - 1)).toBeLessThan(1e-5);
  expect(Math.abs(got.resistanceOhm / ohm - 1)).toBeLessThan(1e-5);
});

test('NEC Chapter 9 Table 8: 12 AWG solid copper is 1.93 Ω per 1000 ft, 6.332 Ω/km at 75 °C', () => {
  const wire = { standard: 'NEC', material: 'copper', awg: '12', stranding: 'solid' } as const;
  expect(ohmPerKm(wire, 75)).toBeCloseTo(6.332, 3);
  // note 2: 1 + 0.00323·(50 − 75)
  expect(ohmPerKm(wire, 50)).toBeCloseTo(6.332 * (1 - 0.08075), 3);
});

test('NEC Chapter 9 Table 9: 2 AWG has more resistance in steel than in plastic conduit', () => {
  const wire = { standard: 'NEC', material: 'copper', awg: '2' } as const;
  expect(ohmPerKm({ ...wire, conduit: 'pvc' }, 75)).toBeCloseTo(0.62, 2);
  expect(ohmPerKm({ ...wire, conduit: 'steel' }, 75)).toBeCloseTo(0.66, 2);
});

test('law: there and back in temperature is where one started', () => {
  expect(resistanceAtTemperature(resistanceAtTemperature(0.49, 20, 70), 70, 20)).toBeCloseTo(0.49, 14);
});

test('refuses what the standard has no figure for', () => {
  const odd = { standard: 'IEC 60228', class: 5, material: 'aluminium', sizeMm2: 16 } as const;
  expect(() => iecOhmPerKm20c(odd)).toThrow('conductor is 16 mm² aluminium class 5');
  expect(() => iecOhmPerKm20c({ ...odd, material: 'copper', sizeMm2: 3 })).toThrow('3 mm² copper class 5');
  expect(() => ohmPerKm({ standard: 'NEC', material: 'copper', awg: '13' }, 75)).toThrow('awg is 13 stranded');
  expect(() => ohmPerKm({ ...odd, material: 'copper' }, Number.NaN)).toThrow('conductorTemperatureC is NaN');
});
