import { dimensionParts } from './dimensionParts.ts';
import { hatchLines } from './hatchLines.ts';
import { line } from './make.ts';
import type { Drawing, Fill, Group, Item, Leaf, Point } from './model.ts';

/** A group whose items stand where they are drawn. */
export interface SettledGroup extends Pick<Group, 'name' | 'role' | 'of' | 'label'> {
  readonly kind: 'group';
  readonly items: readonly Settled[];
}

export type Settled = Leaf | SettledGroup;

export interface SettledDrawing {
  readonly title: string;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly items: readonly Settled[];
}

/** A move, a number of quarter turns and a scale, in this order from the inside out: scale, turn, move. */
interface Placement {
  readonly at: Point;
  readonly quarterTurns: number;
  readonly scale: number;
}

const HERE: Placement = { at: [0, 0], quarterTurns: 0, scale: 1 };

/**
 * A drawing as the pens need it: groups placed, dimensions and hatches drawn out, every
 * coordinate rounded once to 0.01 mm. Pens round nothing, so they all tell the same geometry.
 */
export function settle(drawing: Drawing): SettledDrawing {
  return { ...drawing, items: drawing.items.flatMap((item) => settled(item, HERE)) };
}

/** All leaves of a settled drawing, in the order in which they are drawn; a leaf belongs to what its group shows. */
export function leavesOf(items: readonly Settled[], of?: string): Leaf[] {
  return items.flatMap((item) => {
    const owner = item.of ?? of;
    if (item.kind === 'group') return leavesOf(item.items, owner);
    return [owner === undefined ? item : { ...item, of: owner }];
  });
}

function settled(item: Item, place: Placement): Settled[] {
  switch (item.kind) {
    case 'group':
      return [settledGroup(item, place)];
    case 'dimension': {
      const parts = dimensionParts(item).map((part) => leaf(part, place));
      return item.of === undefined ? parts : [grouped('dimension', parts, item)];
    }
    case 'fill':
      return item.hatch === undefined ? [leaf(item, place)] : hatchOf(item, place);
    default:
      return [leaf(item, place)];
  }
}

function settledGroup(item: Group, place: Placement): SettledGroup {
  const inner: Placement = {
    at: put(item.at, place),
    quarterTurns: place.quarterTurns + item.quarterTurns,
    scale: place.scale * item.scale,
  };
  return {
    ...grouped(
      item.name,
      item.items.flatMap((child) => settled(child, inner)),
      item,
    ),
    role: item.role,
  };
}

function grouped(name: string, items: Settled[], named: { of?: string; label?: string }): SettledGroup {
  return {
    kind: 'group',
    name,
    role: 'symbol',
    items,
    ...(named.of === undefined ? {} : { of: named.of }),
    ...(named.label === undefined ? {} : { label: named.label }),
  };
}

/** Hatching happens where the area comes to lie, so that its lines keep their gap at every scale. */
function hatchOf(fill: Fill, place: Placement): Settled[] {
  const { angleDeg, gapMm } = fill.hatch ?? { angleDeg: 45, gapMm: 2 };
  const outlines = fill.outlines.map((outline) => outline.map((p) => put(p, place)));
  const lines = hatchLines(outlines, angleDeg, gapMm).map(([from, to]) =>
    leaf(line(from, to, { layer: 'HATCH', pen: fill.pen, ink: fill.ink }), HERE),
  );
  return [grouped('hatch', lines, fill)];
}

function leaf(item: Leaf, place: Placement): Leaf {
  switch (item.kind) {
    case 'line':
      return { ...item, from: rounded(item.from, place), to: rounded(item.to, place) };
    case 'polyline':
    case 'tube':
      return { ...item, points: item.points.map((p) => rounded(p, place)) };
    case 'fill':
      return { ...item, outlines: item.outlines.map((outline) => outline.map((p) => rounded(p, place))) };
    case 'arc': {
      const turn = 90 * place.quarterTurns;
      return {
        ...item,
        at: rounded(item.at, place),
        radiusMm: hundredths(item.radiusMm * place.scale),
        startDeg: item.startDeg + turn,
        endDeg: item.endDeg + turn,
      };
    }
    case 'text':
      return {
        ...item,
        at: rounded(item.at, place),
        capMm: hundredths(item.capMm * place.scale),
        rotateDeg: (item.rotateDeg + 90 * place.quarterTurns) % 360,
      };
    default: {
      const never: never = item;
      return never;
    }
  }
}

function put([x, y]: Point, { at, quarterTurns, scale }: Placement): Point {
  const [sx, sy] = [x * scale, y * scale];
  const turns = ((quarterTurns % 4) + 4) % 4;
  const [tx, ty] = turns === 0 ? [sx, sy] : turns === 1 ? [-sy, sx] : turns === 2 ? [-sx, -sy] : [sy, -sx];
  return [at[0] + tx, at[1] + ty];
}

function rounded(p: Point, place: Placement): Point {
  const [x, y] = put(p, place);
  return [hundredths(x), hundredths(y)];
}

/** To 0.01 mm; never −0. */
function hundredths(mm: number): number {
  return Math.round(mm * 100) / 100 + 0;
}
