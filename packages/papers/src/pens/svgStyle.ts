import type { Ink, WireColour } from '../drawing/model.ts';
import { type FontName, type Fonts, fontNames } from '../type/faces.ts';
import { dashes, inkVariables, printInks, stripeDash, stripeInk, wireInks } from './inks.ts';

/** Families and weights by which a page knows the fonts of a drawing. */
const families: Readonly<
  Record<FontName, { readonly family: string; readonly weight: number; readonly italic?: true }>
> = {
  'plain-400': { family: 'Eaveline Plain', weight: 400 },
  'plain-700': { family: 'Eaveline Plain', weight: 700 },
  'close-500': { family: 'Eaveline Close', weight: 500 },
  'close-700': { family: 'Eaveline Close', weight: 700 },
  'second-400': { family: 'Eaveline Second', weight: 400 },
  'second-700': { family: 'Eaveline Second', weight: 700 },
  'symbol-400': { family: 'Eaveline Symbol', weight: 400, italic: true },
  'symbol-greek-400': { family: 'Eaveline Symbol Greek', weight: 400, italic: true },
};

/** What letters a run where its own font did not arrive; `textLength` holds the line to its length. */
const standIns: Readonly<Record<FontName, string>> = {
  'plain-400': 'Verdana,sans-serif',
  'plain-700': 'Verdana,sans-serif',
  'close-500': '"Arial Narrow",sans-serif',
  'close-700': '"Arial Narrow",sans-serif',
  'second-400': '"Eaveline Plain",sans-serif',
  'second-700': '"Eaveline Plain",sans-serif',
  'symbol-400': 'serif',
  'symbol-greek-400': '"Eaveline Symbol",serif',
};

const pens = [0.18, 0.25, 0.35, 0.5, 0.7, 1];

/**
 * The style sheet of every drawing. A page that shows several includes it once.
 *
 * A page themes drawings with the custom properties of its papers; `--pen-scale` thickens every
 * pen (roof paper: 1.4, one step of ISO 128).
 */
export const svgStyle = [
  '.ev{font-kerning:none;font-variant-ligatures:none;background:var(--film,#fff)}',
  '.ev-s{fill:none;stroke-linejoin:miter;stroke-linecap:butt}',
  '.ev-f{stroke:none;fill-rule:evenodd}',
  '.ev-sign{fill:none;stroke-linejoin:miter}',
  `.ev-halo text,.ev-halo path{paint-order:stroke}`,
  `.ev-halo text{stroke:var(--film,${printInks.film});stroke-width:var(--halo);stroke-linejoin:round}`,
  '.ev-of{cursor:pointer;pointer-events:all;pointer-events:bounding-box}',
  `.ev-of:focus-visible{outline:.7px solid var(--ink,${printInks.ink});outline-offset:.8px}`,
  ...pens.map(
    (pen) => `.ev-p${String(Math.round(pen * 100)).padStart(3, '0')}{stroke-width:calc(${pen}px * var(--pen-scale,1))}`,
  ),
  ...(Object.keys(dashes) as (keyof typeof dashes)[])
    .filter((kind) => dashes[kind].length > 0)
    .map((kind) => `.ev-${kind}{stroke-dasharray:${dashes[kind].join(' ')}}`),
  ...(Object.keys(printInks) as Ink[]).map(inkRule),
  `.ev-casing{stroke:var(--casing,${printInks.ink})}`,
  ...(Object.keys(wireInks) as WireColour[]).map((wire) => `.ev-w-${wire}{stroke:${wireVariable(wire)}}`),
  `.ev-stripe{stroke:var(--wire-yellow,${stripeInk});stroke-dasharray:${stripeDash.join(' ')}}`,
  ...fontNames.map(fontRule),
].join('\n');

function inkRule(ink: Ink): string {
  const colour = `var(${inkVariables[ink]},${printInks[ink]})`;
  const sign = `.ev-t.ev-${ink} .ev-sign`;
  return `.ev-s.ev-${ink},${sign}{stroke:${colour}}.ev-f.ev-${ink},.ev-t.ev-${ink}{fill:${colour}}${sign}{fill:none}`;
}

function wireVariable(wire: WireColour): string {
  return `var(--wire-${wire === 'green-yellow' ? 'green' : wire},${wireInks[wire]})`;
}

function fontRule(name: FontName): string {
  const { family, weight, italic } = families[name];
  return `.ev-${name}{font-family:"${family}",${standIns[name]};font-weight:${weight}${italic ? ';font-style:italic' : ''}}`;
}

/** `@font-face` rules that carry the fonts inside, for a file that has to stand alone. */
export function fontFaces(fonts: Fonts | undefined): string {
  if (fonts === undefined) return '';
  return fontNames.map((name) => fontFace(name, `data:font/woff;base64,${base64(fonts[name])}`)).join('\n');
}

/** The `@font-face` rule of one font: `family` and weight as the drawings name it, bytes from `url`. */
export function fontFace(name: FontName, url: string): string {
  const { family, weight, italic } = families[name];
  return `@font-face{font-family:"${family}";font-weight:${weight};font-style:${italic ? 'italic' : 'normal'};src:url(${url}) format("woff")}`;
}

const DIGITS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';

/** Base64 (RFC 4648 §4), written out because neither Node's nor the browser's own is in both. */
function base64(bytes: Uint8Array): string {
  let out = '';
  for (let k = 0; k < bytes.length; k += 3) {
    const [a, b, c] = [bytes[k] as number, bytes[k + 1], bytes[k + 2]];
    const word = (a << 16) | ((b ?? 0) << 8) | (c ?? 0);
    out += DIGITS[word >> 18];
    out += DIGITS[(word >> 12) & 63];
    out += b === undefined ? '=' : DIGITS[(word >> 6) & 63];
    out += c === undefined ? '=' : DIGITS[word & 63];
  }
  return out;
}
