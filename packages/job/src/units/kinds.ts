/** One unit of a kind of quantity, and how people spell it. */
export interface Unit {
  /** As Eaveline shows it. */
  readonly symbol: string;
  /** As it is read, the symbol among them. */
  readonly spelled: readonly string[];
  /** How many of the kind's base unit it is. */
  readonly per: number;
  /** Added before the factor, for a scale whose nought lies elsewhere. */
  readonly shift?: number;
  /** A small letter in them would mean another unit, mΩ and MΩ: these spellings are read as they stand. */
  readonly exactCase?: boolean;
  /** The unit written out, in which case never matters. */
  readonly words?: readonly string[];
  /** Smaller units that may follow it, `6 ft 4 in`, and how many make one of it. */
  readonly smaller?: readonly { readonly symbol: string; readonly under: number; readonly bare?: boolean }[];
}

/** A kind of quantity: its units, and the words a refusal needs. */
export interface Kind {
  /** `a length`. */
  readonly name: string;
  readonly units: readonly Unit[];
  /** Ways to type it, for a refusal. */
  readonly typed: string;
  /** Least there can be, in the base unit, and what to say below it. */
  readonly least?: { readonly value: number; readonly says: string };
}

/** International foot, m, exact: NIST SP 811 (2008), appendix B.6. */
const FOOT_M = 0.3048;
const INCH_M = 0.0254;
/** Pound-force, N, exact: 0.45359237 kg · 9.80665 m/s². NIST SP 811, appendix B. */
const POUND_FORCE_N = 4.4482216152605;
/** One circular mil, mm²: a circle of 0.001 in across. */
const KCMIL_MM2 = (Math.PI / 4) * 1000 * (0.001 * 25.4) ** 2;
/** Mechanical horsepower, W: 550 ft·lbf/s, 745.6999 in NIST SP 811. */
const HORSEPOWER_W = 550 * FOOT_M * POUND_FORCE_N;

const unit = (
  symbol: string,
  per: number,
  spelled: string,
  more: Omit<Partial<Unit>, 'symbol' | 'per'> = {},
): Unit => ({
  symbol,
  per,
  spelled: [symbol, ...spelled.split(', ').filter((word) => word !== '')],
  ...more,
});

const LENGTH: Kind = {
  name: 'a length',
  typed: '1.2 m, 1200 mm or 3 ft 11 1/4 in',
  units: [
    unit('m', 1, 'metre, metres, meter, meters, mtr', {
      smaller: [
        { symbol: 'cm', under: 100 },
        { symbol: 'mm', under: 1000 },
      ],
    }),
    unit('mm', 0.001, 'millimetre, millimetres, millimeter, millimeters'),
    unit('cm', 0.01, 'centimetre, centimetres, centimeter, centimeters', { smaller: [{ symbol: 'mm', under: 10 }] }),
    unit('km', 1000, 'kilometre, kilometres, kilometer, kilometers'),
    unit('ft', FOOT_M, "', foot, feet", { smaller: [{ symbol: 'in', under: 12, bare: true }] }),
    unit('in', INCH_M, '", inch, inches'),
    unit('yd', 3 * FOOT_M, 'yard, yards', { smaller: [{ symbol: 'ft', under: 3 }] }),
  ],
};

const AREA: Kind = {
  name: 'an area',
  typed: '12 m² or 130 sq ft',
  units: [
    unit('m²', 1, 'm^2, m2, sq m, sqm, square metre, square metres, square meter, square meters'),
    unit('ft²', FOOT_M ** 2, 'ft^2, ft2, sq ft, sqft, square foot, square feet'),
  ],
};

const CROSS_SECTION: Kind = {
  name: 'a cross-section',
  typed: '6 mm², 10 AWG or 250 kcmil',
  units: [
    unit(
      'mm²',
      1,
      'mm^2, mm2, sq mm, sqmm, sq. mm, mm sq, square millimetre, square millimetres, square millimeter, square millimeters',
    ),
    unit('kcmil', KCMIL_MM2, 'kcm, MCM'),
  ],
};

const CURRENT: Kind = {
  name: 'a current',
  typed: '16 A, 30 mA or 6 kA',
  units: [
    unit('A', 1, 'amp, amps, ampere, amperes'),
    unit('mA', 0.001, '', { exactCase: true, words: ['milliamp', 'milliamps', 'milliampere', 'milliamperes'] }),
    unit('kA', 1000, 'kiloamp, kiloamps'),
  ],
};

