/**
 * Units that stand over the digits of a phone, by the unit a field is kept in: the ones a tape, a meter or a plate is
 * read in. Every spelling the trade uses can still be typed with letters.
 */
const UNITS_OF: Readonly<Record<string, readonly string[]>> = {
  m: ['m', 'mm', 'ft', 'in'],
  mm: ['mm', 'm', 'ft', 'in'],
  'mm²': ['mm²', 'AWG', 'kcmil'],
  A: ['A', 'mA', 'kA'],
  kA: ['kA', 'A'],
  V: ['V', 'kV'],
  VA: ['VA', 'kVA'],
  W: ['W', 'kW', 'hp'],
  kW: ['kW', 'W', 'hp'],
  kWh: ['kWh', 'Wh'],
  Ω: ['Ω', 'mΩ', 'kΩ', 'MΩ'],
  MΩ: ['MΩ', 'kΩ'],
  '°C': ['°C', '°F'],
  '°': ['°', '%', 'in 12'],
  'm/s': ['m/s', 'km/h', 'mph', 'kn'],
  kPa: ['kPa', 'psf'],
  h: ['h', 'min'],
  min: ['min', 's', 'h'],
  s: ['s', 'min'],
};
/** Fields that go below nought, which a phone's digits cannot say. */
const BELOW_NOUGHT = new Set(['°C', '°']);

/** Units offered for a field, its own first; none where it is counted in pieces or has no unit. */
export function unitsOffered(unit: string): readonly string[] {
  return UNITS_OF[unit] ?? [];
}

/** True where a minus has to be typed now and then. */
export function goesBelowNought(unit: string): boolean {
  return BELOW_NOUGHT.has(unit);
}

/**
 * The text with a unit behind its last figure: `12` and ft make `12 ft `, with room for the inches. A unit just
 * pressed gives way to another.
 */
export function withUnitTyped(text: string, unit: string, field: string): string {
  const bare = text.trimEnd();
  const pressed = [...unitsOffered(field)]
    .sort((a, b) => b.length - a.length)
    .find((each) => new RegExp(`[\\d.,\\s]${each.replace(/[/%]/g, '\\$&')}$`).test(bare));
  const figures = pressed === undefined ? bare : bare.slice(0, -pressed.length).trimEnd();
  if (figures === '') return text;
  return `${figures} ${unit} `;
}

/** The text with its minus put before it, or taken away. */
export function withMinusTurned(text: string): string {
  const bare = text.trimStart();
  return /^[-\u2212]/.test(bare) ? bare.slice(1).trimStart() : `\u2212${bare}`;
}
