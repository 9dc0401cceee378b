import type { Arc, Drawing, Fill, Leaf, Marked, Point, Text, Tube } from '../drawing/model.ts';
import { type Settled, type SettledGroup, settle } from '../drawing/settle.ts';
import { signStroke } from '../type/drawnSigns.ts';
import type { Fonts } from '../type/faces.ts';
import { metrics } from '../type/metrics.ts';
import { type FontRun, type Run, runsOf } from '../type/runs.ts';
import { haloPart, casingMm as rim } from './inks.ts';
import { fontFaces, svgStyle } from './svgStyle.ts';

export interface SvgOptions {
  /** `whole` puts the style sheet inside (a file of its own); `none` leaves it to a page that has `svgStyle`. */
  readonly style?: 'whole' | 'none';
  /** Makes everything with an `of` a button that can be reached by keyboard, named by its `label`. */
  readonly focusable?: boolean;
  /** Typefaces carried inside the file, so that it looks the same everywhere. */
  readonly fonts?: Fonts;
  /** Language of the words, BCP 47. */
  readonly lang?: string;
}

/**
 * A drawing as SVG: one unit of the view box is a millimetre, the sheet has its true size.
 *
 * The y of every point is mirrored about the sheet here; nothing is turned over. Colours are
 * custom properties with the inks of print to fall back on, so that a page can put the drawing on
 * another paper. Every run of lettering states where it starts and how long it is.
 */
export function svgOf(drawing: Drawing, options: SvgOptions = {}): string {
  const sheet = settle(drawing);
  const pen: Pen = { heightMm: sheet.heightMm, focusable: options.focusable ?? false };
  const body = sheet.items.map((item) => settledSvg(item, pen)).join('\n');
  const style = options.style === 'none' ? '' : `<style>${fontFaces(options.fonts)}${svgStyle}</style>\n`;
  const [w, h] = [mm(sheet.widthMm), mm(sheet.heightMm)];
  const lang = options.lang === undefined ? '' : ` lang="${escaped(options.lang)}"`;
  return `<svg xmlns="http://www.w3.org/2000/svg" class="ev" viewBox="0 0 ${w} ${h}" width="${w}mm" height="${h}mm" role="group" aria-label="${escaped(sheet.title)}"${lang}>
<title>${escaped(sheet.title)}</title>
${style}${body}
</svg>
`;
}

interface Pen {
  readonly heightMm: number;
  readonly focusable: boolean;
}

function settledSvg(item: Settled, pen: Pen): string {
  return item.kind === 'group' ? groupSvg(item, pen) : leafSvg(item, pen);
}

function groupSvg(item: SettledGroup, pen: Pen): string {
  const inside = item.items.map((child) => settledSvg(child, pen)).join('');
  const named = naming(item, pen);
  return named === '' ? inside : `<g${named}>${inside}</g>`;
}

/** What makes a thing selectable: its id always, a button's name and place in the tab order if asked for. */
function naming({ of, label }: Pick<Marked, 'of' | 'label'>, pen: Pen): string {
  if (of === undefined) return label === undefined ? '' : ` role="img" aria-label="${escaped(label)}"`;
  const id = ` data-of="${escaped(of)}"`;
  return pen.focusable ? `${id} class="ev-of" role="button" tabindex="0" aria-label="${escaped(label ?? of)}"` : id;
}

function leafSvg(item: Leaf, pen: Pen): string {
  const named = naming(item, pen);
  const drawn = shapeSvg(item, pen);
  return named === '' ? drawn : `<g${named}>${drawn}</g>`;
}

function shapeSvg(item: Leaf, pen: Pen): string {
  switch (item.kind) {
    case 'line':
      return stroke(item, `M${at(item.from, pen)}L${at(item.to, pen)}`);
    case 'polyline':
      return stroke(item, path(item.points, item.closed, pen));
    case 'arc':
      return stroke(item, arcPath(item, pen));
    case 'fill':
      return fillSvg(item, pen);
    case 'tube':
      return tubeSvg(item, pen);
    case 'text':
      return textSvg(item, pen);
    default: {
      const never: never = item;
      return never;
    }
  }
}

function stroke(item: Marked, d: string): string {
  const kind = item.line === 'full' ? '' : ` ev-${item.line}`;
  return `<path class="ev-s ev-p${penName(item.pen)} ev-${item.ink}${kind}" data-layer="${item.layer}" d="${d}"/>`;
}

