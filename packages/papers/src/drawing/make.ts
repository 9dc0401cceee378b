import type {
  Anchor,
  Arc,
  Fill,
  Group,
  GroupRole,
  Hatch,
  Ink,
  Item,
  Layer,
  Lettering,
  Line,
  LinearDimension,
  LineKind,
  Marked,
  PenMm,
  Point,
  Polyline,
  RunningDimension,
  Text,
} from './model.ts';

/** What may be said of an item; whatever is left out comes from its layer. */
export interface Look {
  readonly layer?: Layer;
  readonly pen?: PenMm;
  readonly line?: LineKind;
  readonly ink?: Ink;
  readonly of?: string;
  readonly label?: string;
}

/** Pen and kind of line of each layer. */
export const layerLook: Readonly<Record<Layer, { readonly pen: PenMm; readonly line: LineKind }>> = {
  FRAME: { pen: 0.7, line: 'full' },
  'ROOF-OUT': { pen: 0.5, line: 'full' },
  'ROOF-IN': { pen: 0.35, line: 'full' },
  UNDER: { pen: 0.25, line: 'hidden' },
  CENTRE: { pen: 0.25, line: 'centre' },
  SIZE: { pen: 0.25, line: 'full' },
  HATCH: { pen: 0.18, line: 'full' },
  TEXT: { pen: 0.25, line: 'full' },
  'WIRE-L1': { pen: 1, line: 'full' },
  'WIRE-L2': { pen: 1, line: 'full' },
  'WIRE-L3': { pen: 1, line: 'full' },
  'WIRE-N': { pen: 1, line: 'full' },
  'WIRE-PE': { pen: 1, line: 'full' },
  'WIRE-ALL': { pen: 0.7, line: 'full' },
};

function marked(look: Look, layer: Layer): Marked {
  const on = look.layer ?? layer;
  return {
    layer: on,
    pen: look.pen ?? layerLook[on].pen,
    line: look.line ?? layerLook[on].line,
    ink: look.ink ?? 'ink',
    ...(look.of === undefined ? {} : { of: look.of }),
    ...(look.label === undefined ? {} : { label: look.label }),
  };
}

export function line(from: Point, to: Point, look: Look = {}): Line {
  return { kind: 'line', from, to, ...marked(look, 'ROOF-IN') };
}

export function polyline(points: readonly Point[], look: Look = {}): Polyline {
  return { kind: 'polyline', points, closed: false, ...marked(look, 'ROOF-IN') };
}

export function polygon(points: readonly Point[], look: Look = {}): Polyline {
  return { kind: 'polyline', points, closed: true, ...marked(look, 'ROOF-IN') };
}

/** Corners of an upright rectangle, counter-clockwise from its bottom left. */
export function corners(at: Point, widthMm: number, heightMm: number): Point[] {
  const [x, y] = at;
  return [at, [x + widthMm, y], [x + widthMm, y + heightMm], [x, y + heightMm]];
}

/** An upright rectangle, by its bottom left corner. */
export function box(at: Point, widthMm: number, heightMm: number, look: Look = {}): Polyline {
  return polygon(corners(at, widthMm, heightMm), look);
}

export function arc(at: Point, radiusMm: number, startDeg: number, endDeg: number, look: Look = {}): Arc {
  return { kind: 'arc', at, radiusMm, startDeg, endDeg, ...marked(look, 'ROOF-IN') };
}

export function circle(at: Point, radiusMm: number, look: Look = {}): Arc {
  return arc(at, radiusMm, 0, 360, look);
}

/** A solid area in its ink. */
export function solid(outline: readonly Point[], look: Look = {}): Fill {
  return { kind: 'fill', outlines: [outline], ...marked(look, 'HATCH') };
}

/** A solid disc, as a polygon of 24 corners. */
export function disc(at: Point, radiusMm: number, look: Look = {}): Fill {
  return solid(ring(at, radiusMm, 24), look);
}

/** Corners of a regular polygon round a point. */
export function ring([x, y]: Point, radiusMm: number, count: number): Point[] {
  return Array.from({ length: count }, (_, k): Point => {
    const turn = (2 * Math.PI * k) / count;
    return [x + radiusMm * Math.cos(turn), y + radiusMm * Math.sin(turn)];
  });
}

/** A hatched area, 45° and 2 mm apart unless said otherwise. */
export function hatched(outline: readonly Point[], hatch: Partial<Hatch> = {}, look: Look = {}): Fill {
  return {
    kind: 'fill',
    outlines: [outline],
    hatch: { angleDeg: hatch.angleDeg ?? 45, gapMm: hatch.gapMm ?? 2 },
    ...marked(look, 'HATCH'),
  };
}

/** How a text may differ from plain 2.5 mm lettering starting at its point. */
export interface TextLook extends Look, Partial<Lettering> {
  readonly anchor?: Anchor;
  readonly rotateDeg?: number;
  readonly halo?: boolean;
  readonly heading?: boolean;
}

/** The lettering a look asks for: capitals of 2.5 mm, regular, plain face, unless said otherwise. */
export function letteringOf(look: Partial<Lettering>): Lettering {
  return { capMm: look.capMm ?? 2.5, weight: look.weight ?? 400, face: look.face ?? 'plain' };
}

export function text(words: string, at: Point, look: TextLook = {}): Text {
  return {
    kind: 'text',
    text: words,
    at,
    anchor: look.anchor ?? 'start',
    rotateDeg: look.rotateDeg ?? 0,
    halo: look.halo ?? false,
    ...letteringOf(look),
    ...(look.heading === undefined ? {} : { heading: look.heading }),
    ...marked(look, 'TEXT'),
  };
}

export interface Placing {
  readonly at?: Point;
  readonly quarterTurns?: 0 | 1 | 2 | 3;
  readonly scale?: number;
  readonly role?: GroupRole;
  readonly of?: string;
  readonly label?: string;
}

/** Items that belong together, placed as one. */
export function group(name: string, items: readonly Item[], placing: Placing = {}): Group {
  return {
    kind: 'group',
    name,
    items,
    role: placing.role ?? 'symbol',
    at: placing.at ?? [0, 0],
    quarterTurns: placing.quarterTurns ?? 0,
    scale: placing.scale ?? 1,
    ...(placing.of === undefined ? {} : { of: placing.of }),
    ...(placing.label === undefined ? {} : { label: placing.label }),
  };
}

/** A size with oblique strokes; the figure stands on the left of from → to, `offsetMm` away. */
export function dimension(
  from: Point,
  to: Point,
  offsetMm: number,
  words: string,
  look: Look & Partial<Lettering> = {},
): LinearDimension {
  const { capMm, face } = letteringOf(look);
  return { kind: 'dimension', style: 'linear', from, to, offsetMm, text: words, capMm, face, ...marked(look, 'SIZE') };
}

/** Running sizes from one end. `atMm` is in millimetres of paper; the text says the true size. */
export function running(
  from: Point,
  along: 'right' | 'up',
  offsetMm: number,
  marks: RunningDimension['marks'],
  look: Look & Partial<Lettering> = {},
): RunningDimension {
  const { capMm, face } = letteringOf(look);
  return { kind: 'dimension', style: 'running', from, along, offsetMm, marks, capMm, face, ...marked(look, 'SIZE') };
}
