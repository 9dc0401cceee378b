import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { quantityRefusalWords, readQuantity } from './readQuantity.ts';
import { plainFigures, showQuantity } from './showQuantity.ts';

/** The value a text is read as; the words of the refusal where it is refused. */
function read(text: string, keptIn: string): number | string {
  const said = readQuantity(text, keptIn);
  return said.kind === 'value' ? said.value : said.kind === 'empty' ? 'empty' : quantityRefusalWords(said);
}

/** Figures that NIST SP 811 prints with seven figures are held to seven. */
const SEVEN = 5e-7;
function expectNear(got: number | string, want: number, relative = SEVEN) {
  expect(typeof got).toBe('number');
  expect(Math.abs((got as number) / want - 1)).toBeLessThan(relative);
}

describe('lengths, by the international foot of 0.3048 m exactly (NIST SP 811, B.6)', () => {
  test.each([
    ['12 ft', 3.6576],
    ["12'", 3.6576],
    ['12 feet', 3.6576],
    // 6 · 304.8 + 4 · 25.4 = 1930.4 mm
    ['6 ft 4 in', 1.9304],
    ["6'4", 1.9304],
    ['6′ 4″', 1.9304],
    // 1930.4 + 12.7 = 1943.1 mm
    [`6' 4 1/2"`, 1.9431],
    [`6'-4 1/2"`, 1.9431],
    ['6’ 4½”', 1.9431],
    ['6ft4.5in', 1.9431],
    // 0.75 · 25.4 = 19.05 mm
    ['3/4 in', 0.01905],
    ['¾″', 0.01905],
    ['5-3/4 in.', 0.14605],
    ['1.2 m', 1.2],
    ['1.2', 1.2],
    ['1200 mm', 1.2],
    ['1200 MM', 1.2],
    ['120 cm', 1.2],
    ['1 m 20 cm', 1.2],
    ['1 200 mm', 1.2],
    ['1\u202f200\u00a0mm', 1.2],
    ['2 yd', 1.8288],
    ['\u22121.2', -1.2],
    ['- 6 ft 4 in', -1.9304],
    [' +1.2m ', 1.2],
  ])('%s is %f m', (text, metres) => {
    expect(read(text, 'm')).toBe(metres);
  });

  test('the same into millimetres; without a unit it is the unit of the field', () => {
    expect(read('12 ft', 'mm')).toBe(3657.6);
    expect(read('24 in', 'mm')).toBe(609.6);
    expect(read('1.2 m', 'mm')).toBe(1200);
    expect(read('600', 'mm')).toBe(600);
  });
});

describe('marks between figures', () => {
  test.each([
    ['1 200', 1200],
    ['1200,5', 1200.5],
    ['1.200,5', 1200.5],
    ['1,200.5', 1200.5],
    ['1,200,300', 1_200_300],
    ['1.200.300', 1_200_300],
    ['1.200', 1.2],
    ['12,5', 12.5],
    ['0,125', 0.125],
    ['1 200,125', 1200.125],
    ['.5', 0.5],
    ['5.', 5],
    ['1.5e3', 1500],
  ])('%s is %f', (text, value) => {
    expect(read(text, 'mm')).toBe(value);
  });

  test('one comma before three figures could be either, and is not guessed at', () => {
    expect(read('1,200', 'mm')).toBe('1,200 could be 1200 or 1.2. Type 1200 or 1.2.');
    expect(read('12,345 m', 'm')).toBe('12,345 could be 12345 or 12.345. Type 12345 or 12.345.');
  });

  test.each(['1,20,300', '1.2.3', '12 34', '1 2000', '1,200,3', '1..2'])('%s is no number', (text) => {
    expect(read(text, 'mm')).toContain(`${text} is `);
  });
});

