import { AWG_SIZES, type AwgSize } from '@eaveline/physics';

/** Thinnest gauge that is read; house wiring ends long before. */
const THINNEST = 40;
/** `1/0` to `4/0`, and the same as rows of noughts. */
const AUGHT = /^(?:([1-4])\/0|(0{1,4}))$/;
const NUMBER = '(\\d{1,2}|[1-4] ?/ ?0|0{1,4})';
const MARKED_BEFORE = new RegExp(`^(?:awg|#|no\\.?|gauge) ?${NUMBER}(?: ?(?:awg|ga|gauge))?$`, 'i');
const MARKED_BEHIND = new RegExp(`^${NUMBER} ?(?:awg|ga|gauge)$`, 'i');
const BARE_AUGHT = /^[1-4] ?\/ ?0$/;

/**
 * The American wire gauge a text of plain signs names, as its number: 10 of `10 AWG`, −1 of `2/0`.
 * A bare number is none: it could be mm².
 */
export function gaugeNumber(text: string): number | undefined {
  const named = (MARKED_BEFORE.exec(text) ?? MARKED_BEHIND.exec(text))?.[1] ?? BARE_AUGHT.exec(text)?.[0];
  if (named === undefined) return undefined;
  const close = named.replaceAll(' ', '');
  const aught = AUGHT.exec(close);
  if (aught !== null) return 1 - (aught[1] === undefined ? close.length : Number(aught[1]));
  const number = Number(close);
  return number <= THINNEST ? number : undefined;
}

/**
 * Cross-section of a gauge, mm²: that of a solid round wire of its diameter,
 *
 *     d = 0.127 mm · 92^((36 − n)/39)    A = π/4 · d²
 *
 * with n = 0, −1, −2, −3 for 1/0 to 4/0. A stranded conductor of that gauge has the same metal.
 *
 * Source: ASTM B258, definition of the American wire gauge (0.0050 in for No. 36, 0.4600 in for No. 0000, 39 steps).
 */
export function gaugeAreaMm2(n: number): number {
  const diameterMm = 0.127 * 92 ** ((36 - n) / 39);
  return (Math.PI / 4) * diameterMm ** 2;
}

/** `10 AWG`, `2/0 AWG`: a gauge number as it stands on a cable. */
export function gaugeWords(n: number): string {
  return `${n > 0 ? n : `${1 - n}/0`} AWG`;
}

/** The gauge whose defined area this is, to a thousandth; undefined where it is none. */
export function gaugeOfArea(areaMm2: number): number | undefined {
  for (let n = -3; n <= THINNEST; n++) {
    if (Math.abs(areaMm2 / gaugeAreaMm2(n) - 1) < 1e-3) return n;
  }
  return undefined;
}

/** The name under which the tables hold a gauge; undefined where they do not hold it. */
export function gaugeSize(n: number): AwgSize | undefined {
  const name = n > 0 ? String(n) : `${1 - n}/0`;
  return AWG_SIZES.find((size) => size === name);
}