function fillSvg(item: Fill, pen: Pen): string {
  const d = item.outlines.map((outline) => path(outline, true, pen)).join('');
  return `<path class="ev-f ev-${item.ink}" data-layer="${item.layer}" d="${d}"/>`;
}

function tubeSvg(item: Tube, pen: Pen): string {
  const d = path(item.points, false, pen);
  const wide = `stroke-width:calc(${mm(item.coreMm + 2 * rim)}px * var(--pen-scale,1))`;
  const core = `stroke-width:calc(${mm(item.coreMm)}px * var(--pen-scale,1))`;
  const stripe = item.wire === 'green-yellow' ? `<path class="ev-s ev-stripe" style="${core}" d="${d}"/>` : '';
  return `<path class="ev-s ev-casing" data-layer="${item.layer}" style="${wide}" d="${d}"/><path class="ev-s ev-w-${item.wire}" style="${core}" d="${d}"/>${stripe}`;
}

function textSvg(item: Text, pen: Pen): string {
  const width = metrics.widthMm(item.text, item);
  const lead = item.anchor === 'start' ? 0 : item.anchor === 'middle' ? width / 2 : width;
  const [x, y] = [item.at[0], pen.heightMm - item.at[1]];
  const turn = item.rotateDeg === 0 ? '' : ` transform="rotate(${mm(-item.rotateDeg)} ${mm(x)} ${mm(y)})"`;
  const halo = item.halo ? ` ev-halo" style="--halo:${mm(item.capMm * haloPart)}px` : '';
  const runs = runsOf(item.text, item).map((run) => runSvg(run, x - lead, y, item));
  return `<g class="ev-t ev-${item.ink}${halo}" data-layer="${item.layer}"${turn}>${runs.join('')}</g>`;
}

function runSvg(run: Run, startX: number, y: number, item: Text): string {
  const x = startX + run.xMm;
  if (run.font !== 'drawn') return fontRunSvg(run, x, y);
  if (run.sign.strokes.length === 0) return '';
  const d = run.sign.strokes
    .map((points) =>
      points
        .map(([sx, sy], k) => `${k === 0 ? 'M' : 'L'}${mm(x + sx * item.capMm)} ${mm(y - sy * item.capMm)}`)
        .join(''),
    )
    .join('');
  return `<path class="ev-sign" role="img" aria-label="${run.sign.name}" style="stroke-width:${mm(item.capMm * signStroke)}px" d="${d}"/>`;
}

function fontRunSvg(run: FontRun, x: number, y: number): string {
  return `<text class="ev-${run.font}" x="${mm(x)}" y="${mm(y)}" font-size="${thousandths(run.emMm)}" textLength="${thousandths(run.widthMm)}" xml:space="preserve">${escaped(run.text)}</text>`;
}

/** SVG's y runs down, so an arc that runs counter-clockwise keeps sweep flag 0. */
function arcPath({ at: [x, y], radiusMm, startDeg, endDeg }: Arc, pen: Pen): string {
  const r = mm(radiusMm);
  const on = (deg: number): string => {
    const turn = (deg * Math.PI) / 180;
    return at([x + radiusMm * Math.cos(turn), y + radiusMm * Math.sin(turn)], pen);
  };
  const sweepDeg = endDeg - startDeg;
  if (Math.abs(sweepDeg) >= 360) {
    return `M${on(startDeg)}A${r} ${r} 0 1 0 ${on(startDeg + 180)}A${r} ${r} 0 1 0 ${on(startDeg)}Z`;
  }
  const [large, flag] = [Math.abs(sweepDeg) > 180 ? 1 : 0, sweepDeg > 0 ? 0 : 1];
  return `M${on(startDeg)}A${r} ${r} 0 ${large} ${flag} ${on(endDeg)}`;
}

function path(points: readonly Point[], closed: boolean, pen: Pen): string {
  return `${points.map((p, k) => `${k === 0 ? 'M' : 'L'}${at(p, pen)}`).join('')}${closed ? 'Z' : ''}`;
}

function at([x, y]: Point, pen: Pen): string {
  return `${mm(x)} ${mm(pen.heightMm - y)}`;
}

/** Two decimals, as the model has them. */
function mm(value: number): string {
  return String(Math.round(value * 100) / 100 + 0);
}

function thousandths(value: number): string {
  return String(Math.round(value * 1000) / 1000);
}

function penName(pen: Marked['pen']): string {
  return String(Math.round(pen * 100)).padStart(3, '0');
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
}