const VOLTAGE: Kind = {
  name: 'a voltage',
  typed: '230 V or 0.4 kV',
  units: [
    unit('V', 1, 'volt, volts, Vac, Vdc, V AC, V DC, V a.c., V d.c.'),
    unit('kV', 1000, 'kilovolt, kilovolts'),
    unit('mV', 0.001, '', { exactCase: true, words: ['millivolt', 'millivolts'] }),
  ],
};

const POWER: Kind = {
  name: 'a power',
  typed: '1500 W, 1.5 kW or 2 hp',
  units: [
    unit('W', 1, 'watt, watts'),
    unit('kW', 1000, 'kilowatt, kilowatts'),
    unit('MW', 1e6, '', { exactCase: true, words: ['megawatt', 'megawatts'] }),
    unit('hp', HORSEPOWER_W, 'horsepower'),
  ],
};

const APPARENT_POWER: Kind = {
  name: 'an apparent power',
  typed: '4600 VA or 4.6 kVA',
  units: [
    unit('VA', 1, 'volt-ampere, volt-amperes, volt ampere, volt amperes'),
    unit('kVA', 1000, ''),
    unit('MVA', 1e6, '', { exactCase: true }),
  ],
};

const ENERGY: Kind = {
  name: 'an energy',
  typed: '9.2 kWh or 9200 Wh',
  units: [
    unit('Wh', 1, 'W·h, watt hour, watt hours, watt-hour, watt-hours'),
    unit('kWh', 1000, 'kW·h, kilowatt hour, kilowatt hours, kilowatt-hour, kilowatt-hours'),
    unit('MWh', 1e6, '', { exactCase: true, words: ['megawatt hour', 'megawatt hours'] }),
    unit('MJ', 1e6 / 3600, '', { exactCase: true }),
  ],
};

const RESISTANCE: Kind = {
  name: 'a resistance',
  typed: '0.35 Ω, 350 mΩ or 2 MΩ',
  units: [
    unit('Ω', 1, 'ohm, ohms'),
    unit('mΩ', 0.001, 'mohm, mohms, mOhm, mOhms', { exactCase: true, words: ['milliohm', 'milliohms'] }),
    unit('kΩ', 1000, 'kohm, kohms, kiloohm, kiloohms'),
    unit('MΩ', 1e6, 'Mohm, Mohms, MOhm, MOhms', {
      exactCase: true,
      words: ['megohm', 'megohms', 'megaohm', 'megaohms'],
    }),
  ],
};

const TEMPERATURE: Kind = {
  name: 'a temperature',
  typed: '−5 °C, 23 °F or 268.15 K',
  least: { value: -273.15, says: 'colder than anything can be' },
  units: [
    unit('°C', 1, 'C, deg C, degC, degrees C, ° C, celsius, degrees celsius'),
    // (F − 32) / 1.8
    unit('°F', 1 / 1.8, 'F, deg F, degF, degrees F, ° F, fahrenheit, degrees fahrenheit', { shift: -32 }),
    unit('K', 1, 'kelvin, kelvins', { shift: -273.15 }),
  ],
};

const ANGLE: Kind = {
  name: 'an angle',
  typed: '26.6, 6/12 or 50 %',
  units: [
    unit('°', 1, 'deg, degs, degree, degrees', {
      smaller: [
        { symbol: '′', under: 60 },
        { symbol: '″', under: 3600 },
      ],
    }),
    unit('′', 1 / 60, "', arcmin", { smaller: [{ symbol: '″', under: 60 }] }),
    unit('″', 1 / 3600, '", arcsec'),
    unit('rad', 180 / Math.PI, 'radian, radians'),
  ],
};

const TORQUE: Kind = {
  name: 'a torque',
  typed: '2.5 N·m, 22 in-lb or 12 ft-lb',
  units: [
    unit('N·m', 1, 'Nm, N m, N-m, N.m, newton metre, newton metres, newton-metre, newton-metres, newton meters'),
    unit(
      'in·lb',
      INCH_M * POUND_FORCE_N,
      'in-lb, in-lbs, in lb, in lbs, inlb, in.-lb, in·lbf, in-lbf, lbf·in, lbf-in, lb-in, lb·in, lb in, inch-pounds, inch pounds, inch-pound',
    ),
    unit(
      'ft·lb',
      FOOT_M * POUND_FORCE_N,
      'ft-lb, ft-lbs, ft lb, ft lbs, ftlb, ft.-lb, ft·lbf, ft-lbf, lbf·ft, lbf-ft, lb-ft, lb·ft, lb ft, foot-pounds, foot pounds, foot-pound',
    ),
  ],
};

