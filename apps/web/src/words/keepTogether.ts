/** Units that sentences of the plan carry; a number is never parted from one at the end of a line. */
const UNITS =
  'V|kV|A|kA|VA|kVA|W|kW|Wh|kWh|MWh|mm|mm²|m|m²|km|m/s|°C|Ω|mΩ|Hz|MPa|kPa|N|kN|kg|h|min|s|%|°|AWG|modules|hours';
const BEFORE_UNIT = new RegExp(`(\\d) (?=(?:${UNITS})(?![\\p{L}\\d]))`, 'gu');

/** The same sentence with number and unit on one line, and thousands set as in every figure: `12\u202f190\u00a0VA`. */
export function keepTogether(words: string): string {
  return words
    .replace(BEFORE_UNIT, '$1\u00a0')
    .replace(/(?<![\d.])\d{4,}(?=\u00a0)/g, (digits) => digits.replace(/\B(?=(\d{3})+$)/g, '\u202f'));
}