describe('cross-sections, by ASTM B258 for the gauge', () => {
  test.each([
    ['6mm2', 6],
    ['6 mm²', 6],
    ['6 sq mm', 6],
    ['6', 6],
    ['2,5 mm²', 2.5],
  ])('%s is %f mm²', (text, areaMm2) => {
    expect(read(text, 'mm²')).toBe(areaMm2);
  });

  // areas as tables of the gauge print them, mm²: 10 AWG 5.261, 1/0 53.49, 2/0 67.43, 4/0 107.2, 14 AWG 2.081
  test.each([
    ['10 AWG', 5.261],
    ['#10', 5.261],
    ['awg10', 5.261],
    ['No. 10', 5.261],
    ['1/0 AWG', 53.49],
    ['2/0', 67.43],
    ['00 AWG', 67.43],
    ['4/0 awg', 107.2],
    ['#14 AWG', 2.081],
  ])('%s is %f mm²', (text, areaMm2) => {
    expectNear(read(text, 'mm²'), areaMm2, 5e-4);
  });

  test('by its definition No. 36 is 0.127 mm across, and No. 0000 is 92 times that', () => {
    expectNear(read('36 AWG', 'mm²'), (Math.PI / 4) * 0.127 ** 2, 1e-11);
    expectNear(read('4/0', 'mm²'), (Math.PI / 4) * (92 * 0.127) ** 2, 1e-11);
  });

  test('250 kcmil: a quarter of a million circles of a thousandth of an inch, 126.7 mm²', () => {
    expectNear(read('250 kcmil', 'mm²'), 126.7, 5e-4);
    expectNear(read('250 MCM', 'mm²'), 250_000 * (Math.PI / 4) * 0.0254 ** 2, 1e-11);
  });

  test('a bare number is mm² and never a gauge; a gauge is no length', () => {
    expect(read('10', 'mm²')).toBe(10);
    expect(read('10 AWG', 'm')).toMatch(/^10 AWG is a cross-section\./);
  });
});

describe('power, energy, torque, pressure, speed (NIST SP 811, appendix B)', () => {
  test.each([
    // 550 ft·lbf/s = 745.6999 W
    ['1 hp', 'W', 745.6999],
    ['1/2 hp', 'W', 372.84995],
    // 1.129848e-1 and 1.355818 N·m
    ['1 in-lb', 'N·m', 0.1129848],
    ['22 in·lbf', 'N·m', 22 * 0.1129848],
    ['1 ft-lb', 'N·m', 1.355818],
    ['12 lb-ft', 'N·m', 12 * 1.355818],
    // 47.88026 Pa
    ['30 psf', 'kPa', 30 * 0.04788026],
    // 5.144444e-1 m/s
    ['1 kn', 'm/s', 0.5144444],
  ])('%s in %s is %f', (text, keptIn, value) => {
    expectNear(read(text, keptIn), value);
  });

  test.each([
    ['115 mph', 'm/s', 51.4096], // 0.44704 exactly
    ['36 km/h', 'm/s', 10],
    ['36 kph', 'm/s', 10],
    ['1.5 kW', 'W', 1500],
    ['4.6 kVA', 'VA', 4600],
    ['4600 va', 'kVA', 4.6],
    ['9200 Wh', 'kWh', 9.2],
    ['3.6 MJ', 'kWh', 1],
    ['2.5 Nm', 'N·m', 2.5],
    ['2.5 newton metres', 'N·m', 2.5],
    ['1.44 kN/m²', 'kPa', 1.44],
    ['400 Pa', 'kPa', 0.4],
    ['1 h 30 min', 'min', 90],
    ['1h30', 'min', 90],
    ['230 Vac', 'V', 230],
    ['0.4 kV', 'V', 400],
    ['30 mA', 'A', 0.03],
    ['6 kA', 'A', 6000],
    ['10000 A', 'kA', 10],
    ['20 %', '%', 20],
    ['12', '', 12],
    ['4 pieces', 'pieces', 4],
    ['900 W/m²', 'W/m²', 900],
  ])('%s in %s is %f', (text, keptIn, value) => {
    expect(read(text, keptIn)).toBe(value);
  });
});