const SPEED: Kind = {
  name: 'a speed',
  typed: '45 m/s, 160 km/h or 100 mph',
  units: [
    unit('m/s', 1, 'mps, metres per second, meters per second'),
    unit('km/h', 1 / 3.6, 'kmh, kph, km/hr, kilometres per hour, kilometers per hour'),
    unit('mph', (5280 * FOOT_M) / 3600, 'mi/h, miles per hour'),
    unit('kn', 1852 / 3600, 'kt, kts, knot, knots'),
    unit('ft/s', FOOT_M, 'fps, feet per second'),
  ],
};

const PRESSURE: Kind = {
  name: 'a pressure',
  typed: '1.44 kPa or 30 psf',
  units: [
    unit('kPa', 1, 'kN/m^2, kN/m2, kilopascal, kilopascals'),
    unit('Pa', 0.001, 'N/m^2, N/m2, pascal, pascals'),
    unit('psf', POUND_FORCE_N / FOOT_M ** 2 / 1000, 'lb/ft^2, lb/ft2, lbf/ft^2, lbf/ft2, lb/sq ft, lbs/sq ft'),
    unit('MPa', 1000, '', { exactCase: true }),
  ],
};

const TIME: Kind = {
  name: 'a time',
  typed: '90 s, 15 min or 1 h 30 min',
  units: [
    unit('s', 1, 'sec, secs, second, seconds'),
    unit('min', 60, 'mins, minute, minutes', { smaller: [{ symbol: 's', under: 60 }] }),
    unit('h', 3600, 'hr, hrs, hour, hours', {
      smaller: [
        { symbol: 'min', under: 60, bare: true },
        { symbol: 's', under: 3600 },
      ],
    }),
    unit('d', 86_400, 'day, days'),
    unit('ms', 0.001, 'millisecond, milliseconds', { exactCase: true }),
  ],
};

const MASS: Kind = {
  name: 'a mass',
  typed: '21.5 kg or 47 lb',
  units: [
    unit('kg', 1, 'kilogram, kilograms, kilo, kilos'),
    unit('g', 0.001, 'gram, grams'),
    unit('lb', 0.45359237, 'lbs, pound, pounds'),
  ],
};

const SHARE: Kind = { name: 'a share', typed: '20 or 20 %', units: [unit('%', 1, 'percent, per cent')] };

/** All kinds, in the order in which a text is tried when its own kind does not read it. */
export const KINDS: readonly Kind[] = [
  LENGTH,
  CROSS_SECTION,
  AREA,
  CURRENT,
  VOLTAGE,
  POWER,
  APPARENT_POWER,
  ENERGY,
  RESISTANCE,
  TEMPERATURE,
  ANGLE,
  TORQUE,
  SPEED,
  PRESSURE,
  TIME,
  MASS,
  SHARE,
];

/** The kind of a unit a field is kept in. A unit of no kind here (`pieces`, `W/m²`) is a kind of its own, read as it is. */
export function kindOf(keptIn: string): Kind {
  const known = KINDS.find(({ units }) => units.some(({ symbol }) => symbol === keptIn));
  if (known !== undefined) return known;
  return { name: 'a number', typed: keptIn === '' ? '12' : `12 ${keptIn}`, units: [unit(keptIn, 1, '')] };
}

/** A kind's unit by its symbol. */
export function unitOf(kind: Kind, symbol: string): Unit {
  const found = kind.units.find((each) => each.symbol === symbol);
  if (found === undefined) throw new Error(`${symbol} is no unit of ${kind.name}`);
  return found;
}

/** True for a kind whose text may say a slope as rise over run. */
export const isAngle = (kind: Kind): boolean => kind === ANGLE;
/** True for the kind in which a gauge stands for an area. */
export const isCrossSection = (kind: Kind): boolean => kind === CROSS_SECTION;
