/** Vulgar fractions, each as a space and the fraction written out: `4½` is `4 1/2` and not 41/2. */
const FRACTIONS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/**
 * Signs that stand for another one on keyboards, in spreadsheets and in word processors. Raised figures keep their
 * height: `10²` is not 102.
 */
const ALIKE: readonly (readonly [RegExp, string])[] = [
  [/[\s\u00a0\u2007\u2009\u200a\u202f\u3000]+/g, ' '],
  [/[\u200b\u200e\u200f\u2060\ufeff]/g, ''],
  [/[\u2212\u2010-\u2013\ufe63\uff0d]/g, '-'],
  [/[\u2032\u2018\u2019\u00b4`]/g, "'"],
  [/[\u2033\u201c\u201d\u201f]|''/g, '"'],
  [/[\u2044\u2215\uff0f]/g, '/'],
  [/[\u00d7]/g, 'x'],
  [/[\u2219\u22c5\u2022\u00b7]/g, '·'],
  [/[\u00ba\u02da]/g, '°'],
  [/\u2103/g, '°C'],
  [/\u2109/g, '°F'],
  [/\u2126/g, 'Ω'],
  [/\u00b5/g, 'μ'],
  [/\u00b2/g, '^2'],
  [/\u00b3/g, '^3'],
];

/** Typed text with each sign in its plain form, spaces single, none at the ends. */
export function plainSigns(typed: string): string {
  const written = typed.replace(/[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]/g, (sign) => ` ${FRACTIONS[sign]}`);
  return ALIKE.reduce((text, [sign, plain]) => text.replace(sign, plain), written).trim();
}