describe('resistance: the case of M counts', () => {
  test.each([
    ['0.35 Ω', 0.35],
    ['0.35 ohm', 0.35],
    ['0.35 \u2126', 0.35],
    ['350 mΩ', 0.35],
    ['350 milliohms', 0.35],
    ['2 MΩ', 2e6],
    ['2 megohm', 2e6],
    ['2 Mohm', 2e6],
    ['1.5 kΩ', 1500],
  ])('%s is %f Ω', (text, ohm) => {
    expect(read(text, 'Ω')).toBe(ohm);
  });

  test('where letters could be either, they are not guessed at', () => {
    expect(read('2 MOHM', 'Ω')).toBe('2 MOHM could be in mΩ or MΩ. Type mΩ or MΩ as it stands here.');
    expect(read('5 mw', 'W')).toBe('5 mw could be in MW. Type MW as it stands here.');
  });
});

describe('temperatures and angles', () => {
  test.each([
    ['-5', -5],
    ['−5 °C', -5],
    ['23 °F', -5],
    ['-40 F', -40],
    ['32 deg f', 0],
    ['268.15 K', -5],
    ['300.1 kelvin', 26.95],
  ])('%s is %f °C', (text, celsius) => {
    expect(read(text, '°C')).toBe(celsius);
  });

  test('below absolute zero there is nothing', () => {
    expect(read('-300', '°C')).toBe('-300 is colder than anything can be. Look at the sign and the unit again.');
  });

  test.each([
    ['26.6', 26.6],
    ['26.6°', 26.6],
    ['26.6º', 26.6],
    ["26° 30'", 26.5],
    // 6 in 12: atan 0.5 = 26.5650512°
    ['6:12', 26.5650512],
    ['6/12', 26.5650512],
    ['6 in 12', 26.5650512],
    ['50 %', 26.5650512],
    ['12:12', 45],
    ['100%', 45],
  ])('%s is %f°', (text, deg) => {
    expectNear(read(text, '°'), deg, 1e-8);
  });
});

describe('what is no quantity is refused in words', () => {
  test.each([
    ['abc', 'm', 'abc is no number. Type it in m, or with its unit: 1.2 m, 1200 mm or 3 ft 11 1/4 in.'],
    [
      '12 apples',
      'm',
      'apples is no unit of a length. Type it in m, or with its unit: 1.2 m, 1200 mm or 3 ft 11 1/4 in.',
    ],
    ['12 A', 'mm', '12 A is a current. Type it in mm, or with its unit: 1.2 m, 1200 mm or 3 ft 11 1/4 in.'],
    ['5 m2', 'm', '5 m2 is an area. Type it in m, or with its unit: 1.2 m, 1200 mm or 3 ft 11 1/4 in.'],
    ['12 ft-lb', 'm', '12 ft-lb is a torque. Type it in m, or with its unit: 1.2 m, 1200 mm or 3 ft 11 1/4 in.'],
    ['5 kVA', 'W', '5 kVA is an apparent power. Type it in W, or with its unit: 1500 W, 1.5 kW or 2 hp.'],
    ['6 ft 14 in', 'm', '14 in is as much as a foot or more. Behind ft type less than 12.'],
    ['twelve', '', 'twelve is no number. Type it in figures.'],
    ['12 m', '', '12 m is a length. Type it in figures.'],
  ])('%s into %s', (text, keptIn, words) => {
    expect(read(text, keptIn)).toBe(words);
  });

  test.each(['NaN', 'Infinity', '1e999', '1e-999', '--', '-', '--5', '+-5', '.', '1/0', '0x10', '10²', '٣', '=1+1'])(
    '%s is no length',
    (text) => {
      expect(readQuantity(text, 'm').kind).toBe('refused');
    },
  );

  test.each(['6.5 ft 3 in', '3 in 6 ft', '6 ft 4 in 2', '5 6', '6-4', '10 ft - 4 in', '1 kW 200'])(
    '%s is more than one number',
    (text) => {
      expect(readQuantity(text, text.includes('kW') ? 'W' : 'm').kind).toBe('refused');
    },
  );

  test('nothing typed is nothing', () => {
    expect(read('  \u00a0', 'm')).toBe('empty');
  });
});

