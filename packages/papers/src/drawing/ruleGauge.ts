import { Refusal } from '@eaveline/physics';
import { metrics } from '../type/metrics.ts';
import { corners, group, hatched, line, polygon, solid, text } from './make.ts';
import type { Anchor, Group, Ink, Item, Point } from './model.ts';

export interface Gauge {
  /** Left end of the line. Words reach 8 mm above it, 9 mm below, and half a figure past its ends. */
  readonly at: Point;
  readonly widthMm: number;
  readonly from: number;
  readonly to: number;
  readonly unit: string;
  /** The limit and the side of it that is not allowed. */
  readonly limit?: { readonly value: number; readonly forbidden: 'above' | 'below'; readonly text: string };
  /** What the design predicts: a band and its middle. */
  readonly predicted?: { readonly low: number; readonly middle: number; readonly high: number };
  readonly reading?: { readonly value: number; readonly text: string };
  /** What a mend would bring. */
  readonly offered?: { readonly value: number; readonly text: string };
  readonly of?: string;
  /** What a screen reader says instead of the picture. */
  readonly label: string;
}

const CAP = 2.5;

/**
 * The rule: the one gauge for a value against a limit or a prediction.
 *
 * The side not allowed is hatched and begins at a heavy stroke, the prediction stands as a band,
 * the reading hangs as a solid needle, red only when it is past the limit. A needle beyond an end
 * of the line stops there and its words still say the value.
 *
 * @throws {Refusal} `inconsistent` when the line has no length.
 */
export function ruleGauge(gauge: Gauge): Group {
  if (!(gauge.to > gauge.from) || !(gauge.widthMm > 0)) {
    throw new Refusal({
      code: 'inconsistent',
      at: 'gauge',
      got: `${gauge.from} to ${gauge.to} over ${gauge.widthMm} mm`,
      want: 'a line that rises from its left end to its right',
      mend: 'Give from below to, and a width above 0 mm.',
    });
  }
  const items = [...forbidden(gauge), ...band(gauge), ...axis(gauge), ...needles(gauge), ...limitWords(gauge)];
  return group('rule', items, {
    role: 'figure',
    label: gauge.label,
    ...(gauge.of === undefined ? {} : { of: gauge.of }),
  });
}

function xOf(gauge: Gauge, value: number): number {
  const part = (value - gauge.from) / (gauge.to - gauge.from);
  return gauge.at[0] + Math.min(1, Math.max(0, part)) * gauge.widthMm;
}

function forbidden(gauge: Gauge): Item[] {
  if (gauge.limit === undefined) return [];
  const y = gauge.at[1];
  const x = xOf(gauge, gauge.limit.value);
  const end = gauge.limit.forbidden === 'above' ? gauge.at[0] + gauge.widthMm : gauge.at[0];
  const area = corners([Math.min(x, end), y], Math.abs(end - x), 2.2);
  return [
    hatched(area, { angleDeg: 45, gapMm: 1.5 }, { ink: 'fails', pen: 0.18 }),
    line([x, y], [x, y + 4], { layer: 'FRAME', pen: 0.7, ink: 'fails' }),
  ];
}

function band(gauge: Gauge): Item[] {
  if (gauge.predicted === undefined) return [];
  const y = gauge.at[1];
  const [low, high] = [xOf(gauge, gauge.predicted.low), xOf(gauge, gauge.predicted.high)];
  const middle = xOf(gauge, gauge.predicted.middle);
  return [
    solid(corners([low, y], high - low, 2.2), { layer: 'SIZE', ink: 'tint-deep' }),
    line([middle, y], [middle, y + 3], { layer: 'SIZE', pen: 0.35 }),
  ];
}

/** The line, its strokes below and their figures; the unit stands once, at the last. */
function axis(gauge: Gauge): Item[] {
  const [x, y] = gauge.at;
  const steps = ticksOf(gauge);
  const items: Item[] = [line([x, y], [x + gauge.widthMm, y], { layer: 'SIZE', pen: 0.5 })];
  steps.forEach((value, k) => {
    const at = xOf(gauge, value.at);
    items.push(line([at, y], [at, y - 1.4], { layer: 'SIZE', pen: 0.25 }));
    const words = k === steps.length - 1 ? `${value.text} ${gauge.unit}` : value.text;
    items.push(text(words, [at, y - 2.2 - CAP], { layer: 'SIZE', capMm: CAP, anchor: 'middle' }));
  });
  return items;
}

