/** Signs a face has to letter, in groups that are read as lines of a proof. */
export const SIGNS = {
  figures: '0123456789',
  'capital letters': 'ABCDEFGHIJKLMNOPQRSTUVWXYZ',
  'small letters': 'abcdefghijklmnopqrstuvwxyz',
  'marks of a sentence': '.,;:!?()[]–—‘’“”…·/&',
  'signs of a sum': '+−±×÷=<>≤≥≈√%‰°',
  'units and powers': 'µ²³¹½¼ΩΔ',
  fractions: '¼½¾⅓⅔⅛⅜⅝⅞',
  'below the line': '₀₁₂₃₄₅₆₇₈₉',
  arrows: '←↑→↓',
  'Greek quantities': 'αβγδεηθλμπρσφωΔΣΦ',
  'western letters': 'ÀÁÂÃÄÅÆÇÈÉÊËÌÍÎÏÑÒÓÔÕÖØÙÚÛÜÝÞßàáâãäåæçèéêëìíîïðñòóôõöøùúûüýþÿ',
  'middle European letters': 'ĄąĆćČčĎďĐđĘęĚěĹĺĽľŁłŃńŇňŐőŔŕŘřŚśŠšŤťŮůŰűŹźŻżŽž',
  'Baltic, Turkish, Romanian, Celtic': 'ĀāĒēĢģĪīĶķĻļŅņŪūĖėĮįŲųĞğİıŞşȘșȚțŴŵŶŷ',
} as const;

/** Drawn with a pen, never lettered: no face of ours holds all three. */
export const DRAWN = ['✓', '✗', '☐', '☑'] as const;

/** What each face is asked for: symbols of quantities are letters only. */
export const FACES = [
  { name: 'Plain', family: 'var(--face-plain)', weights: [400, 700], groups: Object.keys(SIGNS) },
  { name: 'Close', family: 'var(--face-close)', weights: [500, 700], groups: Object.keys(SIGNS) },
  {
    name: 'Symbol',
    family: 'var(--face-symbol)',
    weights: [400, 700],
    groups: ['capital letters', 'small letters', 'Greek quantities'],
  },
] as const satisfies readonly {
  readonly name: string;
  readonly family: string;
  readonly weights: readonly number[];
  readonly groups: readonly string[];
}[];