const aFigure = fc.double({ min: 1e-6, max: 1e6, noNaN: true }).map((value) => Number(value.toPrecision(10)));
const signed = fc.tuple(aFigure, fc.boolean()).map(([value, minus]) => (minus ? -value : value));

test('law: what is shown is read back as it was, in every unit a field is kept in', () => {
  const units = [
    'm',
    'mm',
    'mm²',
    'A',
    'kA',
    'V',
    'W',
    'VA',
    'kWh',
    'Ω',
    '°',
    'N·m',
    'm/s',
    'kPa',
    'min',
    'kg',
    '',
    '%',
  ];
  fc.assert(
    fc.property(signed, fc.constantFrom(...units), (value, unit) => {
      expect(read(showQuantity(value, unit), unit)).toBe(value);
      expect(read(plainFigures(value), unit)).toBe(value);
    }),
  );
});

test('law: by the American habit a sixteenth comes back to a twentieth of a millimetre, anything else as it was', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 20_000 }), (sixteenths) => {
      const metres = Number(((sixteenths / 16) * 0.0254).toFixed(5));
      const shown = showQuantity(metres, 'm', 'us');
      expect(shown).toContain('\u2033');
      expect(Math.abs((read(shown, 'm') as number) - metres)).toBeLessThan(5e-5);
    }),
  );
  expect(showQuantity(3.6576, 'm', 'us')).toBe('12′ 0″');
  expect(showQuantity(1943.1, 'mm', 'us')).toBe('6′ 4 1/2″');
  expect(showQuantity(0.01905, 'm', 'us')).toBe('3/4″');
  expect(showQuantity(3.66, 'm', 'us')).toBe('3.66\u00a0m');
  expect(showQuantity(5.261, 'mm²', 'us')).toBe('10 AWG');
  expect(showQuantity(6, 'mm²', 'us')).toBe('6\u00a0mm²');
});

test('law: any text at all is read or refused in words, and no value is ever not a number', () => {
  const pieces = fc.constantFrom(
    '1',
    '12',
    '.',
    ',',
    ' ',
    "'",
    '"',
    '/',
    '-',
    'ft',
    'in',
    'mm',
    'AWG',
    '#',
    '½',
    '%',
    ':',
    'e9',
  );
  const text = fc.oneof(
    fc.string(),
    fc.array(pieces, { maxLength: 8 }).map((each) => each.join('')),
  );
  fc.assert(
    fc.property(text, fc.constantFrom('m', 'mm²', '°', '°C', 'Ω', ''), (typed, unit) => {
      const said = readQuantity(typed, unit);
      if (said.kind === 'value') expect(Number.isFinite(said.value)).toBe(true);
      if (said.kind === 'refused') {
        expect(said.found).not.toBe('');
        expect(said.mend).toMatch(/\.$/);
      }
    }),
    { numRuns: 2000 },
  );
});

test('law: feet and inches add up as inches do', () => {
  fc.assert(
    fc.property(fc.nat(99), fc.nat(11), fc.constantFrom('', ' 1/2', ' 3/4'), (feet, inches, part) => {
      const extra = part === '' ? 0 : part === ' 1/2' ? 0.5 : 0.75;
      const whole = read(`${feet} ft ${inches}${part} in`, 'mm') as number;
      expect(whole).toBeCloseTo((feet * 12 + inches + extra) * 25.4, 9);
    }),
  );
});