/** Round steps of 1, 2 or 5 at least 12 mm apart that leave each figure its room. */
function ticksOf({ from, to, widthMm, unit }: Gauge): { at: number; text: string }[] {
  for (let power = Math.floor(Math.log10((to - from) / 20)); ; power++) {
    for (const base of [1, 2, 5]) {
      const step = base * 10 ** power;
      const decimals = Math.max(0, -power);
      const first = Math.ceil(from / step - 1e-9);
      const last = Math.floor(to / step + 1e-9);
      const marks = Array.from({ length: Math.max(0, last - first + 1) }, (_, k) => {
        const at = (first + k) * step;
        return { at, text: at.toFixed(decimals).replace('-', '−') };
      });
      if (marks.length <= 2) return marks;
      const wide = Math.max(...marks.map((m) => metrics.widthMm(m.text, { capMm: CAP, weight: 400, face: 'plain' })));
      const unitWide = metrics.widthMm(` ${unit}`, { capMm: CAP, weight: 400, face: 'plain' }) / 2;
      if (Math.max(12, wide + unitWide + 2) <= (step / (to - from)) * widthMm) return marks;
    }
  }
}

interface Needle {
  readonly x: number;
  readonly text: string;
  readonly ink: Ink;
  readonly open: boolean;
}

function needlesOf(gauge: Gauge): Needle[] {
  const found: Needle[] = [];
  const { limit, reading, offered } = gauge;
  if (offered) found.push({ x: xOf(gauge, offered.value), text: offered.text, ink: 'ink', open: true });
  if (reading) {
    const past =
      limit !== undefined && (limit.forbidden === 'above' ? reading.value > limit.value : reading.value < limit.value);
    found.push({ x: xOf(gauge, reading.value), text: reading.text, ink: past ? 'fails' : 'ink', open: false });
  }
  return found.sort((a, b) => a.x - b.x);
}

function needles(gauge: Gauge): Item[] {
  const y = gauge.at[1] + 0.25;
  const found = needlesOf(gauge);
  const clash = found.length === 2 && clashes(found[0] as Needle, found[1] as Needle);
  // words that would meet part at the middle between their needles
  const between = found.reduce((sum, needle) => sum + needle.x / found.length, 0);
  return found.flatMap((needle, k) => {
    const shape: Point[] = [
      [needle.x, y],
      [needle.x + 1.5, y + 3.2],
      [needle.x - 1.5, y + 3.2],
    ];
    const anchor: Anchor = clash ? (k === 0 ? 'end' : 'start') : 'middle';
    const x = clash ? between + (k === 0 ? -0.8 : 0.8) : needle.x;
    return [
      solid(shape, { layer: 'SIZE', ink: needle.open ? 'marker' : needle.ink }),
      ...(needle.open ? [polygon(shape, { layer: 'SIZE', pen: 0.35 })] : []),
      text(needle.text, [x, y + 4.4], {
        layer: 'SIZE',
        capMm: CAP,
        weight: needle.open ? 400 : 700,
        ink: needle.ink,
        anchor,
      }),
    ];
  });
}

function clashes(left: Needle, right: Needle): boolean {
  const half = (needle: Needle): number => metrics.widthMm(needle.text, { capMm: CAP, weight: 700, face: 'plain' }) / 2;
  return right.x - left.x < half(left) + half(right) + 1.5;
}

function limitWords(gauge: Gauge): Item[] {
  if (gauge.limit === undefined) return [];
  const half = metrics.widthMm(gauge.limit.text, { capMm: CAP, weight: 400, face: 'plain' }) / 2;
  const [left, right] = [gauge.at[0] + half, gauge.at[0] + gauge.widthMm - half];
  const x = Math.max(left, Math.min(right, xOf(gauge, gauge.limit.value)));
  return [
    text(gauge.limit.text, [x, gauge.at[1] - 3.9 - 2 * CAP], {
      layer: 'SIZE',
      capMm: CAP,
      ink: 'fails',
      anchor: 'middle',
    }),
  ];
}
